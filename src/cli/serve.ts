import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/** What this machine calls itself. */
const ownNames = ['localhost', '127.0.0.1', '[::1]'];

/**
 * Serves on this machine only, and by its own names: a site elsewhere may let a name of its lead
 * here, and would then read the course in its visitor's browser (DNS rebinding). If the port is
 * taken the next free one is used.
 * @returns the server and the address that it answers at.
 */
export async function serve(
  handler: Handler,
  port: number,
): Promise<{ server: Server; address: string }> {
  let address = '';
  const server = createServer((request, response) => {
    const { port: used } = server.address() as AddressInfo;
    const host = request.headers.host?.toLowerCase();
    // A browser leaves out the port of http.
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
