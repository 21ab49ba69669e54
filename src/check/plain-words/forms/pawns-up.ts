import {
  type Board,
  type Color,
  otherColor,
  pieceKinds,
  pieceValues,
  readBoard,
  sideName,
  squaresOf,
} from '../../../chess/index.ts';
import { askClaim } from './ask-claim.ts';
import { type Form, type Situation, type StatementVerdict, whoIs } from './form.ts';

export const pawnsUp: Form = {
  reads:
    'Who has more material now: “White is a pawn up”, “Black has an extra pawn”, “we are the exchange down”, “material is level”.',
  reach: 'near',
  judge(meaning, situation) {
    const board = readBoard(situation.position);
    const { words, count = 1 } = meaning;
    if (words.level) return judgeLevel(board, situation);
    const who = whoIs(meaning, situation);
    if (!who) return undefined;
    const side = words.down ? otherColor(who) : who;
    const more = balance(board, side);
    const because = told(board, side);
    if (words.exchange) {
      const rooks = moreOf(board, side, ['rook']);
      const minors = moreOf(board, side, ['bishop', 'knight']);
      return { holds: rooks > 0 && minors < 0, because };
    }
    if (words.officer) return { holds: more >= 2 && more <= 4, because };
    if (more !== count) return { holds: false, because };
    return { holds: true, because, ...claimOf(more, side, situation) };
  },
  examples: [
    { moves: '1. e4 d5 2. exd5', says: 'White is a pawn up.', holds: true },
    { moves: '1. e4 e5', says: 'Black is two pawns up.', holds: false },
    { moves: '1. e4 e5', says: 'White is willing to be a pawn down.' },
    { moves: '1. e4 e5', says: 'If he takes, Black is a pawn up.' },
    { moves: '1. e4 e5', says: 'Material is level.', holds: true },
    { moves: '1. e4 e5', side: 'black', says: 'We are a piece up.', holds: false },
    { moves: '1. e4 e5', language: 'de', says: 'Weiß hat einen Mehrbauern.', holds: false },
    {
      moves: '1. e4 e5',
      language: 'es',
      says: 'Las negras tienen un peón de menos.',
      holds: false,
    },
  ],
};

export const pawnWon: Form = {
  reads: 'What has been won or lost: “Black has won a pawn”, “White has lost a piece”.',
  reach: 'near',
  judge(meaning, situation) {
    const who = whoIs(meaning, situation);
    if (!who) return undefined;
    const side = meaning.words.lost ? otherColor(who) : who;
    const worth = meaning.words.officer ? 2 : 1;
    const now = balance(readBoard(situation.position), side);
    const isMore = situation
      .before()
      .some((position) => now - balance(readBoard(position), side) >= worth);
    if (isMore || now >= worth) return { holds: true, because: '' };
    return { holds: false, because: told(readBoard(situation.position), side) };
  },
  examples: [
    { moves: '1. e4 d5 2. exd5', says: 'White has won a pawn.', holds: true },
    { moves: '1. e4 d5 2. exd5', says: 'Black has won a pawn.', holds: false },
    { moves: '1. e4 d5 2. exd5', says: 'Black has lost a pawn.', holds: true },
    { moves: '1. e4 d5 2. exd5', says: 'White has won a piece.', holds: false },
    { moves: '1. e4 d5 2. exd5', says: 'Soon Black has won a pawn.' },
    {
      moves: '1. e4 d5 2. exd5',
      language: 'de',
      says: 'Weiß hat einen Bauern gewonnen.',
      holds: true,
    },
    { moves: '1. e4 e5', language: 'es', says: 'Las blancas han ganado un peón.', holds: false },
  ],
};

/** Two minor pieces for a rook and a pawn or two are level by any count that is in use. */
function judgeLevel(board: Board, situation: Situation): StatementVerdict | undefined {
  const answer = askClaim('material 0', situation);
  if (answer?.holds) return answer;
  const isOfPawns = pieceKinds.every(
    (kind) => kind === 'pawn' || moreOf(board, 'white', [kind]) === 0,
  );
  const apart = Math.abs(balance(board, 'white'));
  return isOfPawns || apart > 2 ? { holds: false, because: told(board, 'white') } : undefined;
}

function claimOf(more: number, side: Color, situation: Situation): { claim: string } {
  const own = situation.side === 'black' ? 'black' : 'white';
  return { claim: `material ${side === own ? '+' : '-'}${more}` };
}

function moreOf(board: Board, side: Color, kinds: readonly (typeof pieceKinds)[number][]): number {
  const count = (of: Color) =>
    kinds.reduce((sum, kind) => sum + squaresOf(board, of, kind).length, 0);
  return count(side) - count(otherColor(side));
}

const balances = new WeakMap<Board, number>();

/** In pawns, as the side sees it. */
function balance(board: Board, side: Color): number {
  let white = balances.get(board);
  if (white === undefined) {
    white = 0;
    for (const { kind, color } of board.values()) {
      white += color === 'white' ? pieceValues[kind] : -pieceValues[kind];
    }
    balances.set(board, white);
  }
  return side === 'white' ? white : -white;
}

function told(board: Board, side: Color): string {
  const more = balance(board, side);
  if (more === 0) return 'material is level';
  return `${sideName(more > 0 ? side : otherColor(side))} has ${Math.abs(more)} more by the usual count`;
}
