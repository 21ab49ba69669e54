import {
  type Board,
  type Color,
  colors,
  otherColor,
  type PieceKind,
  readBoard,
  type Square,
  sideName,
  sideToMove,
} from '../../../chess/index.ts';
import { whyNotCovered } from '../../shared/why-not-covered.ts';
import type { Meaning } from '../phrase.ts';
import { type Form, type Situation, type StatementVerdict, whoIs } from './form.ts';

/** Whether some piece looks at a square, also behind one other piece on its line. */
function looksAt(board: Board, square: Square, by: Color, kind: PieceKind | undefined): boolean {
  return [...board].some(
    ([home, piece]) =>
      piece.color === by &&
      (kind === undefined || piece.kind === kind) &&
      whyNotCovered({ piece, home }, home, square, board) === undefined,
  );
}

/** Who attacks or guards: who is named, whose piece is named; else whoever has just moved. */
function whoActs(meaning: Meaning, situation: Situation): readonly Color[] {
  const who = meaning.color ?? whoIs(meaning, situation);
  if (who !== undefined) return [who];
  if (meaning.side === 'us') return [];
  return meaning.kind ? colors : [otherColor(sideToMove(situation.position))];
}

const judge =
  (act: 'attack' | 'guard') =>
  (meaning: Meaning, situation: Situation): StatementVerdict | undefined => {
    const { kind, squares } = meaning;
    const sides = whoActs(meaning, situation);
    if (sides.length === 0) return undefined;
    const board = readBoard(situation.position);
    const isOwn = (square: Square, by: Color) =>
      act === 'attack' && board.get(square)?.color === by;
    const missed = squares.find(
      (square) => !sides.some((by) => looksAt(board, square, by, kind) && !isOwn(square, by)),
    );
    if (missed === undefined) return { holds: true, because: '' };
    const there = board.get(missed);
    if (there && sides.every((by) => isOwn(missed, by))) {
      return {
        holds: false,
        because: `${missed} has a ${there.kind} of ${sideName(there.color)}'s own`,
      };
    }
    const [only] = sides;
    const whose = sides.length === 1 && only ? `${sideName(only)}'s` : 'either side';
    return { holds: false, because: `no ${kind ?? 'piece'} of ${whose} looks at ${missed}` };
  };

export const attacks: Form = {
  reads: 'An attack on squares: “the knight attacks d4”, “Black attacks d4”.',
  reach: 'near',
  judge: judge('attack'),
  examples: [
    { moves: '1. e4 e5 2. Nf3', says: 'The knight attacks e5 a first time.', holds: true },
    {
      moves: '1. e4 e5 2. Nf3',
      says: 'The knight attacks c5 at once.',
      holds: false,
      because: 'no knight of either side looks at c5',
    },
    {
      moves: '1. e4 e5 2. Nf3',
      says: 'White attacks d2.',
      holds: false,
      because: "d2 has a pawn of White's own",
    },
    { moves: '1. e4 e5 2. Nf3', says: 'Black attacks c4.', holds: false },
    { moves: '1. e4 e5 2. Nf3', says: 'A knight that attacks f7 would be better.' },
    { moves: '1. e4 e5 2. Nf3', says: 'The knight then attacks f7.' },
    { moves: '1. e4 e5 2. Nf3', language: 'de', says: 'Weiß greift c5 an.', holds: false },
    { moves: '1. e4 e5 2. Nf3', language: 'es', says: 'El caballo ataca c5.', holds: false },
  ],
};

/** What a comment says of the move that it stands behind. */
export const attacksNow: Form = {
  reads: 'What a move attacks: “attacks d5 and b7”, at the beginning of a sentence.',
  reach: 'here',
  judge: judge('attack'),
  examples: [
    { moves: '1. e4 e5 2. Nf3', says: 'attacks e5.', holds: true },
    {
      moves: '1. e4 e5 2. Nf3',
      says: 'Hits e5 and c5.',
      holds: false,
      because: "no piece of White's looks at c5",
    },
    { moves: '1. e4 e5 2. Nf3', says: 'attacks c5 as soon as it has moved.' },
    { moves: '1. e4 e5 2. Nf3', language: 'de', says: 'greift c5 an.', holds: false },
    { moves: '1. e4 e5 2. Nf3', language: 'es', says: 'ataca c5.', holds: false },
  ],
};

export const guards: Form = {
  reads: 'A guard of squares: “guards d5” behind a move, “the bishop guards g7”.',
  reach: 'near',
  judge: judge('guard'),
  examples: [
    { moves: '1. e4 e5 2. Nf3 Nc6', says: 'guards e5.', holds: true },
    { moves: '1. e4 e5 2. Nf3 Nc6', says: 'hits d4 and guards e5.', holds: true },
    {
      moves: '1. e4 e5 2. Nf3 Nc6',
      says: 'guards e4.',
      holds: false,
      because: "no piece of Black's looks at e4",
    },
    { moves: '1. e4 e5 2. Nf3 Nc6', says: 'Nothing guards e4 after the exchange.' },
    { moves: '1. e4 e5 2. Nf3 Nc6', language: 'de', says: 'deckt e4.', holds: false },
    { moves: '1. e4 e5 2. Nf3 Nc6', language: 'es', says: 'defiende e4.', holds: false },
  ],
};
