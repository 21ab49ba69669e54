/**
 * The rules of play on a board that is changed in place. Its counts of moves are held against the
 * published perft tables, and chess.js judges what is published a second time.
 *
 * Squares are numbered 16 * (rank - 1) + file - 1, so that a step off the board shows in the bits of 0x88.
 * One file, since speed depends on it: with attacks and the numbers of kinds and steps in modules of their
 * own, a perft takes a fifth longer.
 */
import { kindOfLetter } from '../board.ts';
import { fileOf, rankOf, squareAt } from '../squares.ts';
import { type Color, type PieceKind, type Position, pieceKinds, type Square } from '../types.ts';
import { pieceValues } from '../values.ts';
import { writeKey } from './write-key.ts';
import { signOf } from './zobrist.ts';

/** A move: the from-square, the to-square and what a pawn becomes, in seven bits each. */
export type CoreMove = number;

/** Kinds count from 1 in the order of `pieceKinds`; a black piece is negative. */
const king = 1;
const queen = 2;
const rook = 3;
const bishop = 4;
const knight = 5;
const pawn = 6;

/** By kind, as cells count them. */
const values = [0, ...pieceKinds.map((kind) => pieceValues[kind])];

const straight = [1, 16, -1, -16];
const diagonal = [15, 17, -15, -17];
const around = [...straight, ...diagonal];
const jumps = [14, 18, 31, 33, -14, -18, -31, -33];
const promotions = [queen, knight, rook, bishop];

const fileNumbers = { c: 2, g: 6 };

/** The rights KQkq as bits; a move from or to one of these squares leaves only the bits given. */
const rightsLeft = new Map([
  [0x04, 0b1100],
  [0x07, 0b1110],
  [0x00, 0b1101],
  [0x74, 0b0011],
  [0x77, 0b1011],
  [0x70, 0b0111],
]);
const rightsKept = Int8Array.from({ length: 128 }, (_, square) => rightsLeft.get(square) ?? 0b1111);

export interface DescribedMove {
  readonly kind: PieceKind;
  readonly from: Square;
  readonly to: Square;
  readonly promotion?: PieceKind;
  /** What it takes, and where that stands: elsewhere than `to` for a capture en passant. */
  readonly taken?: { readonly kind: PieceKind; readonly square: Square };
}

/** So many numbers are kept of a move that was made. */
const undoLength = 6;

export class GameBoard {
  private readonly cells = new Int8Array(128);
  /** 1 where White is to move, -1 where Black is. */
  private turn = 1;
  private rights = 0;
  /** The square passed over by a double step, or -1. */
  private enPassant = -1;
  private whiteKing = -1;
  private blackKing = -1;
  /** For each move made: the move, what it moved and took, and rights, `enPassant` and hash before it. */
  private undos = new Int32Array(0);
  private made = 0;
  /** What `signature` gives, but for the side to move; kept up with each move. */
  private hash = 0;

  /** @param start another board for a copy of it, on which none of its moves can be taken back. */
  constructor(start: Pick<Position, 'fen'> | GameBoard) {
    if (start instanceof GameBoard) this.copy(start);
    else this.read(start.fen);
  }

  /** Becomes a copy of another board, on which no move can be taken back. */
  copy({ cells, turn, rights, enPassant, whiteKing, blackKing, hash }: GameBoard): void {
    this.made = 0;
    this.cells.set(cells);
    this.turn = turn;
    this.rights = rights;
    this.enPassant = enPassant;
    this.whiteKing = whiteKing;
    this.blackKing = blackKing;
    this.hash = hash;
  }

  private read(fen: string): void {
    const [placement = '', turn, rights = '', enPassant = '-'] = fen.split(' ');
    let square = 0x70;
    for (const letter of placement) {
      if (letter === '/') square = (square & 0x70) - 0x10;
      else if (letter >= '1' && letter <= '8') square += Number(letter);
      else {
        const kind = kindOfLetter[letter.toLowerCase()];
        const color = letter === letter.toUpperCase() ? 1 : -1;
        if (kind !== undefined) this.put(square, color * (pieceKinds.indexOf(kind) + 1));
        if (kind === 'king' && color > 0) this.whiteKing = square;
        if (kind === 'king' && color < 0) this.blackKing = square;
        square++;
      }
    }
    this.turn = turn === 'b' ? -1 : 1;
    for (const [bit, letter] of [...'KQkq'].entries()) {
      if (rights.includes(letter)) this.rights |= 1 << bit;
    }
    if (enPassant !== '-') this.enPassant = numberOf(enPassant);
  }

