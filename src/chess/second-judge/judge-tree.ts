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

/**
 * Replays a tree and returns the first difference: of legality, of spelling, of the position reached.
 * @param replayed what chess.js said of moves before: position, move and the position behind it. Lines share
 *   their beginnings.
 */
export function judgeTree(
  { start, moves }: PlayedTree,
  replayed = new Map<string, string>(),
): Disagreement | undefined {
  const chess = new Chess(start, { skipValidation: true });
  /** Where chess.js stands. */
  let at = chess.fen();
  /** The position behind each move, by its index. */
  const behind = new Map([[-1, at]]);
  for (const index of depthFirst(moves)) {
    const { parent, san, key } = moves[index] as PlayedTree['moves'][number];
    const fen = behind.get(parent) ?? start;
    let after = replayed.get(`${fen} ${san}`);
    if (after === undefined) {
      // To load is cheaper than to undo, which describes the move that it takes back.
      if (fen !== at) chess.load(fen, { skipValidation: true });
      if (!play(chess, san)) return { fen, san, verdict: verdictOf(chess, san) };
      after = at = chess.fen();
      replayed.set(`${fen} ${san}`, after);
    }
    if (!after.startsWith(`${key} `)) return { fen, san, verdict: `leads to ${after}` };
    behind.set(index, after);
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

/** What chess.js has for its own use. */
interface Inner {
  _moves(of: { readonly piece: PieceSymbol }): readonly object[];
  _moveToSan(move: object, among: readonly object[]): string;
  _makeMove(move: object): void;
}

/**
 * Plays the legal move of exactly this name, if there is one, as the PGN reader of chess.js does. Its `move` also
 * describes each move, for which it looks for all legal moves once more and writes three FENs: twice the time. The
 * names are private, and hold for the version that is installed.
 */
function play(chess: Chess, san: string): boolean {
  const inner = chess as unknown as Inner;
  const moves = inner._moves({ piece: pieceIn(san) });
  const move = moves.find((each) => inner._moveToSan(each, moves) === san);
  if (move) inner._makeMove(move);
  return move !== undefined;
}

function pieceIn(san: string): PieceSymbol {
  const [, letter = 'P'] = /^([KQRBN])/.exec(san.replace(/^O/, 'K')) ?? [];
  return letter.toLowerCase() as PieceSymbol;
}

/** Why a move cannot be played under this name. */
function verdictOf(chess: Chess, san: string): string {
  try {
    return `is ${chess.move(san, { strict: true }).san}`;
  } catch {
    return 'is no legal move';
  }
}
