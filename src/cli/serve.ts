import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/**
 * Serves on this machine only. If the port is taken the next free one is used.
 * @returns the server and the address that it answers at.
 */
export async function serve(
  handler: Handler,
  port: number,
): Promise<{ server: Server; address: string }> {
  const server = createServer(handler);
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
  const { port: used } = server.address() as AddressInfo;
  return { server, address: `http://localhost:${used}/` };
}
