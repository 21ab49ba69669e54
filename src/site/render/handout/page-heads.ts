import { createHash } from 'node:crypto';
import { directionOf, type Strings } from '../../../strings/index.ts';
import type { ChapterHead, SiteFile, SiteFrame } from '../../site-data.ts';

/**
 * The heads of the handout's pages: the number, the chapter, its title. A style sheet of the course's own, since
 * what stands in a page's margin is content of CSS, and a page holds no style.
 */
export function pageHeads(
  frame: Pick<SiteFrame, 'language' | 'title'>,
  chapters: readonly (Pick<ChapterHead, 'number' | 'title'> & { readonly isPage?: true })[],
  strings: Strings,
): SiteFile {
  const [start, end] =
    directionOf(frame.language) === 'rtl' ? ['right', 'left'] : ['left', 'right'];
  const heads = chapters.flatMap(({ number, title, isPage }) => [
    `@page c${number}{@top-center{content:${text(isPage ? '' : strings.chapterNumber(number))}}@top-${end}{content:${text(title)}}}`,
    `#c${number}{page:c${number}}`,
  ]);
  const content = `@page{@top-${start}{content:counter(page)}@top-${end}{content:${text(frame.title)}}}
@page:first{@top-${start}{content:none;border:0}@top-center{border:0}@top-${end}{content:none;border:0}}
${heads.join('\n')}
`;
  const edition = createHash('sha256').update(content).digest('hex').slice(0, 12);
  return { path: `page-heads.${edition}.css`, content };
}

/** A string of CSS (CSS Syntax, 4.3.5): whatever is no plain letter or sign is escaped. */
function text(words: string): string {
  const escaped = words.replaceAll(
    /["\\<\p{Cc}]/gu,
    (character) => `\\${character.codePointAt(0)?.toString(16)} `,
  );
  return `"${escaped}"`;
}
