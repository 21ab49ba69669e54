/** The handout: page numbers in its contents and at its references, as the reader's own browser will print them. */
import { dataOf } from '../../contract/attributes.ts';
import { fill } from '../../contract/sentence.ts';
import { element } from '../element.ts';
import { keepSetting } from '../settings/keep-setting.ts';
import { pageOf, whileMeasured } from './measure.ts';
import { findReferences, type Reference, tellPage } from './references.ts';

/** Passes at most: a longer reference may push its target onto the next page. */
const mostPasses = 5;

const main = document.querySelector<HTMLElement>('main');
if (main !== null) void begin(main);

async function begin(main: HTMLElement): Promise<void> {
  const references = findReferences(main);
  const { page = '' } = dataOf('handout', main);
  await whenDrawn(main);
  number(main, references, page);
  const choice = main.querySelector<HTMLSelectElement>('.paper-size');
  if (choice === null) return;
  choice.value = paperOf();
  choice.addEventListener('change', () => {
    keepSetting('paper', choice.value);
    number(main, references, page);
  });
  choice.closest<HTMLElement>('[hidden]')?.removeAttribute('hidden');
}

/** What has yet to come would move what stands below it. */
async function whenDrawn(main: HTMLElement): Promise<void> {
  const pictures = [...main.querySelectorAll('img')];
  for (const picture of pictures) picture.loading = 'eager';
  await Promise.all([
    document.fonts.ready,
    // One that does not come has no height, on paper too.
    ...pictures.map((picture) => picture.decode().catch(() => {})),
  ]);
}

function number(main: HTMLElement, references: readonly Reference[], page: string): void {
  const paper = paperOf();
  document.documentElement.dataset.paper = paper;
  usePaper(main, paper);
  whileMeasured(() => {
    for (let pass = 0; pass < mostPasses; pass++) {
      // First all is read, then all is written: else each would lay the course out anew.
      const pages = references.map(({ link, target }) => ({
        here: pageOf(link, main),
        there: pageOf(target, main),
      }));
      const changed = references.filter((reference, index) => {
        const { here = 0, there = 0 } = pages[index] ?? {};
        const isNear = here === there && !reference.isContents;
        return tellPage(reference, isNear ? '' : fill(page, { n: String(there) }), String(there));
      });
      if (changed.length === 0) break;
    }
  });
}

/** The size of a page is nothing that a selector can choose. */
function usePaper(main: HTMLElement, paper: string): void {
  const { letter = '' } = dataOf('handout', main);
  const known = main.querySelector<HTMLLinkElement>('.letter-paper');
  if (known !== null) known.media = paper === 'letter' ? 'print' : 'not all';
  else if (paper === 'letter') {
    main.append(
      element('link', { class: 'letter-paper', rel: 'stylesheet', media: 'print', href: letter }),
    );
  }
}

/** The reader's choice, else that of his country: letter in North America and the Philippines, A4 elsewhere. */
function paperOf(): string {
  const { paper } = document.documentElement.dataset;
  if (paper !== undefined) return paper;
  const { region = '' } = new Intl.Locale(navigator.language || 'en-GB');
  return ['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'VE'].includes(region) ? 'letter' : 'a4';
}
