import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/** Names of this machine. */
const ownNames = ['localhost', '127.0.0.1', '[::1]'];

/**
 * Serves this machine only, under its own names: otherwise a site could point a name of its own here and read the
 * course in a visitor's browser (DNS rebinding). If the port is taken, uses the next free one.
 * @returns the server and its address.
 */
export async function serve(
  handler: Handler,
  port: number,
): Promise<{ server: Server; address: string }> {
  let address = '';
  const server = createServer((request, response) => {
    const { port: used } = server.address() as AddressInfo;
    const host = request.headers.host?.toLowerCase();
    // Browsers leave out the default port.
    const isOwn = (name: string) => host === `${name}:${used}` || (used === 80 && host === name);
    if (ownNames.some(isOwn)) return handler(request, response);
    response.writeHead(403, { 'content-type': 'text/plain; charset=utf-8' });
    response.end(`This preview answers at ${address} only.\n`);
  });
  for (let tried = port; ; tried++) {
    const error = await new Promise<NodeJS.ErrnoException | undefined>((resolve) => {
      server.once('error', resolve);
      server.listen(tried, '127.0.0.1', () => {
        server.removeListener('error', resolve);
        resolve(undefined);
      });
    });
    if (!error) break;
    if (error.code !== 'EADDRINUSE' || tried >= port + 20) throw error;
  }
  address = `http://localhost:${(server.address() as AddressInfo).port}/`;
  return { server, address };
}

/** Lets a preview end with its process, at a signal: what it made for itself goes with it. */
export function stopBySignal(server: Server, preview: { close(): Promise<void> }): void {
  const stop = (): void => {
    server.close();
    void preview.close().then(() => process.exit(0));
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, stop);
}