  /** Moves by the way pieces go; some may leave the own king in check, which `make` refuses. */
  moves(): CoreMove[] {
    const found: CoreMove[] = [];
    for (let from = 0; from < 120; from++) {
      if (from & 0x88) {
        from += 7;
        continue;
      }
      const piece = this.at(from) * this.turn;
      if (piece > 0) this.movesFrom(from, piece, found);
    }
    this.castlings(found);
    return found;
  }

  /** Puts those of the pieces of one kind that go to one square into `found`; castling is not among them. */
  movesTo(to: number, kind: number, found: CoreMove[]): void {
    if (this.at(to) * this.turn > 0) return;
    if (kind === pawn) {
      this.pawnMovesTo(to, found);
      return;
    }
    const far = kind !== king && kind !== knight;
    for (const step of kind === knight ? jumps : linesOf(kind)) {
      let from = to + step;
      while (far && !(from & 0x88) && this.at(from) === 0) from += step;
      if (!(from & 0x88) && this.at(from) === kind * this.turn) found.push(from | (to << 7));
    }
  }

  /** Whether a move of `moves` takes something. */
  takes(move: CoreMove): boolean {
    const to = (move >> 7) & 0x7f;
    if (this.at(to) !== 0) return true;
    return to === this.enPassant && this.at(move & 0x7f) * this.turn === pawn;
  }

  /** What a move of `moves` wins at once, in pawns: what it takes, and what a pawn becomes more than a pawn. */
  worth(move: CoreMove): number {
    const to = (move >> 7) & 0x7f;
    const passing = to === this.enPassant && this.at(move & 0x7f) * this.turn === pawn;
    const taken = passing ? pawn : Math.abs(this.at(to));
    const promotion = move >> 14;
    return (values[taken] ?? 0) + (promotion ? (values[promotion] ?? 0) - (values[pawn] ?? 0) : 0);
  }

  /** Castling, to the `g` or the `c` file. */
  castling(file: 'g' | 'c'): CoreMove | undefined {
    const found: CoreMove[] = [];
    this.castlings(found);
    return found.find((move) => ((move >> 7) & 7) === fileNumbers[file]);
  }

  /** `Position.key` of the board as it stands. */
  key(): string {
    const passed = this.passed();
    return writeKey(this.cells, this.turn, this.rights, passed < 0 ? undefined : nameOf(passed));
  }

  /**
   * A number that positions with the same pieces and the same side to move share. Others hardly ever
   * do, so that most can be told apart before a key is written.
   */
  signature(): number {
    return this.turn > 0 ? this.hash : ~this.hash;
  }

  /** Whether two boards have the same `key`. */
  isAs(other: GameBoard): boolean {
    if (this.turn !== other.turn || this.rights !== other.rights) return false;
    const [own, others] = [this.cells, other.cells];
    for (let square = 0; square < 120; square++) {
      // Eight cells behind each rank stand for no square.
      if (square & 8) square += 8;
      if (own[square] !== others[square]) return false;
    }
    return this.passed() === other.passed();
  }

  /** The square passed over by a pawn that may be taken there; else -1. */
  private passed(): number {
    return this.enPassant >= 0 && this.canPass() ? this.enPassant : -1;
  }

  /** Plays a move of `moves`; false, and nothing is changed, if it leaves the own king in check. */
  make(move: CoreMove): boolean {
    const { turn } = this;
    const from = move & 0x7f;
    const to = (move >> 7) & 0x7f;
    const moved = this.at(from);
    const kind = moved * turn;
    const takenAt = kind === pawn && to === this.enPassant ? to - 16 * turn : to;
    const taken = this.at(takenAt);
    this.keep(move, moved, taken);
    if (taken !== 0) this.put(takenAt, 0);
    this.put(from, 0);
    this.put(to, move >> 14 ? (move >> 14) * turn : moved);
    if (kind === king) {
      this.setKing(turn, to);
      if (Math.abs(to - from) === 2) this.moveRook(from, to);
    }
    this.rights &= (rightsKept[from] ?? 0) & (rightsKept[to] ?? 0);
    this.enPassant = kind === pawn && Math.abs(to - from) === 32 ? (from + to) >> 1 : -1;
    this.turn = -turn;
    if (!this.attacked(this.kingOf(turn), -turn)) return true;
    this.unmake();
    return false;
  }

