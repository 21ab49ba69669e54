import { readFile } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { lookup } from 'mrmime';
import sirv from 'sirv';
import { assetsFolder, type SitePreview } from '../site/index.ts';

/** Names that the preview serves beside the site. */
const live = '/linewright-live';
const liveScript = fileURLToPath(new URL('../live/live.js', import.meta.url));

/** What the pages that are open are told: they load themselves anew when it is not the version they show. */
export interface LiveState {
  readonly version: number;
  readonly findings: string;
}

export interface DevServer {
  readonly answer: (request: IncomingMessage, response: ServerResponse) => void;
  /** Tells all open pages. */
  readonly tell: (state: LiveState) => void;
}

/**
 * Answers for the preview of a course: with the pages of the last course that had no error, and with
 * the script that follows changes in each of them.
 * @param shown the site, absent while the course has never been without errors.
 * @param work folder for copies of the author's files.
 */
export function devServer(work: string, shown: () => SitePreview | undefined): DevServer {
  const listeners = new Set<ServerResponse>();
  let state: LiveState = { version: 0, findings: '' };
  const serveAssets = sirv(assetsFolder, { dev: true });
  const serveCopies = sirv(work, { dev: true });

  const answerSite = async (
    request: IncomingMessage,
    response: ServerResponse,
    file: string,
  ): Promise<void> => {
    const site = shown();
    const { version } = state;
    const isPage = file.endsWith('.html');
    if (site === undefined) {
      return isPage
        ? answerFile(response, file, withScript(findingsPage, version))
        : answerMissing(response);
    }
    const copy = await site.copyOfMedia(file, work);
    if (copy !== undefined) {
      request.url = `/${copy.split('/').map(encodeURIComponent).join('/')}`;
      return serveCopies(request, response, () => answerMissing(response));
    }
    const content = await site.find(file);
    if (content === undefined) return answerMissing(response);
    answerFile(response, file, isPage ? withScript(content, version) : content);
  };

  return {
    answer(request, response) {
      const url = (request.url ?? '/').replace(/[?#].*$/, '');
      if (url === `${live}/events`) {
        response.writeHead(200, {
          'content-type': 'text/event-stream',
          'cache-control': 'no-store',
        });
        listeners.add(response);
        response.on('close', () => listeners.delete(response));
        send(response, state);
        return;
      }
      const file = inside(url);
      const answering =
        url === `${live}/live.js`
          ? readFile(liveScript).then((script) => answerFile(response, url, script))
          : file.startsWith('assets/')
            ? answerAsset(request, response, file)
            : answerSite(request, response, file);
      answering.catch((error: unknown) => answerFault(response, error));
    },
    tell(next) {
      state = next;
      for (const listener of listeners) send(listener, state);
    },
  };

  async function answerAsset(
    request: IncomingMessage,
    response: ServerResponse,
    file: string,
  ): Promise<void> {
    request.url = file.slice('assets'.length);
    serveAssets(request, response, () => answerMissing(response));
  }
}

/** A page for the findings of a course that has never been without errors. */
const findingsPage =
  '<!doctype html><html lang="en"><meta charset="utf-8"><title>Findings</title></html>';

/** The page with the script that follows changes; it is given the version that the page shows. */
function withScript(page: Uint8Array | string, version: number): string {
  const scriptTag = `<script src="${live}/live.js" data-version="${version}" defer></script>`;
  const html = typeof page === 'string' ? page : Buffer.from(page).toString('utf8');
  return html.replace(/<\/head>|<\/html>/, (end) => `${scriptTag}${end}`);
}

/** The file of the site that an address names, which no `..` leads out of. */
function inside(url: string): string {
  const page = url.endsWith('/') ? `${url}index.html` : url;
  try {
    return path.posix.normalize(`/${decodeURIComponent(page)}`).slice(1);
  } catch {
    return page.slice(1);
  }
}

function send(response: ServerResponse, state: LiveState): void {
  response.write(`data: ${JSON.stringify(state)}\n\n`);
}

function answerFile(response: ServerResponse, file: string, content: Uint8Array | string): void {
  const type = lookup(file) ?? 'application/octet-stream';
  const isText = /^text\/|javascript|json|xml/.test(type);
  response.writeHead(200, {
    'content-type': isText ? `${type}; charset=utf-8` : type,
    'cache-control': 'no-store',
  });
  response.end(content);
}

function answerMissing(response: ServerResponse): void {
  answerText(response, 404, 'There is no such page.\n');
}

function answerFault(response: ServerResponse, error: unknown): void {
  const said = error instanceof Error ? error.message : String(error);
  if (response.headersSent) response.end();
  else answerText(response, 500, `${said}\n`);
}

function answerText(response: ServerResponse, status: number, text: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
  response.end(text);
}
