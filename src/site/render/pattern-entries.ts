import { toHtml } from 'hast-util-to-html';
import { chapterAt } from '../../model/index.ts';
import type { PatternEntry } from '../site-data.ts';
import type { SharedContext } from './context.ts';
import { renderPattern } from './pattern.ts';

/** All patterns of the course, in its order. */
export function patternEntries(context: SharedContext): PatternEntry[] {
  const { course, addresses } = context;
  const blocks = course.chapters.flatMap((chapter) => chapter.blocks);
  return blocks.flatMap((block, index): PatternEntry[] => {
    if (block.kind !== 'pattern') return [];
    const ref = { chapter: block.chapter, block: block.key, node: 0 };
    return [
      {
        html: toHtml(renderPattern(context, block, `pattern-${index + 1}`), {
          allowDangerousHtml: true,
        }),
        chapter: chapterAt(course, block)?.title ?? '',
        href: addresses.href(ref),
      },
    ];
  });
}
