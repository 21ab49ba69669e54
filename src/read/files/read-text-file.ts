import { createLocator } from '../../diagnostics/index.ts';
import { FileRefusedError, readPlainFile } from '../../files/index.ts';
import { decodeGame, utf16Of } from '../../movetext/index.ts';
import type { CourseProblem, SourceFile } from '../types.ts';

/** The largest chapter, in bytes: about five times the longest chapter of a printed book. */
const chapterLimit = 1_000_000;

/** The largest PGN file, in bytes: about ten thousand games. No file of a course is read that is larger. */
export const gamesLimit = 10_000_000;

interface TextKind {
  readonly limit: number;
  readonly what: string;
  readonly hint: string;
}

function kindOf(file: string): TextKind {
  if (file.endsWith('.pgn')) {
    return {
      limit: gamesLimit,
      what: 'a file of games',
      hint: 'Put the games that the course shows into a file of their own.',
    };
  }
  if (file.endsWith('.tsv')) {
    return {
      limit: gamesLimit,
      what: 'a file of facts',
      hint: 'Let `linewright engine --prune` take out what the course does not need any more.',
    };
  }
  if (file.endsWith('.css')) {
    return {
      limit: chapterLimit,
      what: 'a theme',
      hint: 'A theme sets properties and gives rules to parts: type faces and pictures belong in media/.',
    };
  }
  return {
    limit: chapterLimit,
    what: 'a chapter',
    hint: 'Divide it into several chapters; pictures and whole games belong in media/ and games/.',
  };
}

/** Reads a text file of the course. A file that is no text, is too large or is locked becomes a problem. */
export async function readTextFile(
  folder: string,
  file: string,
  report: (problem: Omit<CourseProblem, 'rule'>) => void,
): Promise<SourceFile | undefined> {
  const isGames = file.endsWith('.pgn');
  const { limit, what, hint } = kindOf(file);
  const at = (before = '') => {
    const start = createLocator(before)(before.length);
    return { file, start, end: start };
  };
  let bytes: Uint8Array;
  try {
    const read = await readPlainFile(folder, file, limit);
    if (read.size > limit) {
      report({
        place: at(),
        message: `This file has ${megabytes(read.size)} MB; ${what} may have ${megabytes(limit)} MB.`,
        hint,
      });
      return undefined;
    }
    bytes = read.bytes;
  } catch (error) {
    if (!(error instanceof FileRefusedError)) throw error;
    report({ place: at(), message: error.message, hint: error.hint });
    return undefined;
  }
  const utf16 = utf16Of(bytes);
  if (utf16 && isGames) {
    return { path: file, text: withoutMark(new TextDecoder(utf16).decode(bytes)) };
  }
  if (utf16) {
    report({
      place: at(),
      message: 'This file is UTF-16, not UTF-8.',
      hint: `Save it as UTF-8 in your editor, or with \`iconv -f ${utf16.toUpperCase()} -t UTF-8\`.`,
    });
    return undefined;
  }
  const decoded = decodeUtf8(bytes);
  // PGN files are ISO 8859-1 by the standard (section 4.1); most are UTF-8 today.
  const text = typeof decoded !== 'string' && isGames ? decodeGame(bytes) : decoded;
  const zero = typeof text === 'string' ? text.indexOf('\0') : -1;
  if (typeof text === 'string' && zero < 0) return { path: file, text };
  const before =
    typeof text === 'string'
      ? text.slice(0, zero)
      : withoutMark(new TextDecoder().decode(bytes.subarray(0, text.badByte)));
  report({
    place: at(before),
    message: 'This file is not UTF-8 text from here on.',
    hint:
      zero < 0
        ? 'Save it as UTF-8 in your editor (it is probably Latin-1 or Windows-1252).'
        : 'Take out the zero byte; if there are more, this is no text file.',
  });
  return undefined;
}

function megabytes(bytes: number): string {
  return (bytes / 1_000_000).toFixed(1);
}

/** TextDecoder removes only the first byte order mark. */
function withoutMark(text: string): string {
  return text.replace(/^\uFEFF+/, '');
}

/** The text without its byte order mark, or the offset of the first byte that is not UTF-8. */
function decodeUtf8(bytes: Uint8Array): string | { badByte: number } {
  try {
    return withoutMark(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    // Bisects for the longest prefix that decodes, since TextDecoder does not say where it fails.
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
