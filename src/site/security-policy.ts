import { createHash } from 'node:crypto';
import { piecemealScript } from './piecemeal.ts';

/** Everything comes from the site itself; one script runs inline, and nothing is sent anywhere. */
export const securityPolicy = [
  "default-src 'none'",
  `script-src 'self' 'sha256-${createHash('sha256').update(piecemealScript).digest('base64')}'`,
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
