/**
 * A worker that tells whether it may run WebAssembly. The index runs in a worker, and a worker has
 * the policy that its own file came with, so the page could not tell by trying itself.
 */
const smallest = new Uint8Array([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0]);
let allowed = true;
try {
  new WebAssembly.Module(smallest);
} catch {
  allowed = false;
}
postMessage(allowed);
