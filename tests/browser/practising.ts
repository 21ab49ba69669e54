/** What the tests of practice share: a player, simulated days, the overview's numbers, files. */
import { readFile } from 'node:fs/promises';
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { CourseTable } from '../../src/contract/course-table.ts';
import { type Demo, onPage } from './browser.ts';

export const firstDay = new Date('2026-03-10T18:00:00');
export const dayAfter = (days: number) => new Date(firstDay.getTime() + days * 86_400_000);

interface Preparation extends BrowserContextOptions {
  readonly prepare?: (page: Page) => Promise<void>;
}

/** The practice page of the example course: opened, and used on the first of the simulated days. */
export function practiceOf(demo: () => Demo) {
  const open = async (page: Page): Promise<void> => {
    await page.goto(`${demo().address}practice.html`);
    await page.locator('.practice-today').waitFor();
  };
  const practising = (
    use: (page: Page, context: BrowserContext) => Promise<void>,
    { prepare, ...options }: Preparation = {},
  ): Promise<void> =>
    onPage(
      demo().browser,
      async (page) => {
        await page.clock.setFixedTime(firstDay);
        await addPlayer(page);
        await prepare?.(page);
        await open(page);
        await use(page, page.context());
      },
      options,
    );
  return { open, practising };
}

export const today = (page: Page) => page.locator('.practice-today').textContent();
export const status = (page: Page) => page.locator('.practice-talk [role=status]').textContent();
export const line = (page: Page) => page.locator('.practice-line').textContent();
export const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

export async function type(page: Page, move: string): Promise<void> {
  await page.locator('.move-entry input').fill(move);
  await page.keyboard.press('Enter');
}

/**
 * What the course advises in the position that is drawn, read from its pieces; and the same until
 * the session ends, in one go: `wrong` counts the questions that get a wrong move first.
 */
export async function addPlayer(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const find = <Found extends Element = HTMLElement>(selector: string) =>
      document.querySelector<Found>(selector);
    const seen = (selector: string) => find(selector)?.checkVisibility() === true;
    const advice = () => {
      const letters = new Map<string, string>();
      for (const use of document.querySelectorAll<SVGUseElement>('.practice-board .pieces use')) {
        const [, color, kind = ''] = /-([wb])(.)$/.exec(use.getAttribute('href') ?? '') ?? [];
        letters.set(use.dataset.square ?? '', color === 'w' ? kind.toUpperCase() : kind);
      }
      const ranks = [8, 7, 6, 5, 4, 3, 2, 1].map((rank) =>
        [...'abcdefgh'].map((file) => letters.get(file + rank) ?? '1').join(''),
      );
      const placement = ranks.join('/').replace(/1+/g, (empty) => String(empty.length));
      const here = globalThis.courseTable?.positions.find(({ key }) => key.startsWith(placement));
      return here?.moves.find(({ kind }) => kind === 'advice')?.san ?? '';
    };
    const type = (move: string) => {
      const input = find<HTMLInputElement>('.move-entry input');
      if (input === null) return;
      input.value = move;
      input.form?.requestSubmit();
    };
    const step = () => {
      if (seen('.practice-talk .practice-onward'))
        find('.practice-talk .practice-onward button')?.click();
      else type(advice());
    };
    const playOn = (wrong: number) => {
      let left = wrong;
      for (let steps = 0; find('.practice-end') === null && steps < 500; steps++) {
        if (left > 0 && seen('.practice-hint')) {
          left--;
          type('a6');
        }
        step();
      }
    };
    Object.assign(globalThis, { player: { step, playOn } });
  });
}

/** Plays a session to its end. */
export async function playOn(page: Page, wrong = 0): Promise<void> {
  await page.evaluate(`player.playOn(${wrong})`);
  await page.locator('.practice-end').waitFor();
}

export const learn = (page: Page) => button(page, /^Begin/).click();
/** Goes there from the end of a session; the overview comes once all answers are written. */
export async function toOverview(page: Page): Promise<void> {
  await button(page, /^Back to the overview$/).click();
  await page.locator('.practice-today').waitFor();
}
/** How the whole course stands: known, met, not met, due. */
export async function tally(page: Page): Promise<number[]> {
  const text =
    (await page.locator('.practice-overview .whole .practice-standing').textContent()) ?? '';
  const number = (form: RegExp) => {
    const [, found = '0'] = form.exec(text) ?? [];
    return found === 'one' ? 1 : Number(found.replace(',', ''));
  };
  const [known, met] = [number(/^(\S+) of/), number(/(\S+) more met/)];
  return [known, met, number(/of (\S+) moves? known/) - known - met, number(/(\S+) to see today/)];
}

/** Serves another edition of the course from now on. */
export async function changeTable(
  page: Page,
  change: (table: CourseTable) => CourseTable,
): Promise<void> {
  await page.unroute(/course-table/);
  await page.route(/course-table/, async (route) => {
    const text = await (await route.fetch()).text();
    const [, json = '""'] = /JSON\.parse\((.*)\);\s*$/s.exec(text) ?? [];
    const table = change(JSON.parse(JSON.parse(json) as string) as CourseTable);
    const body = `globalThis.courseTable=${JSON.stringify(table)};`;
    await route.fulfill({ body, contentType: 'text/javascript' });
  });
}

export function withMoves(
  table: CourseTable,
  index: number,
  moves: CourseTable['positions'][number]['moves'],
): CourseTable {
  const positions = table.positions.map((position, at) =>
    at === index ? { ...position, moves } : position,
  );
  return { ...table, positions };
}

export async function savedText(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save to a file').click(),
  ]);
  expect(download.suggestedFilename()).toBe('tarrasch-defence-practice.json');
  return readFile(await download.path(), 'utf8');
}

export async function readBack(page: Page, file: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    button(page, 'Read from a file').click(),
  ]);
  await chooser.setFiles(file);
}
