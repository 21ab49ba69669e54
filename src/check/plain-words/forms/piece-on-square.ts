import { listed, readBoard, sideName, squaresOf } from '../../../chess/index.ts';
import type { Form } from './form.ts';

export const pieceOnSquare: Form = {
  reads:
    'A piece that is named on a square: “the knight on d5”, “White’s bishop on g2”, “the c8 bishop”.',
  reach: 'near',
  names: true,
  judge({ kind, color, side, squares }, { position }) {
    if (!kind || squares.length === 0) return undefined;
    const own = color ?? (side === 'us' ? undefined : side);
    const board = readBoard(position);
    const wrong = squares.find((square) => {
      const piece = board.get(square);
      return piece?.kind !== kind || (own !== undefined && piece.color !== own);
    });
    if (wrong === undefined) return { holds: true, because: '' };
    const there = board.get(wrong);
    const because = there
      ? `${sideName(there.color)} has a ${there.kind} on ${wrong}`
      : `${wrong} is empty`;
    const sides = own ? [own] : (['white', 'black'] as const);
    const standing = sides.flatMap((of) => {
      const on = squaresOf(board, of, kind).sort();
      return on.length === 0 ? [] : [`${sideName(of)} has a ${kind} on ${listed(on)}`];
    });
    const instead =
      standing.length === 0 || kind === 'pawn' ? undefined : `${standing.join(', ')}.`;
    return { holds: false, because, ...(instead && { instead }) };
  },
  examples: [
    {
      moves: '1. e4 e5 2. Nf3 Nc6',
      says: 'The knight on f3 looks at e5.',
      holds: true,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6',
      says: 'The knight on f4 looks at g6.',
      holds: false,
      because: 'f4 is empty',
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6',
      says: "Black's knight on f3 is strong.",
      holds: false,
      because: 'White has a knight on f3',
    },
    { moves: '1. e4 e5 2. Nf3 Nc6', says: 'The pawns on e4 and e5 face each other.', holds: true },
    { moves: '1. e4 e5 2. Nf3 Nc6', says: 'A knight on d5 would be strong.' },
    { moves: '1. e4 e5 2. Nf3 Nc6', says: 'White wants to put the knight on d5.' },
    { moves: '1. e4 e5 2. Nf3 Nc6', says: 'After 3.Bc4 the bishop on c4 looks at f7.' },
    {
      moves: '1. e4 e5 2. Nf3 Nc6',
      language: 'de',
      says: 'Der Springer auf d6 steht im Weg.',
      holds: false,
      because: 'd6 is empty',
    },
    { moves: '1. e4 e5 2. Nf3 Nc6', language: 'de', says: 'Weiß stellt den Springer auf g5.' },
    {
      moves: '1. e4 e5 2. Nf3 Nc6',
      language: 'es',
      says: 'El caballo de d6 estorba.',
      holds: false,
      because: 'd6 is empty',
    },
    { moves: '1. e4 e5 2. Nf3 Nc6', language: 'es', says: 'El caballo entra en g5.' },
  ],
};
