/**
 * The letters of the pieces in other languages, with the Cyrillic capitals of Russian print (common practice, no source).
 */
import { lettersByLanguage } from '../piece-letters.ts';
import type { PieceKind } from '../types.ts';

const kinds: readonly PieceKind[] = ['knight', 'bishop', 'rook', 'queen', 'king'];

/** Knight, bishop, rook, queen, king. */
const languages: readonly string[] = [
  ...Object.values(lettersByLanguage),
  'КСЛФК', // Russian: the king is written Кр
];

const byLetter = new Map<string, PieceKind[]>();
for (const letters of languages) {
  for (const [index, letter] of [...letters].entries()) {
    const kind = kinds[index];
    const known = byLetter.get(letter) ?? [];
    if (kind !== undefined && !known.includes(kind)) byLetter.set(letter, [...known, kind]);
  }
}

/** The kinds of piece that a capital letter stands for in other languages, most probable first. */
export function kindsOfForeignLetter(letter: string): readonly PieceKind[] | undefined {
  return byLetter.get(letter);
}
