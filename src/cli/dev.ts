import { readFile } from 'node:fs/promises';
import type { ServerResponse } from 'node:http';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import sirv from 'sirv';
import { printableLines, reportText } from '../diagnostics/index.ts';
import { makeTemporaryFolder } from '../output/index.ts';
import { NoCourseError } from '../read/index.ts';
import { cacheFolder } from './cache-folder.ts';
import { stderr, stdout } from './console.ts';
import { loadCourse } from './load-course.ts';
import { serve } from './serve.ts';
import { watchCourse } from './watch-course.ts';

/** Names that the preview serves beside the site. */
const live = '/linewright-live';
const liveScript = fileURLToPath(new URL('../live/live.js', import.meta.url));

/**
 * `linewright dev`: serves the course and publishes it anew whenever a file of it changes. The
 * findings stand in the terminal and on the page; while there is an error the last good pages stay.
 */
export async function dev(folder: string, { port }: { port: number }): Promise<void> {
  const { buildSite } = await import('../site/index.ts');
  const work = await makeTemporaryFolder();
  const site = path.join(work.path, 'site');
  const listeners = new Set<ServerResponse>();
  let state = { version: 0, findings: '' };
  let built = false;

  const publish = async (): Promise<void> => {
    const loaded = await loadCourse(folder);
    stdout.printFindings(loaded);
    if (loaded.checked) {
      const options = { out: site, folder, cacheDir: cacheFolder(), offline: false };
      const { pages } = await buildSite(loaded.checked, options);
      built = true;
      stdout.print`${new Date().toLocaleTimeString()}  ${pages} pages are up to date.\n`;
    } else {
      stdout.print`The pages stay as they were until the errors are mended.\n`;
    }
    const { diagnostics, textOf } = loaded;
    const findings =
      diagnostics.length === 0 ? '' : reportText(diagnostics, { textOf, color: false });
    tell(findings);
  };

  const tell = (findings: string): void => {
    state = { version: state.version + 1, findings };
    for (const listener of listeners) send(listener, state);
  };

  // One build at a time; changes during a build cause one more.
  let running: Promise<void> | undefined;
  let again = false;
  const run = async (): Promise<void> => {
    if (running) {
      again = true;
      return running;
    }
    do {
      again = false;
      running = publish().catch((error: unknown) => {
        const said = error instanceof Error ? error.message : String(error);
        const message = error instanceof NoCourseError && built ? `${said}\n${untilBack}` : said;
        stderr.printLines(`${message}\n`);
        tell(printableLines(message));
      });
      await running;
    } while (again);
    running = undefined;
  };

  const watching = watchCourse(folder, () => void run());
  await run();
  const files = sirv(site, { dev: true });
  const { server, address } = await serve((request, response) => {
    const url = (request.url ?? '/').replace(/[?#].*$/, '');
    if (url === `${live}/events`) {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
      listeners.add(response);
      response.on('close', () => listeners.delete(response));
      send(response, state);
      return;
    }
    if (url === `${live}/live.js`) {
      void answerFile(response, liveScript, 'text/javascript');
      return;
    }
    if (url.endsWith('/') || url.endsWith('.html')) {
      const page = url.endsWith('/') ? `${url}index.html` : url;
      void answerPage(response, built ? path.join(site, inside(page)) : undefined);
      return;
    }
    files(request, response, () => answerText(response, 404, 'There is no such file.\n'));
  }, port);

  stdout.print`The course is at ${address} and follows your files. Stop with Ctrl+C.\n`;

  const stop = (): void => {
    void watching.close();
    server.close();
    void work.remove().then(() => process.exit(0));
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  process.once('SIGHUP', stop);
}

const untilBack = 'The pages stay as they were, and follow the course again when it is back.';

function send(response: ServerResponse, state: { version: number; findings: string }): void {
  response.write(`data: ${JSON.stringify(state)}\n\n`);
}

/** The path that an address names, which no `..` leads out of. */
function inside(url: string): string {
  try {
    return path.posix.normalize(`/${decodeURIComponent(url)}`);
  } catch {
    return url;
  }
}

const scriptTag = `<script src="${live}/live.js" defer></script>`;

/** A page of the site with the script that follows changes, or a bare page for the findings. */
async function answerPage(response: ServerResponse, file: string | undefined): Promise<void> {
  const html = file && (await readFile(file, 'utf8').catch(() => undefined));
  if (file && html === undefined) return answerText(response, 404, 'There is no such page.\n');
  const page =
    html || '<!doctype html><html lang="en"><meta charset="utf-8"><title>Findings</title></html>';
  response.writeHead(200, {
    'content-type': 'text/html; charset=utf-8',
    'cache-control': 'no-store',
  });
  response.end(page.replace(/<\/head>|<\/html>/, (end) => `${scriptTag}${end}`));
}

async function answerFile(response: ServerResponse, file: string, type: string): Promise<void> {
  const content = await readFile(file).catch(() => undefined);
  if (!content) return answerText(response, 404, 'There is no such file.\n');
  response.writeHead(200, { 'content-type': type, 'cache-control': 'no-store' });
  response.end(content);
}

function answerText(response: ServerResponse, status: number, text: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
  response.end(text);
}
