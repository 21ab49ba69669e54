import { readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import { createLocator } from '../diagnostics/index.ts';
import type { CourseProblem, SourceFile } from './types.ts';

/** The largest chapter, in bytes: about five times the longest chapter of a printed book. */
const chapterLimit = 1_000_000;

/** The largest PGN file, in bytes: about ten thousand games. */
const gamesLimit = 10_000_000;

/** Reads a text file of the course; one that is no text, too large or locked becomes a problem. */
export async function readTextFile(
  folder: string,
  file: string,
  report: (problem: Omit<CourseProblem, 'rule'>) => void,
): Promise<SourceFile | undefined> {
  const isGames = file.endsWith('.pgn');
  const limit = isGames ? gamesLimit : chapterLimit;
  const at = (before = '') => {
    const start = createLocator(before)(before.length);
    return { file, start, end: start };
  };
  let bytes: Uint8Array;
  try {
    const full = path.join(folder, file);
    const { size } = await stat(full);
    if (size > limit) {
      report({
        place: at(),
        message: `This file has ${megabytes(size)} MB; ${isGames ? 'a file of games' : 'a chapter'} may have ${megabytes(limit)} MB.`,
        hint: isGames
          ? 'Put the games that the course shows into a file of their own.'
          : 'Divide it into several chapters; pictures and whole games belong in media/ and games/.',
      });
      return undefined;
    }
    bytes = await readFile(full);
  } catch (error) {
    report({ place: at(), ...describeFailure(error) });
    return undefined;
  }
  const decoded = decodeUtf8(bytes);
  // PGN files are ISO 8859-1 by the standard (section 4.1); most are UTF-8 today.
  const text =
    typeof decoded !== 'string' && isGames ? new TextDecoder('latin1').decode(bytes) : decoded;
  const zero = typeof text === 'string' ? text.indexOf('\0') : -1;
  if (typeof text === 'string' && zero < 0) return { path: file, text };
  const before =
    typeof text === 'string'
      ? text.slice(0, zero)
      : withoutMark(new TextDecoder().decode(bytes.subarray(0, text.badByte)));
  report({
    place: at(before),
    message: 'This file is not UTF-8 text from here on.',
    hint: 'Save it as UTF-8 in your editor (it is probably Latin-1, Windows-1252 or UTF-16).',
  });
  return undefined;
}

function megabytes(bytes: number): string {
  return (bytes / 1_000_000).toFixed(1);
}

/** What the system said, for a file or folder that cannot be read. */
export function describeFailure(error: unknown) {
  const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  switch (code) {
    case 'ENOENT':
      return {
        message: 'This name is a link that leads nowhere.',
        hint: 'Remove it, or put the file itself in its place.',
      };
    case 'EISDIR':
      return {
        message: 'This is a folder where a file should be.',
        hint: 'Move it out of the way.',
      };
    case 'ENOTDIR':
      return {
        message: 'This is a file where a folder should be.',
        hint: 'Rename it, and make a folder of this name.',
      };
    default:
      return {
        message: `This cannot be read: the system says ${code}.`,
        hint: 'See who may read it, and whether its disk is well.',
      };
  }
}

/** The decoder takes one byte order mark; a second one is no text either. */
function withoutMark(text: string): string {
  return text.replace(/^\uFEFF+/, '');
}

/** The text without its byte order mark, or the offset of the first byte that is not UTF-8. */
function decodeUtf8(bytes: Uint8Array): string | { badByte: number } {
  try {
    return withoutMark(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    // The longest prefix that decodes, found by halving: TextDecoder does not tell the offset.
    let good = 0;
    let bad = bytes.length;
    while (bad - good > 1) {
      const middle = (good + bad) >> 1;
      try {
        new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, middle), {
          stream: true,
        });
        good = middle;
      } catch {
        bad = middle;
      }
    }
    return { badByte: good };
  }
}
