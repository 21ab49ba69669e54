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

/** What axe-core finds on a page without frames: each rule with the first element that breaks it. */
export async function violations(page: Page, choice: AxeChoice = {}): Promise<string[]> {
  if (page.frames().length > 1) throw new Error('axe-core is to look into frames too');
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
