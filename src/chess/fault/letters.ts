/**
 * The letters of the pieces in other languages, from the PGN standard, 8.2.3.2 (written down
 * from memory), with the Cyrillic capitals of Russian print (common practice, no source).
 */
import type { PieceKind } from '../types.ts';

const kinds: readonly PieceKind[] = ['knight', 'bishop', 'rook', 'queen', 'king'];

/** Knight, bishop, rook, queen, king; the languages most written in come first. */
const languages: readonly string[] = [
  'SLTDK', // German, Danish, Norwegian, Swedish
  'CATDR', // Spanish, Italian
  'CFTDR', // French
  'PLTDK', // Dutch
  'CBTDR', // Portuguese
  'SGWHK', // Polish
  'JSVDK', // Czech
  'HFBVK', // Hungarian
  'CNTDR', // Romanian
  'RLTDK', // Finnish
  'ROVLK', // Estonian
  'RBHDK', // Icelandic
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
