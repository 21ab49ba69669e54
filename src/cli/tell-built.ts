import type { SiteSummary } from '../site/index.ts';
import { stderr, stdout } from './console.ts';

/** More than a phone should load without being asked (a judgement, no source). */
const heavy = 50_000_000;

/** Says that a site has no search by words, where that is so. */
export function tellLack({ noWordIndex }: SiteSummary): void {
  if (noWordIndex === undefined) return;
  stderr.print`The site has no search by words, since its indexer cannot run here (${noWordIndex}).\n`;
  stderr.print`Install Linewright again without leaving out optional packages; all other pages are whole.\n`;
}

/** Says what burdens a reader's browser, or is too much for it. */
export function tellWeight({ kept: { left, bytes } }: Pick<SiteSummary, 'kept'>): void {
  if (left.length > 0) {
    stdout.print`Too large to be kept for reading offline: ${left.join(', ')}\n`;
  }
  if (bytes > heavy) {
    const size = Math.round(bytes / 1_000_000);
    stdout.print`A reader's browser keeps ${size} MB for reading offline: smaller pictures in media/ would help.\n`;
  }
}
