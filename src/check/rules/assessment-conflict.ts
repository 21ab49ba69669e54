import { isMate, isStalemate, type Position, sideName, sideToMove } from '../../chess/index.ts';
import type { Finding } from '../../diagnostics/index.ts';
import { type Block, type MoveNode, movesOf } from '../../model/index.ts';
import { glyphMeaning, isAssessment } from '../../movetext/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';
import { after, whereIs } from '../shared/words.ts';

export const assessmentConflict = defineCourseRule({
  id: 'assessment-conflict',
  severity: 'error',
  finds: 'One position judged in two ways, or otherwise than the board has it.',
  documentation: `
An assessment is a sign such as \`=\`, \`⩲\` or \`-+\` behind a move; it judges the position after it.
Where two lines meet, or one is told twice, the verdicts must agree. The three signs for equal
chances ($10, $11, $12) count as one verdict, and so do \`$18\` and \`$20\`, \`$19\` and \`$21\`, which share a
sign. Behind one move stands one verdict. A mate is decided for the side that mates, and a stalemate is
drawn (FIDE Laws of Chess, articles 5.1.1 and 5.2.1): no sign may say otherwise.
`,
  examples: [
    {
      title: 'The verdicts differ where two orders meet',
      course:
        '```moves\n1. d4 d5 2. c4 e6 3. Nc3 {:here[x]} = \n```\n\n```moves\n1. c4 e6 {:option[or so]} 2. Nc3 d5 3. d4 {:same[x]} ±\n```',
      side: 'black',
      findings: [
        {
          at: '6:40',
          message:
            'After 3.d4 the position is called “White has a moderate advantage”, but in line 2 “equal position”.',
          hint: 'Decide on one verdict, or leave one of them out.',
        },
      ],
    },
    {
      title: 'Two verdicts behind one move',
      course: '```moves\n1. e4 e5 = +-\n```',
      findings: [
        {
          at: '2:7',
          message:
            'Behind 1...e5 stand two verdicts: “equal position” and “White has a decisive advantage”.',
          hint: 'Leave one of them out.',
        },
      ],
    },
    {
      title: 'A verdict for the mated side',
      course: '```moves\n1. f3 e5 2. g4 Qh4# +-\n```',
      side: 'black',
      findings: [
        {
          at: '2:16',
          message:
            'After 2...Qh4# White is mated, and the verdict is “White has a decisive advantage”.',
          hint: 'Turn the sign round, or leave it out.',
        },
      ],
    },
    {
      title: 'The same verdict twice',
      course:
        '```moves\n1. e4 e5 =\n```\n\n```moves\n1. e4 e5 $11 2. Nf3 Nc6 $18\n```\n\n```moves\n1. e4 e5 2. Nf3 Nc6 $20 3. Bb5\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const { block, node, parent } of movesOf(chapter)) {
      const refuted = findOnBoard(block, node, parent);
      if (refuted) yield refuted;
    }
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

/** What the move and the position themselves refute. */
function findOnBoard(block: Block, node: MoveNode, parent: MoveNode): Finding | undefined {
  const nag = node.glyphs.find(isAssessment);
  const { position } = node;
  if (nag === undefined || !position) return undefined;
  const place = placeOf(node, block);
  const other = node.glyphs.find((each) => isAssessment(each) && verdict(each) !== verdict(nag));
  if (other !== undefined) {
    return {
      place,
      message: `Behind ${moveName(node, parent)} stand two verdicts: “${glyphMeaning(nag)}” and “${glyphMeaning(other)}”.`,
      hint: 'Leave one of them out.',
    };
  }
  const end = ending(position);
  if (!end || end.verdict === verdict(nag)) return undefined;
  return {
    place,
    message: `${after(node, parent)} ${end.sentence}, and the verdict is “${glyphMeaning(nag)}”.`,
    hint: 'Turn the sign round, or leave it out.',
  };
}

/** How a game that is over there has ended. */
function ending(position: Position): { sentence: string; verdict: number } | undefined {
  const side = sideToMove(position);
  if (isMate(position)) {
    return { sentence: `${sideName(side)} is mated`, verdict: side === 'white' ? 19 : 18 };
  }
  if (!isStalemate(position)) return undefined;
  return { sentence: `${sideName(side)} is stalemated`, verdict: 10 };
}

/** One number for all that say the same. */
function verdict(nag: number): number {
  if (nag === 11 || nag === 12) return 10;
  return nag === 20 || nag === 21 ? nag - 2 : nag;
}
