export { serveLanguage } from './serve.ts';
