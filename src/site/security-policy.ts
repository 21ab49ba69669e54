/**
 * What a page allows itself: everything comes from the site, and nothing is sent anywhere. No script
 * or style stands in a page and no picture in an address, so that a host's own policy may be as
 * strict as `default-src 'self'`.
 */
export const securityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/**
 * The header that the handbook gives hosts: whatever a chapter links to stays in its place too, and
 * the search by words may run its index, which is WebAssembly. Tests hold both to it.
 */
export const hostPolicy = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
