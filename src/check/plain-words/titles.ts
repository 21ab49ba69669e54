/** Titles of chapters and of positions, and summaries: what they speak of. */
import type { Text } from 'mdast';
import type { Chapter } from '../../model/index.ts';
import type { CourseView } from '../view/index.ts';
import type { Passage } from './passage.ts';
import { around, blockOf, inChapter, situationAt, situationsOf } from './situations.ts';
import { type PlainText, plainText } from './text.ts';

/** What the front matter says may be true anywhere in the chapter. */
export function frontText(nodes: readonly Text[], chapter: Chapter, course: CourseView): Passage {
  const shown = inChapter(chapter, course);
  return {
    text: plainText(nodes, chapter.file),
    kind: 'front',
    ...(shown && { shown }),
    loose: true,
    near: function* () {
      for (const block of chapter.blocks) yield* situationsOf(block, course);
    },
    takesClaims: false,
  };
}

/** The titles of positions that a text gives, each said of its position. */
export function titlesIn(
  { directives, file }: PlainText,
  chapter: Chapter,
  course: CourseView,
): Passage[] {
  const titles: Passage[] = [];
  for (const { id, title, titleRange } of directives) {
    const ref = title === undefined ? undefined : chapter.spoken.directives[id];
    const block = ref && blockOf(chapter, ref.block);
    if (title === undefined || !titleRange || !block) continue;
    const { start, end } = titleRange;
    const shown = situationAt(block.nodes, ref.node, block, course);
    const isStraight = end.offset - start.offset === title.length;
    titles.push({
      text: plainText([{ type: 'text', value: title, position: titleRange }], file),
      kind: 'heading',
      ...(shown && { shown }),
      loose: false,
      near: () => around(block.nodes, ref.node, block, course),
      ...(!isStraight && { place: { file, start, end } }),
      takesClaims: false,
    });
  }
  return titles;
}
