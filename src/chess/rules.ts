/**
 * The rules of play, by chess.js: the only file that imports it. One game is kept set up, since
 * the position that is asked for next is most often the one just reached.
 */
import { Chess, type PieceSymbol, type Square as SquareOfChessJs } from 'chess.js';
import { kindOfLetter, pieceAt, readBoard, sideToMove, squaresOf } from './board.ts';
import type { PieceKind, PlayedMove, Position, Square } from './types.ts';

/** A move that may be played. */
export interface LegalMove {
  /** Canonical SAN (PGN standard, 8.2.3). */
  readonly san: string;
  readonly kind: PieceKind;
  readonly from: Square;
  readonly to: Square;
  readonly capture: boolean;
  readonly promotion?: PieceKind;
}

const game = new Chess();
let onBoard = game.fen();

function setUp(fen: string): Chess {
  if (onBoard !== fen) {
    game.load(fen, { skipValidation: true });
    onBoard = fen;
  }
  return game;
}

/** The position of a FEN that is known to be sound; castling rights put in order, en passant only where it is legal. */
export function settle(fen: string): Position {
  return positionOf(setUp(fen).fen());
}

function positionOf(fen: string): Position {
  const clock = fen.lastIndexOf(' ', fen.lastIndexOf(' ') - 1);
  return { fen, key: fen.slice(0, clock) };
}

/** Plays a move written in SAN; absent if that names no legal move. Its `+` or `#` is not looked at. */
export function playSan(position: Position, san: string): PlayedMove | undefined {
  const chess = setUp(position.fen);
  let made: ReturnType<Chess['move']>;
  try {
    made = chess.move(san, { strict: true });
  } catch (error) {
    if (error instanceof Error && error.message.startsWith('Invalid move')) return undefined;
    throw error;
  }
  onBoard = made.after;
  const { from, to } = made;
  const color = sideToMove(position);
  const number = Number(position.fen.slice(position.fen.lastIndexOf(' ') + 1));
  const after = positionOf(made.after);
  const promotion = made.promotion && kindOfLetter[made.promotion];
  const played: PlayedMove = promotion
    ? { san: made.san, from, to, promotion, color, number, after }
    : { san: made.san, from, to, color, number, after };
  return played;
}

/** All legal moves in canonical SAN. */
export function legalMoves(position: Position): string[] {
  return setUp(position.fen).moves();
}

const lists = new WeakMap<Position, readonly LegalMove[]>();

/** All legal moves with their squares, made once for a position object. */
export function listMoves(position: Position): readonly LegalMove[] {
  let list = lists.get(position);
  if (list === undefined) {
    list = makeList(position);
    lists.set(position, list);
  }
  return list;
}

function makeList(position: Position): LegalMove[] {
  const chess = setUp(position.fen);
  const sans = chess.moves();
  const found: LegalMove[] = [];
  for (const from of squaresOf(readBoard(position), sideToMove(position))) {
    const kind = pieceAt(position, from)?.kind;
    if (kind === undefined) continue;
    // For one square, chess.js writes SAN without disambiguation: its target is what counts here.
    for (const short of chess.moves({ square: from as SquareOfChessJs })) {
      const target = targetOf(short, from);
      const san = sans.find((each) => names(each, short, from));
      if (target !== undefined && san !== undefined) {
        found.push({ san, kind, from, capture: san.includes('x'), ...target });
      }
    }
  }
  return found;
}

function targetOf(san: string, from: Square) {
  if (san.startsWith('O-O-O')) return { to: `c${from[1]}` };
  if (san.startsWith('O-O')) return { to: `g${from[1]}` };
  const [, to, letter] = /([a-h][1-8])(?:=([QRBN]))?[+#]?$/.exec(san) ?? [];
  if (to === undefined) return undefined;
  const promotion = letter && kindOfLetter[letter.toLowerCase() as PieceSymbol];
  return promotion ? { to, promotion } : { to };
}

/** Whether a SAN is another without disambiguation, `short`, for the piece on a square. */
function names(san: string, short: string, from: Square): boolean {
  if (san === short) return true;
  const [, letter, origin, rest] = /^([KQRBN])([a-h]?[1-8]?)(x?[a-h][1-8][+#]?)$/.exec(san) ?? [];
  if (letter === undefined || origin === undefined || letter + rest !== short) return false;
  return origin === from || origin === from[0] || origin === from[1];
}

/** Whether the side to move is mated. */
export function isMate(position: Position): boolean {
  return setUp(position.fen).isCheckmate();
}

/** Whether the side to move has no legal move and is not in check. */
export function isStalemate(position: Position): boolean {
  return setUp(position.fen).isStalemate();
}
