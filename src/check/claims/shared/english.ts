/** Words that several claims need for their reasons. */
import { type Color, listed, type Square, sideName } from '../../../chess/index.ts';

/** `the pawn on c6`, `the white pawns on a6 and b5`. */
export function pawnsOn(squares: readonly Square[], color?: Color): string {
  const kind = squares.length === 1 ? 'pawn' : 'pawns';
  return `the ${color ? `${color} ` : ''}${kind} on ${listed([...squares].sort())}`;
}

/** `the c-file`, `the c- or e-file`. */
export function filesNamed(files: readonly number[], joint: 'and' | 'or' = 'or'): string {
  return `the ${listed(
    files.map((file) => `${fileName(file)}-`),
    joint,
  )}file`;
}

export function fileName(file: number): string {
  return 'abcdefgh'[file - 1] ?? '';
}

/** `stands` or `stand`: the form for one thing or for several. */
export function verb(count: number, one: string, several: string): string {
  return count === 1 ? one : several;
}

/** `one pawn`, `2 pawns`. */
export function counted(count: number, one: string, several = `${one}s`): string {
  return `${count === 1 ? 'one' : count === 0 ? 'no' : count} ${count === 1 ? one : several}`;
}

/** `White's`. */
export function possessive(color: Color): string {
  return `${sideName(color)}'s`;
}

/** `a pawn`, `3 pawns' worth`. */
export function pawnsWorth(count: number): string {
  return count === 1 ? 'a pawn' : `${count} pawns' worth`;
}

const ordinals = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];

/** `first` to `eighth`. */
export function rankNamed(rank: number): string {
  return ordinals[rank] ?? '';
}

/** `+1`, `0`, `-2`. */
export function signed(count: number): string {
  return count > 0 ? `+${count}` : `${count}`;
}
