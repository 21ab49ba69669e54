/**
 * The legal moves that an author most probably meant. Every legal move gets the price of the
 * cheapest mistake that turns it into what was written; the cheap ones are offered, best first.
 * The prices have no source: they order slips of pen and memory by how common they are.
 */
import { kindOfLetter } from '../board.ts';
import type { LegalMove } from '../rules.ts';
import { isCastling, type PieceSpelling, plainSpelling, readSpelling } from '../spelling.ts';
import { fileOf, rankOf } from '../squares.ts';
import type { PieceKind } from '../types.ts';
import { kindsOfForeignLetter } from './letters.ts';

const tooDear = 2;
/** Where one reading is this cheap, only others about as cheap are worth a word. */
const clear = 0.7;

/** A reading of what was written, and the price of taking it so. */
interface Reading {
  readonly spelling: PieceSpelling;
  readonly price: number;
}

/** At most four, as canonical SAN. */
export function probableMoves(written: string, legal: readonly LegalMove[]): string[] {
  const plain = plainSpelling(written);
  if (plain === '') return [];
  const readings = readingsOf(plain);
  const priced = legal
    .map((move) => ({ move, price: priceOf(move, plain, readings) }))
    .sort((a, b) => a.price - b.price || byPromotion(a.move, b.move));
  const cheapest = priced[0]?.price ?? 0;
  const limit = cheapest <= clear ? cheapest + 0.4 : tooDear;
  return priced
    .filter(({ price }) => price <= limit)
    .slice(0, 4)
    .map(({ move }) => move.san);
}

const promotionOrder: readonly (PieceKind | undefined)[] = ['queen', 'knight', 'rook', 'bishop'];

export function byPromotion(a: LegalMove, b: LegalMove): number {
  return promotionOrder.indexOf(a.promotion) - promotionOrder.indexOf(b.promotion);
}

function priceOf(move: LegalMove, plain: string, readings: readonly Reading[]): number {
  const prices = readings
    // Two mistakes in one move are too many, but for the sign of capture and the origin.
    .filter(({ spelling, price }) => price === 0 || spelling.to === move.to)
    .map(({ spelling, price }) => price + mismatch(spelling, move));
  return Math.min(
    ...prices,
    slipPrice(plain, move),
    filesPrice(plain, move),
    castlingPrice(plain, move),
  );
}

function readingsOf(plain: string): Reading[] {
  const readings: Reading[] = [];
  const add = (text: string, price: number) => {
    const spelling = readSpelling(text);
    if (spelling !== undefined && !isCastling(spelling)) readings.push({ spelling, price });
  };
  const [first = '', ...others] = plain;
  const rest = others.join('');
  add(plain, 0);
  // Capital and small letters: `nf3`, `bc4`, `Bxc3` for a pawn, `E4`, `NF3`.
  if (/[kqrbn]/.test(first)) add(first.toUpperCase() + rest, 0.5);
  if (/[A-H]/.test(first)) add(first.toLowerCase() + rest, 0.5);
  if (/[A-Z]/.test(rest)) {
    add(first + rest.toLowerCase(), 0.5);
    add(plain.toLowerCase(), 0.5);
  }
  // Letters that look like the digit 1.
  if (/[a-h][lI]$/.test(plain)) add(`${plain.slice(0, -1)}1`, 0.1);
  const foreign = kindsOfForeignLetter(first) ?? [];
  for (const [index, kind] of foreign.entries()) {
    const letter = Object.keys(kindOfLetter).find((each) => kindOfLetter[each] === kind) ?? '';
    add(letter.toUpperCase() + rest, 0.6 + index * 0.2);
  }
  return readings;
}

/** What it costs to have written one move for another: wrong square, piece, origin, sign. */
function mismatch(spelling: PieceSpelling, move: LegalMove): number {
  const origin = (spelling.file ?? '') + (spelling.rank ?? '');
  const sameKind =
    spelling.kind === move.kind || (spelling.kind === undefined && move.from === origin);
  const right = Math.abs(fileOf(spelling.to) - fileOf(move.to));
  const up = Math.abs(rankOf(spelling.to) - rankOf(move.to));
  const sameSquare = right === 0 && up === 0;
  if (!sameKind && !sameSquare) return Number.POSITIVE_INFINITY;
  let price = sameKind ? 0 : spelling.kind === undefined ? 1.2 : 1.7;
  if (!sameSquare)
    price += Math.max(right, up) > 2 ? Number.POSITIVE_INFINITY : 1.1 + 0.4 * (right + up);
  if (spelling.file !== undefined && spelling.file !== move.from[0]) price += 0.4;
  if (spelling.rank !== undefined && spelling.rank !== move.from[1]) price += 0.4;
  if (spelling.capture !== move.capture) price += 0.2;
  if (spelling.promotion !== move.promotion) price += 0.3;
  return price;
}

/** What it costs to have hit wrong keys: characters left out, added, changed or swapped. */
function slipPrice(plain: string, move: LegalMove): number {
  const bare = (text: string) => text.replace(/[x=+#-]/g, '');
  const written = bare(plain);
  const slips = slipsBetween(written, bare(move.san));
  if (slips > (written.length > 3 ? 2 : 1)) return Number.POSITIVE_INFINITY;
  const sign = plain.includes('x') === move.capture ? 0 : 0.1;
  return 0.2 + 1.1 * slips + sign;
}

/** Pawn captures are also written by their files alone: `ed`, `exd`. */
function filesPrice(plain: string, move: LegalMove): number {
  const [, from, to] = /^([a-h])x?([a-h])$/.exec(plain) ?? [];
  const same = move.kind === 'pawn' && move.capture && move.from[0] === from && move.to[0] === to;
  return same ? 0.3 : Number.POSITIVE_INFINITY;
}

/** Castling is also written as the king's move, or with the other sign. */
function castlingPrice(plain: string, move: LegalMove): number {
  if (!move.san.startsWith('O-O')) return Number.POSITIVE_INFINITY;
  if (/^[O0o][-O0o]*$/.test(plain)) return 1;
  return /^(king|queen)side|castle/i.test(plain) ? 1 : Number.POSITIVE_INFINITY;
}

/** The least number of characters left out, added, changed, or swapped with a neighbour. */
function slipsBetween(one: string, other: string): number {
  const table = [Array.from({ length: other.length + 1 }, (_, index) => index)];
  const at = (row: number, column: number) => table[row]?.[column] ?? Number.POSITIVE_INFINITY;
  for (let row = 1; row <= one.length; row++) {
    const line = [row];
    table.push(line);
    for (let column = 1; column <= other.length; column++) {
      const same = one[row - 1] === other[column - 1] ? 0 : 1;
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      line[column] = Math.min(
        at(row - 1, column) + 1,
        at(row, column - 1) + 1,
        at(row - 1, column - 1) + same,
        swapped ? at(row - 2, column - 2) + 1 : Number.POSITIVE_INFINITY,
      );
    }
  }
  return at(one.length, other.length);
}
