import type { PieceLetters } from './letters.ts';

/**
 * Knight, bishop, rook, queen and king in other languages, by language tag: the PGN standard, 8.2.3.2 (written
 * down from memory). The languages most written in come first.
 */
const letters = {
  de: 'SLTDK',
  es: 'CATDR',
  fr: 'CFTDR',
  nl: 'PLTDK',
  pt: 'CBTDR',
  pl: 'SGWHK',
  cs: 'JSVDK',
  hu: 'HFBVK',
  ro: 'CNTDR',
  fi: 'RLTDK',
  et: 'ROVLK',
  is: 'RBHDK',
  it: 'CATDR',
  da: 'SLTDK',
  nb: 'SLTDK',
  sv: 'SLTDK',
} as const;

/** A language whose piece letters are known; each piece has one letter in it. */
export type PiecesLanguage = 'en' | keyof typeof letters;

/** Those other than English, as five letters: knight, bishop, rook, queen, king. */
export const lettersByLanguage: Readonly<Record<Exclude<PiecesLanguage, 'en'>, string>> = letters;

export const piecesLanguages: readonly PiecesLanguage[] = [
  'en',
  ...(Object.keys(letters) as (keyof typeof letters)[]),
];

/** The letters of a language; those of SAN where none is given. */
export function pieceLettersOf(language: PiecesLanguage = 'en'): PieceLetters {
  const [knight = '', bishop = '', rook = '', queen = '', king = ''] =
    language === 'en' ? 'NBRQK' : letters[language];
  return { king, queen, rook, bishop, knight, pawn: '' };
}
