import { glyphMeaning, isAssessment } from '../../movetext/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { after, whereIs } from '../words.ts';

export const assessmentConflict = defineCourseRule({
  id: 'assessment-conflict',
  severity: 'error',
  finds: 'One position judged in two ways.',
  documentation: `
An assessment is a sign such as \`=\`, \`⩲\` or \`-+\` behind a move; it judges the position after it.
Where two lines meet, or one is told twice, the verdicts must agree. The three signs for equal
chances ($10, $11, $12) count as one verdict.
`,
  examples: [
    {
      title: 'The verdicts differ where two orders meet',
      course:
        '```moves\n1. d4 d5 2. c4 e6 3. Nc3 {:here[x]} = \n```\n\n```moves\n1. c4 e6 {:option[or so]} 2. Nc3 d5 3. d4 {:same[x]} ±\n```',
      side: 'black',
      findings: [
        {
          start: '6:40',
          message:
            'After 3.d4 the position is called “White has a moderate advantage”, but in line 2 “drawish position”.',
          hint: 'Decide on one verdict, or leave one of them out.',
        },
      ],
    },
    {
      title: 'The same verdict twice',
      course: '```moves\n1. e4 e5 =\n```\n\n```moves\n1. e4 e5 $11 2. Nf3\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        const nag = node.glyphs.findLast(isAssessment);
        if (nag === undefined || !node.position) continue;
        const { key } = node.position;
        const first = course.ask('verdict', key);
        if (first === undefined || verdict(nag) === verdict(first)) continue;
        const there = course.ask('verdictPlace', key);
        if (!there) continue;
        const place = placeOf(node, block);
        const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
        yield {
          place,
          message: `${after(node, parent)} the position is called “${glyphMeaning(nag)}”, but ${whereIs(there, place)} “${glyphMeaning(first)}”.`,
          hint: 'Decide on one verdict, or leave one of them out.',
          related: [{ place: there, message: `“${glyphMeaning(first)}” is said here` }],
        };
      }
    }
  },
});

function verdict(nag: number): number {
  return nag === 11 || nag === 12 ? 10 : nag;
}
