import type { Color, Position } from '../../../chess/index.ts';

export const wings = ['king', 'queen'] as const;
export type Wing = (typeof wings)[number];

/** The castling rights that a side still has. */
export function castlingRights({ fen }: Position, color: Color): Wing[] {
  const rights = fen.split(' ')[2] ?? '-';
  const letters = color === 'white' ? 'KQ' : 'kq';
  return wings.filter((_, index) => rights.includes(letters[index] ?? ''));
}

export function sanOf(wing: Wing): string {
  return wing === 'king' ? 'O-O' : 'O-O-O';
}

/** `kingside`, `queenside`. */
export function wingName(wing: Wing): string {
  return `${wing}side`;
}