  /** Writes down what `unmake` needs. */
  private keep(move: CoreMove, moved: number, taken: number): void {
    const at = undoLength * this.made++;
    if (at === this.undos.length) {
      const longer = new Int32Array(2 * at + 16 * undoLength);
      longer.set(this.undos);
      this.undos = longer;
    }
    const { undos } = this;
    undos[at] = move;
    undos[at + 1] = moved;
    undos[at + 2] = taken;
    undos[at + 3] = this.rights;
    undos[at + 4] = this.enPassant;
    undos[at + 5] = this.hash;
  }

  /** How many moves can be taken back. */
  movesMade(): number {
    return this.made;
  }

  /** Takes back the last move made, and returns it. */
  unmake(): CoreMove | undefined {
    if (this.made === 0) return undefined;
    const { cells, undos } = this;
    const at = undoLength * --this.made;
    this.turn = -this.turn;
    const move = undos[at] ?? 0;
    const moved = undos[at + 1] ?? 0;
    this.rights = undos[at + 3] ?? 0;
    this.enPassant = undos[at + 4] ?? 0;
    this.hash = undos[at + 5] ?? 0;
    const from = move & 0x7f;
    const to = (move >> 7) & 0x7f;
    const kind = moved * this.turn;
    cells[to] = 0;
    cells[from] = moved;
    cells[kind === pawn && to === this.enPassant ? to - 16 * this.turn : to] = undos[at + 2] ?? 0;
    if (kind === king) {
      this.setKing(this.turn, from);
      if (Math.abs(to - from) === 2) {
        const [home, beside] = to > from ? [to + 1, to - 1] : [to - 2, to + 1];
        cells[home] = this.at(beside);
        cells[beside] = 0;
      }
    }
    return move;
  }

  /** All legal moves, in the order in which a FEN names the squares that they start from: a8 first. */
  legalMoves(): CoreMove[] {
    const legal = this.moves().filter((move) => {
      if (!this.make(move)) return false;
      this.unmake();
      return true;
    });
    return legal.sort((one, other) => ((one & 0x7f) ^ 0x70) - ((other & 0x7f) ^ 0x70));
  }

  /** Whether the side to move has a legal move. */
  hasLegalMove(): boolean {
    return this.moves().some((move) => {
      if (!this.make(move)) return false;
      this.unmake();
      return true;
    });
  }

  sideToMove(): Color {
    return this.turn > 0 ? 'white' : 'black';
  }

  /** Whether the side to move is in check. */
  inCheck(): boolean {
    return this.attacked(this.kingOf(this.turn), -this.turn);
  }

  /** A move in words. */
  describe(move: CoreMove): DescribedMove {
    const from = move & 0x7f;
    const to = (move >> 7) & 0x7f;
    const passing = this.at(from) * this.turn === pawn && to === this.enPassant;
    const takenAt = passing ? to - 16 * this.turn : to;
    const kind = kindOf(this.at(from)) ?? 'pawn';
    const taken = kindOf(this.at(takenAt));
    const promotion = kindOf(move >> 14);
    return {
      kind,
      from: nameOf(from),
      to: nameOf(to),
      ...(promotion && { promotion }),
      ...(taken && { taken: { kind: taken, square: nameOf(takenAt) } }),
    };
  }

  /** Whether an en-passant capture is legal. */
  private canPass(): boolean {
    const beside = this.enPassant - 16 * this.turn;
    for (const from of [beside - 1, beside + 1]) {
      if (from & 0x88 || this.at(from) * this.turn !== pawn) continue;
      if (this.make(from | (this.enPassant << 7))) {
        this.unmake();
        return true;
      }
    }
    return false;
  }

  private put(square: number, cell: number): void {
    const old = this.at(square);
    this.hash ^= signOf(old, square) ^ signOf(cell, square);
    this.cells[square] = cell;
  }

  private at(square: number): number {
    return this.cells[square] ?? 0;
  }

  private kingOf(color: number): number {
    return color > 0 ? this.whiteKing : this.blackKing;
  }

  private setKing(color: number, square: number): void {
    if (color > 0) this.whiteKing = square;
    else this.blackKing = square;
  }

  private moveRook(from: number, to: number): void {
    const [home, beside] = to > from ? [to + 1, to - 1] : [to - 2, to + 1];
    this.put(beside, this.at(home));
    this.put(home, 0);
  }

  private movesFrom(from: number, kind: number, found: CoreMove[]): void {
    if (kind === pawn) this.pawnMoves(from, found);
    else if (kind === knight) this.steps(from, jumps, false, found);
    else if (kind === king) this.steps(from, around, false, found);
    else this.steps(from, linesOf(kind), true, found);
  }

