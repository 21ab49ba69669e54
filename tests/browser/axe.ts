import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

export interface AxeChoice {
  /** A selector of what is looked at alone, where the rest is as `pages.test.ts` has seen it. */
  readonly within?: string;
  /** Selectors of what is left out. */
  readonly exclude?: readonly string[];
  /** Rules that are left out. */
  readonly disabled?: readonly string[];
}

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * What is drawn within a board has no words: the board itself says what it shows. To leave it out of
 * the page for the while takes axe-core half the time of `exclude`, which goes through it all the same.
 */
const drawn = 'svg.board > :not(title, desc)';

/** What axe-core finds on a page without frames: each rule with the first element that breaks it. */
export function violations(page: Page, { disabled = [], ...choice }: AxeChoice = {}) {
  const rules = Object.fromEntries(disabled.map((rule) => [rule, { enabled: false }]));
  return run(page, choice, { rules });
}

/**
 * The same page in the dark: only the rules that colours and the width of the window bear on are run, since the
 * others were run in light on the same elements.
 */
export async function darkViolations(page: Page, choice: AxeChoice = {}): Promise<string[]> {
  await page.emulateMedia({ colorScheme: 'dark' });
  // The frame in which scripts hear of the window, and the one that shows what they do.
  await page.evaluate(async () => {
    for (let frames = 0; frames < 2; frames++) await new Promise(requestAnimationFrame);
  });
  if (!(await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches))) {
    throw new Error('the page is not dark');
  }
  const found = await run(page, choice, {
    runOnly: { type: 'rule', values: ['color-contrast', 'scrollable-region-focusable'] },
  });
  await page.emulateMedia({ colorScheme: 'light' });
  return found.map((each) => `in the dark, ${each}`);
}

/** Light first, then dark. */
export async function violationsInBoth(page: Page, choice: AxeChoice = {}): Promise<string[]> {
  return [...(await violations(page, choice)), ...(await darkViolations(page, choice))];
}

/** `@axe-core/playwright` is not used: it loads the long edition, and twice for each look. */
async function run(
  page: Page,
  { within, exclude = [] }: AxeChoice,
  options: RunOptions,
): Promise<string[]> {
  if (page.frames().length > 1) throw new Error('axe-core is to look into frames too');
  const takenOut = [drawn, ...exclude.map((selector) => `${selector} > *`)].join();
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(source);
  const context = { include: [within ?? 'html'], exclude: [...exclude] };
  return page.evaluate(found, { takenOut, context, options });
}

/** Runs in the page. */
async function found(ask: {
  readonly takenOut: string;
  readonly context: { include: string[]; exclude: string[] };
  readonly options: RunOptions;
}): Promise<string[]> {
  const places = [...document.querySelectorAll(ask.takenOut)].map((element) => {
    const mark = document.createComment('');
    element.replaceWith(mark);
    return { element, mark };
  });
  try {
    const result = await globalThis.axe.run(ask.context, {
      ...ask.options,
      resultTypes: ['violations'],
    });
    return result.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  } finally {
    for (const { element, mark } of places.reverse()) mark.replaceWith(element);
  }
}

declare global {
  var axe: typeof import('axe-core');
}
