/** chess.js as a second judge of what the core has played: the only file that imports it. */
import { Chess, type PieceSymbol } from 'chess.js';
import type { PlayedTree } from '../types.ts';

/** Where the two sets of rules differ. */
export interface Disagreement {
  /** The position in which the move was played. */
  readonly fen: string;
  readonly san: string;
  /** What chess.js says, as a clause: `is no legal move`, `is Nbd2`, `leads to …`. */
  readonly verdict: string;
}

/** By position and move, what chess.js said before: the position behind it. Lines share their beginnings. */
export type Replayed = Map<string, Map<string, string>>;

/** Replays a tree and returns the first difference: of legality, of spelling, of the position reached. */
export function judgeTree(
  { start, moves }: PlayedTree,
  replayed: Replayed = new Map(),
): Disagreement | undefined {
  const board = createBoard(start);
  /** The position behind each move, by its index. */
  const behind: string[] = [];
  const first = board.fen();
  for (const index of depthFirst(moves)) {
    const move = moves[index] as PlayedTree['moves'][number];
    const { san } = move;
    const fen = behind[move.parent] ?? first;
    let known = replayed.get(fen);
    if (known === undefined) {
      known = new Map();
      replayed.set(fen, known);
    }
    let after = known.get(san);
    if (after === undefined) {
      board.goTo(fen);
      if (!board.play(san)) return { fen, san, verdict: verdictOf(fen, san) };
      after = board.fen();
      known.set(san, after);
    }
    if (after !== move.fen) return { fen, san, verdict: `leads to ${after}` };
    behind[index] = after;
  }
  return undefined;
}

/** Each move behind the one before it, a line to its end: in a text a variation stands amid its line. */
function* depthFirst(moves: PlayedTree['moves']): Generator<number> {
  const children = new Map<number, number[]>();
  for (const [index, { parent }] of moves.entries()) {
    const others = children.get(parent);
    if (others === undefined) children.set(parent, [index]);
    else others.push(index);
  }
  const open = [...(children.get(-1) ?? [])].reverse();
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    yield next;
    open.push(...(children.get(next) ?? []).reverse());
  }
}

interface InnerMove {
  readonly to: number;
}

/**
 * What chess.js has for its own use. Its public `move` and `undo` describe each move, for which they look for all legal
 * moves once more and write FENs: most of their time. The names hold for the version that is installed.
 */
interface Inner {
  readonly _turn: 'w' | 'b';
  _moves(of: { readonly piece: PieceSymbol; readonly legal: false }): readonly InnerMove[];
  _isKingAttacked(color: 'w' | 'b'): boolean;
  _moveToSan(move: InnerMove, among: readonly InnerMove[]): string;
  _makeMove(move: InnerMove): void;
  _undoMove(): void;
}

/** A board of chess.js that goes along the lines of a tree. */
function createBoard(start: string) {
  const chess = new Chess(start, { skipValidation: true });
  const inner = chess as unknown as Inner;
  /** Where it stands, with where it came from by moves that can be taken back. */
  let line = [chess.fen()];
  return {
    fen: () => line.at(-1) as string,
    goTo(fen: string): void {
      const back = line.lastIndexOf(fen);
      if (back === -1) {
        chess.load(fen, { skipValidation: true });
        line = [fen];
        return;
      }
      while (line.length > back + 1) {
        inner._undoMove();
        line.pop();
      }
    },
    /** Plays the legal move of exactly this name, if there is one. */
    play(san: string): boolean {
      const legal = legalMoves(inner, san);
      const move = legal.find((each) => inner._moveToSan(each, legal) === san);
      if (move === undefined) return false;
      inner._makeMove(move);
      line.push(chess.fen());
      return true;
    },
  };
}

/**
 * The legal moves that may have a name: of its piece, to its square. By what chess.js does for its own list of legal
 * moves, but only for these; a name depends on no others.
 */
function legalMoves(inner: Inner, san: string): readonly InnerMove[] {
  const to = squareIn(san);
  const us = inner._turn;
  return inner._moves({ piece: pieceIn(san), legal: false }).filter((move) => {
    if (to !== undefined && move.to !== to) return false;
    inner._makeMove(move);
    const isLegal = !inner._isKingAttacked(us);
    inner._undoMove();
    return isLegal;
  });
}

function pieceIn(san: string): PieceSymbol {
  const [, letter = 'P'] = /^([KQRBN])/.exec(san.replace(/^O/, 'K')) ?? [];
  return letter.toLowerCase() as PieceSymbol;
}

/** The square that a move goes to, as chess.js counts them: from a8, sixteen a rank. Castling names none. */
function squareIn(san: string): number | undefined {
  const [, file, rank] = /([a-h])([1-8])(?:=[NBRQ])?[+#]?$/.exec(san) ?? [];
  if (file === undefined) return undefined;
  return (8 - Number(rank)) * 16 + file.charCodeAt(0) - 'a'.charCodeAt(0);
}

/** Why a move cannot be played under this name. */
function verdictOf(fen: string, san: string): string {
  try {
    const chess = new Chess(fen, { skipValidation: true });
    return `is ${chess.move(san, { strict: true }).san}`;
  } catch {
    return 'is no legal move';
  }
}
