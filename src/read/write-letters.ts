import type { PiecesLanguage } from '../chess/index.ts';
import { pieceLettersOf } from '../chess/index.ts';
import { readChapter } from './read-chapter.ts';
import type { SourceFile } from './types.ts';

/**
 * The text of a chapter with the piece letters of another language. Each letter replaces one, so all offsets stay the
 * same.
 */
export function writeLetters(
  file: SourceFile,
  from: PiecesLanguage | undefined,
  to: PiecesLanguage | undefined,
): string {
  const language = file.pieces ?? from ?? 'en';
  if (language === (to ?? 'en')) return file.text;
  const letters = pieceLettersOf(to);
  const units = file.text.split('');
  readChapter(
    { ...file, pieces: language },
    {
      media: new Set(),
      frontMatter: 'optional',
      onLetter(offset, kind) {
        units[offset] = letters[kind];
      },
    },
  );
  return units.join('');
}
