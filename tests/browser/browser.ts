/** What the browser tests share: the example course, built once a run, a server, a Chromium. */
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { mkdir, readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
  type Request,
} from 'playwright-core';
import sirv from 'sirv';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import { chromiumArguments } from '../setup/chromium-arguments.ts';
import { findChromium } from '../setup/find-chromium.ts';

function launchBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('no Chromium was found');
  return chromium.launch({ executablePath, args: chromiumArguments });
}

/** Windows that readers have. */
export const windows = {
  wide: { width: 1440, height: 900 },
  tablet: { width: 768, height: 1024 },
  phone: { width: 360, height: 740 },
} as const;

/** A phone and a finger. */
export const phone: BrowserContextOptions = {
  viewport: windows.phone,
  hasTouch: true,
  isMobile: true,
};

/** What must not happen on any page: requests to others, refused parts, errors, bad answers. */
export interface Faults {
  readonly list: readonly string[];
}

/** A context in which what is waited for may take a minute, as what is polled. */
export async function newContext(
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<BrowserContext> {
  const context = await browser.newContext(options);
  context.setDefaultTimeout(60_000);
  return context;
}

/** A page in a context of its own, and the faults that it runs into. */
export async function openPage(
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<{ page: Page; faults: Faults }> {
  const context = await newContext(browser, { viewport: windows.wide, ...options });
  // The offline worker would fetch the whole site into each context, and answer for its server.
  await context.addInitScript('delete Navigator.prototype.serviceWorker');
  const page = await context.newPage();
  const list: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') list.push(message.text());
  });
  page.on('pageerror', (error) => list.push(String(error)));
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    const own = hostname === '127.0.0.1' || protocol === 'file:' || protocol === 'data:';
    if (!own) list.push(`asked another host: ${request.url()}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) list.push(`${response.status()}: ${response.url()}`);
  });
  return { page, faults: { list } };
}

/** Runs `use` on a page of its own, and expects no fault on it. */
export async function onPage(
  browser: Browser,
  use: (page: Page) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  const { page, faults } = await openPage(browser, options);
  try {
    await use(page);
    expect(faults.list).toEqual([]);
  } finally {
    await page.context().close();
  }
}

/**
 * Opens a page and waits until its scripts have fetched all they want: until twice in a row the
 * page was idle and had asked for nothing new. `networkidle` waits half a second more.
 */
export async function openWhole(page: Page, address: string): Promise<void> {
  const open = new Set<Request>();
  let asked = 0;
  const begun = (request: Request) => {
    open.add(request);
    asked++;
  };
  const ended = (request: Request) => void open.delete(request);
  page.on('request', begun).on('requestfinished', ended).on('requestfailed', ended);
  try {
    await page.goto(address);
    for (let calm = 0, before = asked; calm < 2; before = asked) {
      await page.evaluate(
        () =>
          new Promise<void>((resolve) =>
            setTimeout(() => requestIdleCallback(() => resolve()), 40),
          ),
      );
      calm = open.size === 0 && asked === before ? calm + 1 : 0;
    }
  } finally {
    page.off('request', begun).off('requestfinished', ended).off('requestfailed', ended);
  }
}

/**
 * To another page, as the browser's own button does; what is there is to be waited for. `page.goBack` waits for a
 * navigation, and may take for it what a page writes into its own address at that moment.
 */
export function goBack(page: Page): Promise<void> {
  return page.evaluate(() => void setTimeout(() => history.back()));
}

/** Whether an element can be seen: in the window, and not under the board. */
export function inSight(page: Page, id: string): Promise<boolean> {
  return page.evaluate((name) => {
    const element = document.getElementById(name);
    if (element === null) return false;
    const { left, top, bottom } = element.getBoundingClientRect();
    const at = document.elementFromPoint(left + 2, (top + bottom) / 2);
    return at !== null && (element === at || element.contains(at));
  }, id);
}

/** The pages in the folder of a site, whoever adds one. */
export function pageFiles(site: string): string[] {
  return readdirSync(site).filter((name) => name.endsWith('.html'));
}

/**
 * Serves a folder below a path such as `/my/course/`, each file with the same `headers`. Missing
 * files get the site's own page.
 */
export async function serveFolder(
  folder: string,
  base = '/',
  headers: Readonly<Record<string, string>> = {},
): Promise<{ address: string; close: () => void }> {
  const files = sirv(folder, { dev: true });
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
    const missing = async () => {
      const page = await readFile(path.join(folder, '404.html')).catch(() => 'missing');
      response.writeHead(404, { 'content-type': 'text/html; charset=utf-8' });
      response.end(page);
    };
    if (!request.url?.startsWith(base)) return void missing();
    request.url = `/${request.url.slice(base.length)}`;
    files(request, response, () => void missing());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}${base}`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

/** The path that the shared site is built for and served below. */
export const demoBase = '/club/tarrasch/';

/** The folder of the example course's site. The first test file of a run builds it. */
export async function demoSite(): Promise<string> {
  const run = inject('runFolder');
  const out = path.join(run, 'demo-site');
  const first = await mkdir(path.join(run, 'demo-site.lock')).then(
    () => true,
    () => false,
  );
  if (first) {
    await linewright(['build', 'demo-course', '--out', out, '--base', demoBase]);
    return out;
  }
  const done = path.join(out, 'linewright.json');
  for (let tries = 0; tries < 1500; tries++) {
    if (await stat(done).catch(() => undefined)) return out;
    await wait(200);
  }
  throw new Error('another test file was to build the example course, and has not');
}

/** Runs the built program. @throws with all it said, unless it ends well. */
export async function linewright(args: readonly string[]): Promise<string> {
  const child = spawn(process.execPath, ['dist/cli/main.js', ...args], { stdio: 'pipe' });
  let said = '';
  child.stdout.on('data', (chunk) => {
    said += chunk;
  });
  child.stderr.on('data', (chunk) => {
    said += chunk;
  });
  const code = await new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  if (code !== 0) throw new Error(`linewright ${args.join(' ')} ended with ${code}:\n${said}`);
  return said;
}

/** A Chromium and the example course's site, for the tests of one file. */
export interface Demo {
  readonly browser: Browser;
  /** The folder of the site. */
  readonly site: string;
  /** Where it is served, below `demoBase`. */
  readonly address: string;
}

/** All files that run in one process use one Chromium, each page in a context of its own. */
let shared: Promise<Browser> | undefined;

/** It is not to be closed; its contexts are. */
export async function sharedBrowser(): Promise<Browser> {
  const browser = await shared?.catch(() => undefined);
  // After a crash, or closed by a file that thinks it its own.
  if (browser === undefined || !browser.isConnected()) shared = launchBrowser();
  return shared ?? launchBrowser();
}

/** Opens them before a file's tests and closes what is open behind; to be read within tests only. */
export function useDemo(): () => Demo {
  let demo: Demo | undefined;
  let close: (() => void) | undefined;
  beforeAll(async () => {
    const browser = await sharedBrowser();
    const site = await demoSite();
    const server = await serveFolder(site, demoBase);
    close = server.close;
    demo = { browser, site, address: server.address };
  });
  afterAll(async () => {
    await Promise.all(demo?.browser.contexts().map((context) => context.close()) ?? []);
    close?.();
  });
  return () => {
    if (!demo) throw new Error('the example course is served within tests only');
    return demo;
  };
}
