import { type Piece, type Position, readBoard, sideToMove, squares } from '../../chess/index.ts';
import { movesAndStarts } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { placeOfName } from '../shared/place-of-name.ts';

export const sameNotSame = defineCourseRule({
  id: 'same-not-same',
  severity: 'error',
  finds: 'A stated transposition that is none.',
  documentation: `
\`:same[name]\` says that this position is the named one, reached by other moves. Two positions are the
same if the same pieces stand on the same squares, the same side is to move, and the rights to castle
and to capture en passant are the same (FIDE Laws of Chess, article 9.2). The finding names what
differs.
`,
  examples: [
    {
      title: 'A tempo is missing',
      course:
        '```moves\n1. d4 d5 2. c4 {:here[gambit]} e6\n```\n\n```moves\n1. c4 e6 2. d4 {:same[gambit]} d5\n```',
      side: 'both',
      findings: [
        {
          at: '6:17-6:30',
          message:
            'This is not the position `gambit`: here a black pawn stands on d7 and there on d5; here a black pawn stands on e6 and there on e7.',
          hint: 'Correct the moves or the name, or link with `[…](pos:gambit)` if only the idea is the same.',
        },
      ],
    },
    {
      title: 'Another position altogether',
      course:
        '```moves fen="4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"\n{:here[ending]} 1. e4 Ke7\n```\n\n```moves\n1. e4 e5 {:same[ending]} 2. Nf3\n```',
      side: 'both',
      findings: [
        {
          at: '6:11-6:24',
          message:
            'This is not the position `ending`: here a black rook stands on a8 and there none; here a black knight stands on b8 and there none; here a black bishop stands on c8 and there none; here a black queen stands on d8 and there none; and 27 more differences.',
          hint: 'Correct the moves or the name, or link with `[…](pos:ending)` if only the idea is the same.',
        },
      ],
    },
    {
      title: 'The same position by another order',
      course:
        '```moves\n1. d4 d5 2. c4 e6 {:here[qgd]}\n```\n\n```moves\n1. c4 e6 2. d4 d5 {:same[qgd]}\n```',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const { node } of movesAndStarts(chapter)) {
      for (const { name, argument, place } of node.statements) {
        const there = name === 'same' ? course.ask('name', argument) : undefined;
        if (!node.position || !there || node.position.key === there.key) continue;
        yield {
          place,
          message: `This is not the position \`${argument}\`: ${listDifferences(node.position, there)}.`,
          hint: `Correct the moves or the name, or link with \`[…](pos:${argument})\` if only the idea is the same.`,
          related: placeOfName(argument, course),
        };
      }
    }
  },
});

/** So many differences say that it is another position; more only fill the screen. */
const mostTold = 4;

function listDifferences(here: Position, there: Position): string {
  const all = differences(here, there);
  const told = all.length > mostTold + 1 ? all.slice(0, mostTold) : all;
  const left = all.length - told.length;
  return [...told, ...(left > 0 ? [`and ${left} more differences`] : [])].join('; ');
}

/** What differs, in words; a piece that stands elsewhere is told once. */
function differences(here: Position, there: Position): string[] {
  const said: string[] = [];
  if (sideToMove(here) !== sideToMove(there)) {
    const name = sideToMove(here) === 'white' ? 'White' : 'Black';
    said.push(`here ${name} is to move and there the other side`);
  }
  const onlyHere: { square: string; piece: Piece }[] = [];
  const onlyThere: { square: string; piece: Piece }[] = [];
  const boards = [readBoard(here), readBoard(there)] as const;
  for (const square of squares) {
    const [a, b] = [boards[0].get(square), boards[1].get(square)];
    if (a?.kind === b?.kind && a?.color === b?.color) continue;
    if (a) onlyHere.push({ square, piece: a });
    if (b) onlyThere.push({ square, piece: b });
  }
  for (const { square, piece } of onlyHere) {
    const like = ({ piece: other }: { piece: Piece }) =>
      other.kind === piece.kind && other.color === piece.color;
    // A pawn that stands further on is told as that pawn.
    const onFile = onlyThere.findIndex((other) => like(other) && other.square[0] === square[0]);
    const at = onFile < 0 ? onlyThere.findIndex(like) : onFile;
    const [twin] = at < 0 ? [] : onlyThere.splice(at, 1);
    said.push(
      twin
        ? `here ${aPiece(piece)} stands on ${square} and there on ${twin.square}`
        : `here ${aPiece(piece)} stands on ${square} and there none`,
    );
  }
  for (const { square, piece } of onlyThere) {
    said.push(`there ${aPiece(piece)} stands on ${square} and here none`);
  }
  const [, , castling = '', enPassant = ''] = here.key.split(' ');
  const [, , castlingThere = '', enPassantThere = ''] = there.key.split(' ');
  if (castling !== castlingThere) said.push('the rights to castle differ');
  if (enPassant !== enPassantThere)
    said.push('a capture en passant is possible in one of them only');
  return said;
}

function aPiece({ color, kind }: Piece): string {
  return `a ${color} ${kind}`;
}
