import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { gzipSync } from 'node:zlib';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

/** Serves a site as hosts do: text compressed, once, and kept. */
export async function serveCompressed(
  folder: string,
): Promise<{ address: string; close: () => void }> {
  const kept = new Map<string, Promise<{ headers: Record<string, string>; body: Buffer }>>();
  const read = async (name: string) => {
    const content = await readFile(path.join(folder, name));
    const type = types[path.extname(name)];
    return type === undefined
      ? { headers: {}, body: content }
      : {
          headers: { 'content-type': type, 'content-encoding': 'gzip' },
          body: gzipSync(content, { level: 9 }),
        };
  };
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const name = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    const answer = kept.get(name) ?? read(name);
    kept.set(name, answer);
    answer.then(
      ({ headers, body }) => response.writeHead(200, headers).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
