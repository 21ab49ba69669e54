/**
 * Asks a worker whether WebAssembly may run on this host.
 * @param probe address of the script `wasm-probe.ts`
 * @returns true also where no worker starts: what is tried next tells why.
 */
export function mayRunWasm(probe: string): Promise<boolean> {
  return new Promise((resolve) => {
    const worker = new Worker(probe);
    worker.addEventListener('message', ({ data }: MessageEvent<boolean>) => {
      worker.terminate();
      resolve(data);
    });
    worker.addEventListener('error', () => resolve(true));
  });
}
