import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

export interface AxeChoice {
  /**
   * In the dark only the rules that colours and the width of the window bear on are run: the others
   * were run in light on the same elements.
   */
  readonly colorScheme?: 'light' | 'dark';
  /** Selectors of what is left out. */
  readonly exclude?: readonly string[];
  /** Rules that are left out. */
  readonly disabled?: readonly string[];
}

/**
 * What is drawn within a board has no words: the board itself says what it shows. To leave it out of
 * the page for the while takes axe-core half the time of `exclude`, which goes through it all the same.
 */
const drawn = 'svg.board > :not(title, desc)';

/** What axe-core finds on a page without frames: each rule with the first element that breaks it. */
export async function violations(page: Page, choice: AxeChoice = {}): Promise<string[]> {
  if (page.frames().length > 1) throw new Error('axe-core is to look into frames too');
  const takenOut = [drawn, ...(choice.exclude ?? []).map((selector) => `${selector} > *`)];
  const putBack = await page.evaluateHandle((selector) => {
    const places = [...document.querySelectorAll(selector)].map((element) => {
      const mark = document.createComment('');
      element.replaceWith(mark);
      return { element, mark };
    });
    return () => {
      for (const { element, mark } of places.reverse()) mark.replaceWith(element);
    };
  }, takenOut.join());
  try {
    return await found(page, choice);
  } finally {
    await putBack.evaluate((back) => back());
  }
}

async function found(page: Page, choice: AxeChoice): Promise<string[]> {
  const dark = choice.colorScheme === 'dark';
  let axe = new AxeBuilder({ page })
    // Without frames there is nothing to put together, for which a second page would be opened.
    .setLegacyMode()
    .options({
      resultTypes: ['violations'],
      ...(dark
        ? { runOnly: { type: 'rule', values: ['color-contrast', 'scrollable-region-focusable'] } }
        : {}),
    });
  for (const selector of choice.exclude ?? []) axe = axe.exclude(selector);
  if (choice.disabled !== undefined && !dark) axe = axe.disableRules([...choice.disabled]);
  const result = await axe.analyze();
  return result.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}
