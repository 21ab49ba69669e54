export * from '../read/nodes.ts';