  private steps(from: number, steps: readonly number[], far: boolean, found: CoreMove[]): void {
    for (const step of steps) {
      for (let to = from + step; !(to & 0x88); to += step) {
        const standing = this.at(to) * this.turn;
        if (standing <= 0) found.push(from | (to << 7));
        if (standing !== 0 || !far) break;
      }
    }
  }

  private pawnMoves(from: number, found: CoreMove[]): void {
    const ahead = 16 * this.turn;
    const stop = from + ahead;
    if (this.at(stop) === 0) {
      this.pushPawnMove(from, stop, found);
      const home = from >> 4 === (this.turn > 0 ? 1 : 6);
      if (home && this.at(stop + ahead) === 0) this.pushPawnMove(from, stop + ahead, found);
    }
    for (let to = stop - 1; to <= stop + 1; to += 2) {
      if (to & 0x88) continue;
      if (this.at(to) * this.turn < 0 || to === this.enPassant) this.pushPawnMove(from, to, found);
    }
  }

  /** The moves of pawns to a square that no piece of their own stands on. */
  private pawnMovesTo(to: number, found: CoreMove[]): void {
    const ahead = 16 * this.turn;
    const own = pawn * this.turn;
    const below = to - ahead;
    // Beyond the edge nothing stands.
    if (this.at(to) === 0) {
      if (this.at(below) === own) this.pushPawnMove(below, to, found);
      const isDouble = to >> 4 === (this.turn > 0 ? 3 : 4) && this.at(below) === 0;
      if (isDouble && this.at(below - ahead) === own) this.pushPawnMove(below - ahead, to, found);
    }
    if (this.at(to) === 0 && to !== this.enPassant) return;
    for (let from = below - 1; from <= below + 1; from += 2) {
      if (!(from & 0x88) && this.at(from) === own) this.pushPawnMove(from, to, found);
    }
  }

  private pushPawnMove(from: number, to: number, found: CoreMove[]): void {
    const isLast = to >> 4 === (this.turn > 0 ? 7 : 0);
    if (isLast) for (const kind of promotions) found.push(from | (to << 7) | (kind << 14));
    else found.push(from | (to << 7));
  }

  private castlings(found: CoreMove[]): void {
    const white = this.turn > 0;
    const rights = white ? this.rights & 0b11 : this.rights >> 2;
    if (rights === 0) return;
    const home = white ? 0x04 : 0x74;
    const safe = (square: number) => !this.attacked(square, -this.turn);
    const empty = (...steps: number[]) => steps.every((step) => this.at(home + step) === 0);
    if (!safe(home)) return;
    if (rights & 1 && empty(1, 2) && safe(home + 1)) found.push(home | ((home + 2) << 7));
    if (rights & 2 && empty(-1, -2, -3) && safe(home - 1)) found.push(home | ((home - 2) << 7));
  }

  /** Whether a side attacks a square. */
  private attacked(square: number, by: number): boolean {
    // A white pawn attacks from below.
    const below = square - 16 * by;
    if (!((below - 1) & 0x88) && this.at(below - 1) * by === pawn) return true;
    if (!((below + 1) & 0x88) && this.at(below + 1) * by === pawn) return true;
    for (const step of jumps) {
      const from = square + step;
      if (!(from & 0x88) && this.at(from) * by === knight) return true;
    }
    return (
      this.attackedAlong(square, by, straight, rook) ||
      this.attackedAlong(square, by, diagonal, bishop)
    );
  }

  private attackedAlong(
    square: number,
    by: number,
    steps: readonly number[],
    kind: number,
  ): boolean {
    for (const step of steps) {
      let from = square + step;
      // Beyond the edge nothing stands.
      if (this.at(from) * by === king) return true;
      let standing = 0;
      for (; standing === 0 && !(from & 0x88); from += step) standing = this.at(from) * by;
      if (standing === kind || standing === queen) return true;
    }
    return false;
  }
}

function linesOf(kind: number): readonly number[] {
  if (kind === rook) return straight;
  return kind === bishop ? diagonal : around;
}

function numberOf(square: Square): number {
  return 16 * (rankOf(square) - 1) + fileOf(square) - 1;
}

function nameOf(square: number): Square {
  return squareAt((square & 7) + 1, (square >> 4) + 1) ?? '';
}

function kindOf(cell: number): PieceKind | undefined {
  return pieceKinds[Math.abs(cell) - 1];
}
