/** The part of Trusted Types that is used here; browsers without it lack the global. */
interface PolicyFactory {
  createPolicy(
    name: string,
    rules: { createHTML: (markup: string) => string },
  ): { createHTML(markup: string): unknown };
}

/**
 * What a page that names its policies must allow (`trusted-types course-board`); a page with
 * `require-trusted-types-for 'script'` alone allows any.
 */
const policyName = 'course-board';

/** Made by our own drawing, of squares, pieces and numbers: no word of a reader or a page is in it. */
function makeTrust(): (markup: string) => string {
  const { trustedTypes } = globalThis as { trustedTypes?: PolicyFactory };
  if (trustedTypes === undefined) return (markup) => markup;
  try {
    const policy = trustedTypes.createPolicy(policyName, { createHTML: (markup) => markup });
    return (markup) => policy.createHTML(markup) as string;
  } catch {
    // The page allows no such policy: it may still take strings.
    return (markup) => markup;
  }
}

const trusted = makeTrust();

/**
 * Fills an element with what `draw/` drew.
 * @throws TypeError where the page's policy refuses it.
 */
export function fillDrawn(element: Element, markup: string): void {
  element.innerHTML = trusted(markup);
}

/** Adds what `draw/` drew. @throws TypeError as `fillDrawn`. */
export function addDrawn(element: Element, markup: string): void {
  element.insertAdjacentHTML('beforeend', trusted(markup));
}
