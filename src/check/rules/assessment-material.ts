import {
  type Color,
  findMate,
  type MaterialBudget,
  type Position,
  pieceValues,
  readBoard,
  sideName,
  sideToMove,
  wonByMoves,
} from '../../chess/index.ts';
import { glyphMeaning, isAssessment } from '../../movetext/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { isCompensationTold } from '../shared/compensation.ts';
import { after } from '../shared/words.ts';

/** Pawns' worth: a piece. For less there may be compensation that is seen at a glance. */
const least = 3;

/** How far a mate is searched, in moves and in positions. */
const mateIn = 2;
const mostForMate = 100_000;

/** Positions that are looked at in a chapter, at the most. */
const mostSearched = 500_000;

export const assessmentMaterial = defineCourseRule({
  id: 'assessment-material',
  severity: 'warning',
  finds: 'A verdict for the side that is a piece down, with no word of compensation.',
  documentation: `
A sign such as \`+-\` or \`±\` says that a side stands better. Where a line ends with one, that side has at
least three pawns' worth less (9, 5, 3, 3 and 1: common practice, no source), no capture wins it back, nor any
move behind which a capture does, and it has no mate in two moves, the sign was probably meant for the other
side, or a move is wrong.

If it is right, say what there is for the material: in a comment on the line (a sacrifice, compensation, an
attack), or by the moves that show it.
`,
  examples: [
    {
      title: 'The sign of the other side',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6 3. Nxe5 Nxe5 4. d4 +-\n```',
      side: 'both',
      findings: [],
    },
    {
      title: 'A queen less, and called winning',
      course: '```moves\n1. e4 e5 2. Nf3 d6 3. Bc4 Bg4 4. h3 Bh5 5. Nxe5 Bxd1 6. Kxd1 dxe5 +-\n```',
      side: 'both',
      findings: [
        {
          at: '2:62',
          message:
            'After 6...dxe5 the verdict is “White has a decisive advantage”, and White is 8 pawns’ worth down.',
          hint: 'Turn the sign round, mend the line, or say in a comment what there is for the material.',
        },
      ],
    },
    {
      title: 'Compensation in words, and a mate on the board',
      course:
        '```moves\n1. e4 e5 2. Nf3 d6 3. Bc4 Bg4 4. Nc3 g6 5. Nxe5 Bxd1 +-\n```\n\n```moves fen="6k1/5ppp/8/8/8/8/1r3PPP/3R2K1 b - - 0 1"\n1... Rb8 {a long attack} -+\n```',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const budget = { left: mostSearched };
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        const nag = node.glyphs.findLast(isAssessment);
        const side = nag === undefined ? undefined : betterSide(nag);
        const { position } = node;
        if (nag === undefined || !side || !position || node.children.length > 0) continue;
        const down = -balanceFor(position, side);
        if (down < least || course.ask('covered', position.key).length > 0) continue;
        if (down - winsBack(position, side, budget) < least || budget.left <= 0) continue;
        if (isMating(position, side) || isCompensationTold(chapter, block, node)) continue;
        const parent = block.nodes[node.parent ?? -1];
        yield {
          place: placeOf(node, block),
          message: `${after(node, parent)} the verdict is “${glyphMeaning(nag)}”, and ${sideName(side)} is ${down} pawns’ worth down.`,
          hint: 'Turn the sign round, mend the line, or say in a comment what there is for the material.',
        };
      }
    }
  },
});

/** Of $14 to $21 (PGN standard, section 10) the even ones are for White. */
function betterSide(nag: number): Color | undefined {
  if (nag < 14) return undefined;
  return nag % 2 === 0 ? 'white' : 'black';
}

/** In pawns. */
function balanceFor(position: Position, side: Color): number {
  let balance = 0;
  for (const { color, kind } of readBoard(position).values()) {
    balance += color === side ? pieceValues[kind] : -pieceValues[kind];
  }
  return balance;
}

/** What the side gets back: with its move and what follows, or with captures behind any move of the other. */
function winsBack(position: Position, side: Color, budget: MaterialBudget): number {
  return sideToMove(position) === side
    ? wonByMoves(position, 2, budget)
    : -wonByMoves(position, 1, budget);
}

function isMating(position: Position, side: Color): boolean {
  return findMate(position, side, mateIn, mostForMate).result === 'mate';
}
