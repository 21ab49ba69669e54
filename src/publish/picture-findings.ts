import path from 'node:path';
import type { Image } from 'mdast';
import { visit } from 'unist-util-visit';
import type { Diagnostic, Place } from '../diagnostics/index.ts';
import type { Chapter } from '../model/index.ts';

/** Pictures without words, in a book that somebody vouches for: it cannot say so then. */
export function wordlessFindings(chapters: readonly Chapter[]): Diagnostic[] {
  return imagesIn(chapters).flatMap(({ alt, place }) =>
    alt?.trim()
      ? []
      : {
          rule: 'book-certified',
          severity: 'warning' as const,
          place,
          message:
            'This picture has no words, so the e-book does not say who vouches for it (`certified`).',
          hint: 'Write what it shows between the brackets: `![A pawn on d5](…)`.',
          related: [],
        },
  );
}

/**
 * Pictures of a kind that many readers cannot show in a book or a letter: their words stand there
 * instead. `kinds` are the file endings that can be shown.
 */
export function pictureFindings(
  chapters: readonly Chapter[],
  kinds: ReadonlyMap<string, string>,
  what: { readonly rule: string; readonly readers: string },
): Diagnostic[] {
  return imagesIn(chapters).flatMap(({ url, place }) => {
    const ending = path.extname(url).toLowerCase();
    if (kinds.has(ending)) return [];
    return {
      rule: what.rule,
      severity: 'warning',
      place,
      message: `Many ${what.readers} do not show pictures of the kind \`${ending}\`: the words of this one stand in its place.`,
      hint: `Save it as one of ${[...kinds.keys()].map((kind) => `\`${kind}\``).join(', ')}.`,
      related: [],
    };
  });
}

function imagesIn(chapters: readonly Chapter[]) {
  return chapters.flatMap(({ body, file }) => {
    const images: (Pick<Image, 'url' | 'alt'> & { readonly place: Place })[] = [];
    visit(body, 'image', ({ url, alt, position }: Image) => {
      if (position === undefined) return;
      const point = ({ line, column, offset = 0 }: typeof position.start) => ({
        line,
        column,
        offset,
      });
      const place = { file, start: point(position.start), end: point(position.end) };
      images.push({ url, alt, place });
    });
    return images;
  });
}
