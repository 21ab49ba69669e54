/** `linewright dev`: what changes on the disk comes to the page, and so do the findings. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdir, mkdtemp, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, openPage } from './browser.ts';

let browser: Browser;
let preview: ChildProcess;
let address: string;
let folder: string;
let chapter: string;

const text = (moves: string) => `---\ntitle: One\n---\n\n\`\`\`moves\n${moves}\n\`\`\`\n`;

beforeAll(async () => {
  folder = await mkdtemp(path.join(inject('runFolder'), 'live-'));
  chapter = path.join(folder, 'chapters', '1.md');
  await mkdir(path.dirname(chapter));
  await writeFile(path.join(folder, 'course.yaml'), 'title: Small\nid: small\nside: white\n');
  await writeFile(chapter, text('1. e4 e5 2. Nf3'));
  preview = spawn(process.execPath, ['dist/cli/main.js', 'dev', folder, '--port', '4280']);
  address = await new Promise((resolve, reject) => {
    let said = '';
    preview.stdout?.on('data', (chunk) => {
      said += chunk;
      const [url] = /http:\S+/.exec(said) ?? [];
      if (url !== undefined) resolve(url);
    });
    preview.stderr?.on('data', (chunk) => {
      said += chunk;
    });
    preview.on('exit', () => reject(new Error(said)));
  });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  const ended = new Promise((resolve) => preview.once('exit', resolve));
  preview.kill();
  await ended;
});

test('a change is shown; a broken move shows the finding while the old page stays', async () => {
  const { page } = await openPage(browser);
  await page.goto(`${address}1.html`);
  const moves = page.locator('.move');
  const findings = page.locator('[data-findings]');
  expect(await moves.last().textContent()).toContain('Nf3');

  await writeFile(chapter, text('1. e4 e5 2. Bc4'));
  await expect.poll(() => moves.last().textContent(), { timeout: 60_000 }).toContain('Bc4');
  expect(await findings.count()).toBe(0);

  await writeFile(chapter, text('1. e4 e5 2. Ke3'));
  await findings.waitFor({ timeout: 60_000 });
  expect(await findings.textContent()).toContain('2.Ke3 cannot be played');
  expect(await moves.last().textContent()).toContain('Bc4');

  await writeFile(chapter, text('1. e4 e5 2. Ke2'));
  await expect.poll(() => moves.last().textContent(), { timeout: 60_000 }).toContain('Ke2');
  expect(await findings.count()).toBe(0);
});

test('a chapter that is being written shows no finding', async () => {
  const { page } = await openPage(browser);
  await page.goto(`${address}1.html`);
  const told: string[] = [];
  await page.exposeFunction('tell', (findings: string) => told.push(findings));
  await page.evaluate(() => {
    const events = new EventSource('/linewright-live/events');
    const { tell } = globalThis as unknown as { tell: (findings: string) => void };
    events.onmessage = ({ data }) => tell(JSON.parse(data).findings);
  });
  await expect.poll(() => told).toEqual(['']);
  // Where the machine is so busy that it pauses between the parts, what stands there is no longer being written.
  const isOneSave = async (): Promise<boolean> => {
    let longest = 0;
    let last = performance.now();
    const parts = ['', '---\ntitle: One\n---\n\n```moves\n1. e4 e5 2. Q', text('1. e4 e5 2. Qh5')];
    for (const part of parts) {
      await writeFile(chapter, part);
      longest = Math.max(longest, performance.now() - last);
      last = performance.now();
      await wait(20);
    }
    await expect.poll(() => page.locator('.move').last().textContent()).toContain('Qh5');
    return longest < 50;
  };
  for (let tries = 0; !(await isOneSave()); tries++) {
    expect(tries, 'no save was quick enough').toBeLessThan(20);
    await writeFile(chapter, text('1. e4 e5 2. Ke2'));
    await expect.poll(() => page.locator('.move').last().textContent()).toContain('Ke2');
    told.length = 0;
  }
  expect(told.filter((findings) => findings !== '')).toEqual([]);
});

test('the chapters, then the whole course, are moved away and come back', async () => {
  const { page } = await openPage(browser);
  await page.goto(`${address}1.html`);
  const moves = page.locator('.move');
  const findings = page.locator('[data-findings]');
  const away = async (of: string, said: string, fresh: string) => {
    await rename(of, `${folder}-aside`);
    await expect.poll(() => findings.textContent(), { timeout: 60_000 }).toContain(said);
    await expect.poll(() => moves.count()).toBeGreaterThan(0);
    const inside = path.relative(of, chapter);
    await writeFile(path.join(`${folder}-aside`, inside), text(`1. e4 e5 2. ${fresh}`));
    await rename(`${folder}-aside`, of);
    await expect.poll(() => moves.last().textContent(), { timeout: 60_000 }).toContain(fresh);
    expect(await findings.count()).toBe(0);
  };
  await away(path.dirname(chapter), 'The course has no chapters.', 'Nc3');
  await away(folder, 'follow the course again when it is back', 'Bb5');
  // What is saved after that is followed as before.
  await writeFile(chapter, text('1. e4 e5 2. Qe2'));
  await expect.poll(() => moves.last().textContent(), { timeout: 60_000 }).toContain('Qe2');
});
