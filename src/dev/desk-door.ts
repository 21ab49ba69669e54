import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { deskTokenHeader } from '../contract/index.ts';

/** What the pages of `dev` have beside what is published: a script and a style sheet, and what they may ask for. */
export interface DeskPart {
  /** Names `NAME.js` and, if it is there, `NAME.css` of the package's folder `dist/live`. */
  readonly name: string;
  /** By the last part of their address, `linewright-live/NAME`. Whoever passes the door may ask. */
  readonly routes?: Readonly<Record<string, DeskRoute>>;
}

/**
 * Answers what a page asks: JSON in, JSON out.
 * @throws DeskRefusal for what is not done.
 */
export type DeskRoute = (asked: unknown) => Promise<unknown>;

/** What was asked for is not done; the message says why, and stands on the page. */
export class DeskRefusal extends Error {
  /** Of HTTP: 400 for what makes no sense, 409 for what no longer fits. */
  readonly status: number;
  /** The part of what was asked for that has to change. */
  readonly about: 'name' | undefined;

  constructor(message: string, status = 400, about?: 'name') {
    super(message);
    this.status = status;
    this.about = about;
  }
}

/** In bytes. */
const longestRequest = 1_000_000;

/** Lets in the pages of this process and nobody else. */
export interface DeskDoor {
  /** Known to the pages that this process serves, and to no other. */
  readonly token: string;
  answer(route: DeskRoute, request: IncomingMessage, response: ServerResponse): Promise<void>;
}

/**
 * A request changes something on the author's machine, so it must come from a page of this process: by POST,
 * as JSON, of the host that it is sent to (whose name `serve` has looked at), with the token. A page of another
 * site has no token, cannot read one, and its browser tells where it comes from.
 */
export function deskDoor(): DeskDoor {
  const token = randomBytes(32).toString('base64url');
  return {
    token,
    async answer(route, request, response) {
      try {
        refuseStrangers(request, token);
        answerJson(response, 200, await route(await readJson(request)));
      } catch (error) {
        if (!(error instanceof DeskRefusal)) throw error;
        answerJson(response, error.status, { error: error.message, about: error.about });
      }
    },
  };
}

function refuseStrangers({ method, headers }: IncomingMessage, token: string): void {
  if (method !== 'POST') throw new DeskRefusal('This address takes POST alone.', 405);
  const { origin, host, [deskTokenHeader]: sent } = headers;
  if (origin !== `http://${host}`) {
    throw new DeskRefusal('Only a page of this preview may ask for that.', 403);
  }
  if (typeof sent !== 'string' || !isSame(sent, token)) {
    throw new DeskRefusal('This page is of an earlier `dev`: load it anew.', 403);
  }
  if (!/^application\/json\b/.test(headers['content-type'] ?? '')) {
    throw new DeskRefusal('This address takes JSON alone.', 415);
  }
}

function isSame(sent: string, token: string): boolean {
  const [one, other] = [Buffer.from(sent), Buffer.from(token)];
  return one.length === other.length && timingSafeEqual(one, other);
}

async function readJson(request: IncomingMessage): Promise<unknown> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request) {
    size += (part as Buffer).length;
    if (size > longestRequest) throw new DeskRefusal('That is too long.', 413);
    parts.push(part as Buffer);
  }
  try {
    return JSON.parse(Buffer.concat(parts).toString('utf8'));
  } catch {
    throw new DeskRefusal('That is no JSON.');
  }
}

function answerJson(response: ServerResponse, status: number, answer: unknown): void {
  response.writeHead(status, {
    'content-type': 'application/json; charset=utf-8',
    'cache-control': 'no-store',
  });
  response.end(JSON.stringify(answer ?? null));
}
