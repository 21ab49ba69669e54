export { createOwnChecks } from './create-own-checks.ts';
