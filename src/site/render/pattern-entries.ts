import { toHtml } from 'hast-util-to-html';
import { chapterAt } from '../../model/index.ts';
import { pageMedium, renderPattern, resolveAll } from '../../render/index.ts';
import type { PatternEntry } from '../site-data.ts';
import type { SiteContext } from './site-context.ts';

/** All patterns of the course, in its order. */
export function patternEntries(context: SiteContext): PatternEntry[] {
  const { course, addresses, strings } = context;
  const page = pageMedium(addresses);
  const blocks = course.chapters.flatMap((chapter) => chapter.blocks);
  return blocks.flatMap((block, index): PatternEntry[] => {
    if (block.kind !== 'pattern') return [];
    const pattern = renderPattern(context, block, { id: `pattern-${index + 1}` });
    const html = toHtml(resolveAll([pattern], page, strings), { allowDangerousHtml: true });
    const ref = { chapter: block.chapter, block: block.key, node: 0 };
    const chapter = chapterAt(course, block)?.title ?? '';
    return [{ html, chapter, href: addresses.href(ref) }];
  });
}
