import type { IncomingMessage, ServerResponse } from 'node:http';
import path from 'node:path';
import sirv from 'sirv';
import { type DeskState, deskFolder } from '../contract/index.ts';
import { assetsFolder, readAssets, type SitePreview } from '../site/index.ts';
import { answerFault, answerFile, answerMissing } from './answers.ts';
import { type DeskPart, type DeskRoute, deskDoor } from './desk-door.ts';
import { deskFiles, withDesk } from './desk-files.ts';
import { troublePage } from './trouble-page.ts';

export interface DevServer {
  /** A page as it is served, with the scripts of the desk; undefined where there is none. */
  readonly page: (file: string) => Promise<string | undefined>;
  readonly answer: (request: IncomingMessage, response: ServerResponse) => void;
  readonly tell: (state: DeskState) => void;
}

export interface DevServerOptions {
  /** The path that the site is served at; requests come without it. */
  readonly root?: string | undefined;
  /** Folder for copies of the author's files. */
  readonly work: string;
  /** The site; absent while there has been nothing that could be shown. */
  readonly shown: () => SitePreview | undefined;
  /** What pages have beside what is published. */
  readonly parts: readonly DeskPart[];
  /** Whether one of them opens files in an editor. */
  readonly hasEditor: boolean;
}

/** Answers for the preview of a course: with its pages, each with the scripts of the desk, and for what those ask. */
export function devServer({
  root = '/',
  work,
  shown,
  parts,
  hasEditor,
}: DevServerOptions): DevServer {
  const listeners = new Set<ServerResponse>();
  const door = deskDoor();
  let state: DeskState = { version: 0, findings: [] };
  const serveAssets = sirv(assetsFolder, { dev: true });
  const serveCopies = sirv(work, { dev: true });
  const routes = new Map<string, DeskRoute>(
    parts.flatMap(({ routes = {} }) => Object.entries(routes)),
  );
  const files = deskFiles(parts);

  const deskData = () => ({
    root,
    version: String(state.version),
    token: door.token,
    ...(hasEditor && { editor: '' as const }),
  });

  const answerSite = async (request: IncomingMessage, response: ServerResponse, file: string) => {
    const site = shown();
    const data = deskData();
    const isPage = file.endsWith('.html');
    if (site === undefined) {
      if (!isPage) return answerMissing(response);
      const { course = '' } = (await readAssets()).styles;
      return answerFile(response, file, withDesk(troublePage(state, [root + course]), parts, data));
    }
    const copy = await site.copyOfMedia(file, work);
    if (copy !== undefined) {
      request.url = `/${copy.split('/').map(encodeURIComponent).join('/')}`;
      return serveCopies(request, response, () => answerMissing(response));
    }
    const content = await site.find(file);
    if (content !== undefined) {
      return answerFile(response, file, isPage ? withDesk(content, parts, data) : content);
    }
    const missing = isPage ? await site.find('404.html') : undefined;
    if (missing === undefined) answerMissing(response);
    else answerFile(response, file, withDesk(missing, parts, data), 404);
  };

  const answerDesk = async (request: IncomingMessage, response: ServerResponse, name: string) => {
    if (name === 'events') return listen(response);
    const route = routes.get(name);
    if (route !== undefined) return door.answer(route, request, response);
    const content = await files.read(name);
    if (content === undefined) answerMissing(response);
    else answerFile(response, name, content);
  };

  const listen = (response: ServerResponse) => {
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    listeners.add(response);
    response.on('close', () => listeners.delete(response));
    send(response, state);
  };

  const answerAsset = async (request: IncomingMessage, response: ServerResponse, file: string) => {
    request.url = file.slice('assets'.length);
    serveAssets(request, response, () => answerMissing(response));
  };

  return {
    async page(file) {
      const content = await shown()?.find(file);
      return content && withDesk(content, parts, deskData());
    },
    answer(request, response) {
      // No page of another site shows one of these, where a click might be stolen.
      response.setHeader('x-frame-options', 'SAMEORIGIN');
      const url = (request.url ?? '/').replace(/[?#].*$/, '');
      const file = inside(url);
      const answering = file.startsWith(deskFolder)
        ? answerDesk(request, response, file.slice(deskFolder.length))
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

function send(response: ServerResponse, state: DeskState): void {
  response.write(`data: ${JSON.stringify(state)}\n\n`);
}
