import type { SiteSummary } from '../site/index.ts';
import { stderr, stdout } from './console.ts';

/** Bytes that no phone should load unasked (our judgement, no source). */
const heavy = 50_000_000;

/** Says so if the site has no search by words. */
export function tellLack({ noWordIndex }: SiteSummary): void {
  if (noWordIndex === undefined) return;
  stderr.print`The site has no search by words, since its indexer cannot run here (${noWordIndex}).\n`;
  stderr.print`Install Linewright again without leaving out optional packages; all other pages are whole.\n`;
}

/** Says what burdens readers' browsers. */
export function tellWeight({ kept: { left, bytes } }: Pick<SiteSummary, 'kept'>): void {
  if (left.length > 0) {
    stdout.print`Too large to be kept for reading offline: ${left.join(', ')}\n`;
  }
  if (bytes > heavy) {
    const size = Math.round(bytes / 1_000_000);
    stdout.print`A reader's browser keeps ${size} MB for reading offline: smaller pictures in media/ would help.\n`;
  }
}
