import {
  type Loss,
  lossAfter,
  type MaterialBudget,
  numberedSan,
  sideName,
} from '../../chess/index.ts';
import type { Finding } from '../../diagnostics/index.ts';
import type { MoveNode } from '../../model/index.ts';
import { isAssessment } from '../../movetext/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { advisedIn } from '../shared/advised-in.ts';
import { isCompensationTold } from '../shared/compensation.ts';
import { moveName } from '../shared/move-name.ts';
import type { CourseView } from '../view/index.ts';

/** Pawns' worth: a pawn alone is often given in openings, and nobody says so. */
const least = 2;

/** Positions that are looked at in a chapter, at the most: some two seconds. */
const mostSearched = 1_000_000;

export const materialEnPrise = defineCourseRule({
  id: 'material-en-prise',
  severity: 'warning',
  finds: 'Advice that leaves more than a pawn to be taken, with nothing shown for it.',
  documentation: `
After the advised move the other side has a capture that wins at least two pawns' worth, what the move
itself took set against it: by static exchange on the square, by captures on the whole board, and against
every answer of the course's side to the capture, with two moves in full and captures behind them. So an
exchange that goes on, a bigger threat, a fork or a mate in return is no finding; neither is a loss that no
other move would have saved. Pieces count 9, 5, 3, 3 and 1 (common practice, no source).

A student who is to give something must see what for. Cover the capture and answer it, say it in a comment
on the line (a sacrifice, a gambit, compensation, an attack, a trap), or mark the move \`!?\`, \`!\` or \`!!\`, or
with \`∞\` or a verdict for the other side. What stands behind an \`:option\` or a bad move of the course's side is no advice. A
pawn alone is never missed: this is no engine.
`,
  examples: [
    {
      title: 'The queen is left to be taken',
      course: '```moves\n1. e4 e5 2. Nf3 d6 3. Bc4 Bg4 4. h3 Bh5 5. Nxe5\n```',
      findings: [
        {
          at: '2:44-2:48',
          message:
            'After 5.Nxe5 Black wins 3 pawns’ worth with 5...Bxd1, and the course shows nothing for it.',
          hint: 'Cover 5...Bxd1 and its answer, say in a comment what there is for it, mark the move `!?`, or correct it.',
        },
      ],
    },
    {
      title: 'The capture is covered, or said to be meant',
      course:
        '```moves\n1. e4 e5 2. Nf3 d6 3. Bc4 Bg4 4. Nc3 g6 5. Nxe5 Bxd1 6. Bxf7+ Ke7 7. Nd5#\n```\n\n```moves\n1. e4 e5 2. Nf3 Nc6 3. Bc4 Nf6 4. Ng5 d5 5. exd5 Nxd5 6. Nxf7 {A sacrifice: the king must come out.} Kxf7\n```',
      findings: [],
    },
    {
      title: 'An exchange that goes on, and a piece that a fork wins back',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6\n```\n\n```moves\n1. e4 e5 2. Nf3 Nc6 (2... Nf6 3. Nc3 Nc6 4. Bc4 Nxe4 5. Nxe4) 3. Bb5 {:end[so far]}\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    if (course.side === 'both') return;
    const budget = { left: mostSearched };
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const index of advisedIn(block, course)) {
        const node = block.nodes[index];
        const parent = block.nodes[node?.parent ?? -1];
        if (!node || !parent || isMeant(node)) continue;
        const loss = findLoss(node, parent, course, budget);
        const place = placeOf(node, block);
        if (budget.left <= 0) {
          yield { place, ...tooMany };
          return;
        }
        if (!loss || isCompensationTold(chapter, block, node)) continue;
        yield { place, ...describe(node, parent, loss) };
      }
    }
  },
});

const tooMany = {
  message:
    'From here on nobody looks for material that is left to be taken: too much of it is in this chapter.',
  hint: 'Divide the chapter into several, or mend what was found before.',
};

function describe(node: MoveNode, parent: MoveNode, { capture, lost }: Loss) {
  const name = numberedSan(capture);
  const isMate = capture.san.endsWith('#');
  const what = isMate ? `mates with ${name}` : `wins ${lost} pawns’ worth with ${name}`;
  return {
    message: `After ${moveName(node, parent)} ${sideName(capture.color)} ${what}, and the course shows nothing for it.`,
    hint: `Cover ${name} and its answer, say in a comment what there is for it, mark the move \`!?\`, or correct it.`,
  } satisfies Partial<Finding>;
}

/**
 * Whether a sign shows that the author knows what the move gives: `!` or `!?`, compensation, unclear play, or a
 * verdict for the other side. That it is equal, or better still, is what the board doubts.
 */
function isMeant({ glyphs, move }: MoveNode): boolean {
  const other = move?.color === 'white' ? 1 : 0;
  return glyphs.some(
    (nag) =>
      [1, 3, 5, 13].includes(nag) ||
      (nag >= 14 && isAssessment(nag) && nag % 2 === other) ||
      (nag >= 44 && nag <= 47),
  );
}

/** The capture that wins what an advised move leaves, unless the course covers it. */
function findLoss(
  { move }: MoveNode,
  { position: before }: MoveNode,
  course: CourseView,
  budget: MaterialBudget,
): Loss | undefined {
  if (!move || !before) return undefined;
  let covered: ReadonlySet<string> | undefined;
  const shown = (san: string) => {
    covered ??= new Set(course.ask('covered', move.after.key));
    return covered.has(san);
  };
  return lossAfter(before, move, { least, budget, shown });
}
