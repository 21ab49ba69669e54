import type { ServerResponse } from 'node:http';
import { lookup } from 'mrmime';

/** Answers with the content of a file. Nothing of a preview is kept by a browser. */
export function answerFile(
  response: ServerResponse,
  file: string,
  content: Uint8Array | string,
  status = 200,
): void {
  const type = lookup(file) ?? 'application/octet-stream';
  const isText = /^text\/|javascript|json|xml/.test(type);
  response.writeHead(status, {
    'content-type': isText ? `${type}; charset=utf-8` : type,
    'cache-control': 'no-store',
  });
  response.end(content);
}

export function answerMissing(response: ServerResponse): void {
  answerText(response, 404, 'There is no such page.\n');
}

export function answerFault(response: ServerResponse, error: unknown): void {
  const said = error instanceof Error ? error.message : String(error);
  if (response.headersSent) response.end();
  else answerText(response, 500, `${said}\n`);
}

function answerText(response: ServerResponse, status: number, text: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
  response.end(text);
}
