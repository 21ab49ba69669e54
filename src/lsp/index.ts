export type { Host } from './desk.ts';
export { type ServeOptions, serveLanguage } from './serve.ts';
