import type { PatternBlock } from '../../model/index.ts';
import { chapterBudget, type SearchBudget } from '../claims/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { failuresAt } from '../shared/pattern-holds.ts';
import { placeOfName } from '../shared/place-of-name.ts';
import { type CourseView, patternAsked } from '../view/index.ts';

export const patternException = defineCourseRule({
  id: 'pattern-exception',
  severity: 'error',
  finds: 'An exception to a pattern that excepts nothing.',
  documentation: `
Under \`except\` stand the names of positions that have the pattern, but in which its \`advice\`, \`claim\` or
\`text\` does not hold. An exception that is not needed, since the position does not have the pattern, or has it
and everything holds there, would hide the next mistake. A text is not checked, so a pattern with a text may
except any position that has it.
`,
  examples: [
    {
      title: 'The position does not have the pattern',
      course:
        '```moves\n1. d4 d5 {:here[closed]} 2. c4 dxc4 3. e3\n```\n\n```pattern\ntitle: Pawn taken\nwhite: d4\nblack: c4\nclaim: half-open d black\nexcept: closed\n```',
      findings: [
        {
          at: '10:9-10:15',
          message: 'The position `closed` does not have this pattern, so it needs no exception.',
          hint: 'Take the name out of `except`.',
        },
      ],
    },
    {
      title: 'Everything holds there',
      course:
        '```moves\n1. d4 d5 2. c4 dxc4 {:here[taken]} 3. e3\n```\n\n```pattern\ntitle: Pawn taken\nwhite: d4\nblack: c4\nclaim: half-open d black\nexcept: taken\n```',
      findings: [
        {
          at: '10:9',
          message: 'Everything that this pattern says holds in `taken`, so it needs no exception.',
          hint: 'Take the name out of `except`.',
        },
      ],
    },
    {
      title: 'An exception that is needed',
      course:
        '```moves\n1. d4 d5 2. c4 dxc4 3. e3 e5 {:here[struck]} 4. Bxc4\n```\n\n```pattern\ntitle: Pawn taken\nwhite: d4\nblack: c4\nclaim: not attacks e5 d4\nexcept: struck\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const search = { left: chapterBudget };
    for (const block of chapter.blocks) {
      if (block.kind !== 'pattern') continue;
      for (const { name, place } of block.except) {
        const message = whyNeedless(name, block, course, search);
        if (message === undefined) continue;
        yield {
          place,
          message: `${message}, so it needs no exception.`,
          hint: 'Take the name out of `except`.',
          related: placeOfName(name, course),
        };
      }
    }
  },
});

function whyNeedless(
  name: string,
  block: PatternBlock,
  course: CourseView,
  search: SearchBudget,
): string | undefined {
  const position = course.ask('name', name);
  const places = course.ask('matches', patternAsked(block));
  // A name that nobody gives, and a pattern that is not looked for, have findings of their own.
  if (!position || !places) return undefined;
  const at = places.find(({ key }) => key === position.key);
  if (!at) return `The position \`${name}\` does not have this pattern`;
  if (block.text.length > 0 || failuresAt(block, at, course, search).length > 0) return undefined;
  return `Everything that this pattern says holds in \`${name}\``;
}
