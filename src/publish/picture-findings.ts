import path from 'node:path';
import type { Image } from 'mdast';
import { visit } from 'unist-util-visit';
import type { Diagnostic } from '../diagnostics/index.ts';
import type { Chapter } from '../model/index.ts';

/**
 * Pictures of a kind that many readers cannot show in a book or a letter: their words stand there
 * instead. `kinds` are the file endings that can be shown.
 */
export function pictureFindings(
  chapters: readonly Chapter[],
  kinds: ReadonlyMap<string, string>,
  what: { readonly rule: string; readonly readers: string },
): Diagnostic[] {
  return chapters.flatMap(({ body, file }) => {
    const findings: Diagnostic[] = [];
    visit(body, 'image', ({ url, position }: Image) => {
      const ending = path.extname(url).toLowerCase();
      if (kinds.has(ending) || position === undefined) return;
      const point = ({ line, column, offset = 0 }: typeof position.start) => ({
        line,
        column,
        offset,
      });
      findings.push({
        rule: what.rule,
        severity: 'warning',
        place: { file, start: point(position.start), end: point(position.end) },
        message: `Many ${what.readers} do not show pictures of the kind \`${ending}\`: the words of this one stand in its place.`,
        hint: `Save it as one of ${[...kinds.keys()].map((kind) => `\`${kind}\``).join(', ')}.`,
        related: [],
      });
    });
    return findings;
  });
}
