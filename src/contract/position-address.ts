import type { Color } from '../chess/index.ts';

/**
 * The address of a position on a chapter's page: `at-` and the position's own FEN fields, joined by
 * hyphens. It is made of what is shown and of nothing else, so it holds wherever the chapter shows the
 * position; and whoever has only the address still knows the position. Fields without a value are left out:
 * `at-rnbqkbnr-pp1ppppp-8-2p5-4P3-5N2-PPPP1PPP-RNBQKB1R-b-KQkq`. All characters stand in an address and
 * in an XML name as they are.
 */
const start = 'at-';

/** What an address tells of its position. */
export interface AddressedPosition {
  readonly plain: string;
  /** `Position.key`: the first four fields of the FEN. */
  readonly key: string;
  /** The first field. */
  readonly placement: string;
}

/** The address of the position with a key. */
export function positionAddress(key: string): string {
  return start + key.replace(/ -/g, '').replace(/[ /]/g, '-');
}

/** The address of another place that shows the same position, in the line with the given name. */
export function repeatedAddress(plain: string, line: string): string {
  return `${plain}.${line}`;
}

const form = new RegExp(
  `^(${start}((?:[1-8KQRBNPkqrbnp]{1,8}-){7}[1-8KQRBNPkqrbnp]{1,8})-([wb])` +
    '(?:-([KQkq]{1,4}))?(?:-([a-h][36]))?)(?:\\.[a-z0-9-]+)?$',
);

/** Reads the address of a position, or of one place of several that show it. */
export function readPositionAddress(id: string): AddressedPosition | undefined {
  const [, plain, ranks, turn, castling = '-', passant = '-'] = form.exec(id) ?? [];
  if (plain === undefined || ranks === undefined) return undefined;
  const placement = ranks.replaceAll('-', '/');
  return { plain, placement, key: `${placement} ${turn} ${castling} ${passant}` };
}

/** A move as addresses named it in earlier editions: `b3-7b-Nf6`, in the third block. */
export interface EarlierAddress {
  /** From 1, all blocks of the chapter counted. */
  readonly block: number;
  /** Absent for the block itself. */
  readonly move?: {
    readonly number: number;
    readonly color: Color;
    /** In English letters, without signs of check and promotion. */
    readonly san: string;
  };
}

export function readEarlierAddress(id: string): EarlierAddress | undefined {
  const [, block, number, black, san] =
    /^b([1-9]\d{0,4})(?:-([1-9]\d{0,4})(b)?-([KQRBNOa-h][KQRBNOa-hx1-8-]*?))?(?:-\d+)?$/.exec(id) ??
    [];
  if (block === undefined) return undefined;
  if (number === undefined || san === undefined) return { block: Number(block) };
  const color = black === undefined ? 'white' : 'black';
  return { block: Number(block), move: { number: Number(number), color, san } };
}

/** SAN as earlier addresses wrote it. */
export function sanInEarlierAddress(san: string): string {
  return san.replace(/[+#=]/g, '');
}

export function squaresApart(a: string, b: string): number {
  const [one, other] = [squaresOf(a), squaresOf(b)];
  let apart = 0;
  for (let square = 0; square < 64; square++) if (one[square] !== other[square]) apart += 1;
  return apart;
}

function squaresOf(placement: string): string {
  return placement.replaceAll('/', '').replace(/\d/g, (count) => ' '.repeat(Number(count)));
}
