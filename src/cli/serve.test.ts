import { request, type Server } from 'node:http';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from './serve.ts';

let server: Server;
let port: number;
let asked = 0;

beforeAll(async () => {
  const started = await serve((_, response) => {
    asked += 1;
    response.end('the course');
  }, 0);
  server = started.server;
  port = Number(new URL(started.address).port);
});
afterAll(() => server.close());

/** Asks as a browser does that found `host` at this machine's own address. */
function ask(host: string): Promise<{ status: number | undefined; text: string }> {
  return new Promise((resolve, reject) => {
    request({ port, host: '127.0.0.1', path: '/', headers: { host } }, (answer) => {
      let text = '';
      answer.setEncoding('utf8').on('data', (chunk) => {
        text += chunk;
      });
      answer.on('end', () => resolve({ status: answer.statusCode, text }));
    })
      .on('error', reject)
      .end();
  });
}

test.each(['localhost', 'LOCALHOST', '127.0.0.1', '[::1]'])('it answers as %s', async (name) => {
  expect(await ask(`${name}:${port}`)).toEqual({ status: 200, text: 'the course' });
});

// A site that has its own name lead to this machine is to read nothing (DNS rebinding).
test.each([
  'evil.example',
  'evil.example:PORT',
  'localhost',
  'localhost:1',
  'localhost:PORT.evil.example',
  'localhost.evil.example:PORT',
  'evil-localhost:PORT',
  '127.0.0.1.evil.example:PORT',
  '0.0.0.0:PORT',
])('it does not answer as %j', async (name) => {
  const before = asked;
  const { status, text } = await ask(name.replace('PORT', String(port)));
  expect(status).toBe(403);
  expect(text).toBe(`This preview answers at http://localhost:${port}/ only.\n`);
  expect(asked).toBe(before);
});
