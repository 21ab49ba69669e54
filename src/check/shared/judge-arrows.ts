/** Whether the arrows of a board say what they mean. The definition stands in the rule `arrow-false`. */
import {
  type Board,
  between,
  fileOf,
  isDark,
  type Piece,
  relativeRank,
  type Square,
  squareAt,
  step,
} from '../../chess/index.ts';
import { type Arrow, arrowMeanings } from '../../model/index.ts';
import { type Mover, whyNotCovered } from './why-not-covered.ts';

type ArrowOnBoard = Pick<Arrow, 'meaning' | 'from' | 'to'>;

export interface BrokenArrow<Drawn extends ArrowOnBoard> {
  readonly arrow: Drawn;
  /** Why it does not hold: one English clause about the board, without a full stop. */
  readonly because: string;
  /** Whether it is a threat that would be true as a guard. */
  readonly isGuard: boolean;
}

/** What the arrows so far have moved. */
interface Moved {
  readonly board: Board;
  /** Who has come to a square. */
  readonly arrived: Map<Square, Mover[]>;
  /** Squares of the board that were left. */
  readonly left: Set<Square>;
  /** Where broken arrows lead: nobody knows what would stand there. */
  readonly unknown: Set<Square>;
}

/** The arrows drawn on one board that break their definition, in the order given. */
export function judgeArrows<Drawn extends ArrowOnBoard>(
  board: Board,
  arrows: readonly Drawn[],
): BrokenArrow<Drawn>[] {
  const moved: Moved = { board, arrived: new Map(), left: new Set(), unknown: new Set() };
  const broken = new Map<Drawn, BrokenArrow<Drawn>>();
  // A threat may begin where a plan ends, whichever is written first.
  for (const meaning of arrowMeanings) {
    for (const arrow of arrows) {
      if (arrow.meaning !== meaning || moved.unknown.has(arrow.from)) continue;
      const because = judge(arrow, moved);
      if (because === undefined) continue;
      moved.unknown.add(arrow.to);
      const isGuard =
        meaning === 'threat' && judge({ ...arrow, meaning: 'guard' }, moved) === undefined;
      broken.set(arrow, { arrow, because, isGuard });
    }
  }
  return arrows.flatMap((arrow) => broken.get(arrow) ?? []);
}

/** Why an arrow does not hold; absent where it does, and then it has moved its piece. */
function judge({ meaning, from, to }: ArrowOnBoard, moved: Moved): string | undefined {
  const movers = moversOn(from, moved);
  const [first] = movers;
  if (first === undefined) return `${from} is empty`;
  let why: string | undefined;
  for (const mover of movers) {
    const because = judgeMover[meaning](mover, from, to, moved);
    if (because === undefined) {
      if (meaning !== 'guard') move(mover, from, to, moved);
      return undefined;
    }
    why ??= because;
  }
  return why;
}

function moversOn(square: Square, { board, arrived }: Moved): Mover[] {
  const piece = board.get(square);
  return [...(piece ? [{ piece, home: square }] : []), ...(arrived.get(square) ?? [])];
}

function move(mover: Mover, from: Square, to: Square, { board, arrived, left }: Moved): void {
  const arrive = (square: Square, who: Mover) => {
    const there = arrived.get(square) ?? [];
    if (there.some(({ home }) => home === who.home)) return;
    arrived.set(square, [...there, who]);
  };
  arrive(to, mover);
  if (mover.home === from) left.add(from);
  const rook = castlingRook(mover.piece, from, to, board);
  if (!rook) return;
  left.add(rook.from);
  arrive(rook.to, { piece: rook.piece, home: rook.from });
}

/** The rook that goes along where a king on its first square goes two squares aside. */
function castlingRook(piece: Piece, from: Square, to: Square, board: Board) {
  const rank = piece.color === 'white' ? 1 : 8;
  if (piece.kind !== 'king' || from !== `e${rank}`) return undefined;
  const [corner, beside] = to === `g${rank}` ? ['h', 'f'] : to === `c${rank}` ? ['a', 'd'] : [];
  const rook = board.get(`${corner}${rank}`);
  if (rook?.kind !== 'rook' || rook.color !== piece.color) return undefined;
  return { piece: rook, from: `${corner}${rank}`, to: `${beside}${rank}` };
}

type JudgeMover = (mover: Mover, from: Square, to: Square, moved: Moved) => string | undefined;

const judgeMover: Readonly<Record<Arrow['meaning'], JudgeMover>> = {
  plan(mover, from, to, moved) {
    const { piece } = mover;
    const there = moved.board.get(to);
    const stays = there && !moved.left.has(to) && !moved.arrived.has(to);
    if (stays && there.color === piece.color) {
      return `${aPiece(there)} of the same side stands on ${to}`;
    }
    if (piece.kind === 'pawn') return whyNoPawnGoes(mover, from, to, moved);
    if (piece.kind === 'bishop' && isDark(from) !== isDark(to)) {
      return `the bishop on ${from} never comes to a ${isDark(to) ? 'dark' : 'light'} square`;
    }
    return undefined;
  },
  threat(mover, from, to, moved) {
    const there = moved.board.get(to);
    const pushes = mover.piece.kind === 'pawn' && fileOf(from) === fileOf(to);
    if (pushes) return whyNotPushed(mover, from, to, moved.board);
    const because = whyNotCovered(mover, from, to, moved.board);
    if (because !== undefined) return because;
    return there?.color === mover.piece.color && !moved.left.has(to)
      ? `${aPiece(there)} of the same side stands on ${to}`
      : undefined;
  },
  guard: ({ piece, home }, from, to, { board }) => whyNotCovered({ piece, home }, from, to, board),
};

/** Why a pawn could not advance to a square with its next move. */
function whyNotPushed({ piece }: Mover, from: Square, to: Square, board: Board) {
  const far = relativeRank(to, piece.color) - relativeRank(from, piece.color);
  const reach = relativeRank(from, piece.color) === 2 ? 2 : 1;
  if (far < 1) return `the pawn on ${from} moves the other way`;
  if (far > reach) return `the pawn on ${from} does not reach ${to} with one move`;
  const blocked = [...(between(from, to) ?? []), to].find((square) => board.has(square));
  return blocked && `${blocked} is not empty, and a pawn does not take straight ahead`;
}

/** Why a pawn cannot come to a square, in however many moves. */
function whyNoPawnGoes({ piece }: Mover, from: Square, to: Square, moved: Moved) {
  const { board, left, arrived } = moved;
  const name = `the pawn on ${from}`;
  const far = relativeRank(to, piece.color) - relativeRank(from, piece.color);
  const aside = Math.abs(fileOf(to) - fileOf(from));
  if (far < 1) return `${name} moves the other way`;
  if (aside > far) return `${name} cannot come to ${to}`;
  if (aside === 0) {
    const ram = [...(between(from, to) ?? []), to].find(
      (square) => board.get(square)?.kind === 'pawn' && !left.has(square),
    );
    return ram && `a pawn stands on ${ram}, and ${name} does not take straight ahead`;
  }
  if (far > 1 || arrived.has(to) || board.get(to)) return undefined;
  const beside = squareAt(fileOf(to), Number(from[1]));
  const enPassant =
    relativeRank(from, piece.color) === 5 &&
    [beside, step(to, 0, piece.color === 'white' ? 1 : -1)].some((square) => {
      const other = square === undefined ? undefined : board.get(square);
      return other?.kind === 'pawn' && other.color !== piece.color;
    });
  return enPassant ? undefined : `${name} gets to ${to} only by taking, and nothing stands there`;
}

function aPiece({ kind }: Piece): string {
  return `a ${kind}`;
}
