import { createServer, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { deskTokenHeader as tokenHeader } from '../contract/index.ts';
import { DeskRefusal, deskDoor } from './desk-door.ts';

const door = deskDoor();
const heard: unknown[] = [];
let server: Server;
let host: string;

beforeAll(async () => {
  server = createServer((asked, response) => {
    const route = async (what: unknown) => {
      heard.push(what);
      if (what === 'stale') throw new DeskRefusal('The file has changed.', 409);
      return { done: true };
    };
    door.answer(route, asked, response).catch(() => response.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  host = `localhost:${(server.address() as AddressInfo).port}`;
});
afterAll(() => server.close());

type Changes = Readonly<Record<string, string | undefined>>;

function ask(body: string, changes: Changes = {}, method = 'POST') {
  const all: Changes = {
    host,
    origin: `http://${host}`,
    'content-type': 'application/json',
    [tokenHeader]: door.token,
    ...changes,
  };
  const headers = Object.fromEntries(Object.entries(all).flatMap(([k, v]) => (v ? [[k, v]] : [])));
  const { port } = server.address() as AddressInfo;
  return new Promise<{ status: number | undefined; answer: unknown }>((resolve, reject) => {
    const sent = request({ port, host: '127.0.0.1', method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part) => {
        text += part;
      });
      response.on('end', () => resolve({ status: response.statusCode, answer: JSON.parse(text) }));
    });
    sent.on('error', reject).end(body);
  });
}

test('a page of this process is heard, and told why something is not done', async () => {
  expect(await ask('{"a":1}')).toEqual({ status: 200, answer: { done: true } });
  expect(heard.pop()).toEqual({ a: 1 });
  expect(await ask('"stale"')).toEqual({ status: 409, answer: { error: 'The file has changed.' } });
  heard.length = 0;
});

test.each([
  ['a page of another site', { origin: 'http://evil.example' }, 403],
  ['a page of another port', { origin: 'http://localhost:1' }, 403],
  ['a sandboxed frame', { origin: 'null' }, 403],
  ['nobody knows who', { origin: undefined }, 403],
  ['no token', { [tokenHeader]: undefined }, 403],
  ['a token of another process', { [tokenHeader]: deskDoor().token }, 403],
  ['what a form can send', { 'content-type': 'text/plain' }, 415],
] satisfies [string, Changes, number][])('%s is not', async (_, changes, status) => {
  expect((await ask('{}', changes)).status).toBe(status);
  expect(heard).toEqual([]);
});

test('nor is GET, what is no JSON, and what is too long', async () => {
  expect((await ask('', {}, 'GET')).status).toBe(405);
  expect((await ask('{')).status).toBe(400);
  expect((await ask(JSON.stringify('x'.repeat(1_000_001)))).status).toBe(413);
  expect(heard).toEqual([]);
});
