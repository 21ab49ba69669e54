/**
 * The only module that knows an author's piece letters: it turns moves and pieces into the letters of SAN. Each piece
 * has one letter in every supported language, so offsets stay the same.
 */
import {
  kindOfSanLetter,
  type PieceKind,
  type PiecesLanguage,
  pieceLettersOf,
} from '../../chess/index.ts';
import type { Point } from '../../diagnostics/index.ts';
import type { CourseProblem } from '../types.ts';

/** The piece letters of a file. */
export interface PiecesOfFile {
  readonly language: PiecesLanguage;
  /** Called for every piece letter, with its offset in the file. */
  readonly onLetter?: ((offset: number, kind: PieceKind) => void) | undefined;
}

interface LettersContext {
  readonly pieces?: PiecesOfFile | undefined;
  readonly source: { readonly file: string };
  readonly report: (problem: Omit<CourseProblem, 'rule'> & Partial<CourseProblem>) => void;
}

interface Letters {
  readonly kindOf: ReadonlyMap<string, PieceKind>;
  readonly inWords: RegExp;
  readonly inMovetext: RegExp;
}

interface Found {
  readonly at: number;
  readonly letter: string;
  /** Absent for an English letter that the language does not have. */
  readonly kind: PieceKind | undefined;
}

/** What movetext contains apart from moves: tags, comments, escaped lines, words in brackets. */
const beside =
  '\\[\\s*\\w+\\s+"(?:[^"\\\\\\r\\n]|\\\\.)*"\\s*\\]|\\{[^}]*\\}?|;[^\\r\\n]*|^%[^\\r\\n]*|\\[[^\\[\\]\\r\\n]*\\]';

const known = new Map<PiecesLanguage, Letters>();

function lettersFor(language: PiecesLanguage): Letters {
  const before = known.get(language);
  if (before) return before;
  const kindOf = new Map(
    Object.entries(pieceLettersOf(language)).flatMap(([kind, letter]) =>
      letter === '' ? [] : [[letter, kind as PieceKind] as const],
    ),
  );
  const any = `[${[...new Set(`KQRBN${[...kindOf.keys()].join('')}`)].join('')}]`;
  const to = '[a-h]?[1-8]?[x:×‐‑–−-]?[a-h]';
  // In movetext, something close to a move is one that cannot be played; in prose it is a word, such as `Tal`.
  const nearly = `${to}(?:[lI0O]|\\d{1,2})?(?!\\p{L})`;
  // Behind the last rank: what a pawn becomes.
  const letter = (square: string) =>
    `(?<piece>(?<!\\p{L})${any}(?=${square})|(?<=[a-h][18][=/]?\\(?)${any}(?![\\p{L}\\p{N}]))`;
  const made: Letters = {
    kindOf,
    inWords: new RegExp(letter(`${to}[1-8]`), 'gu'),
    inMovetext: new RegExp(`${beside}|${letter(nearly)}`, 'gmu'),
  };
  known.set(language, made);
  return made;
}

function find(text: string, language: PiecesLanguage, where: 'inWords' | 'inMovetext'): Found[] {
  const letters = lettersFor(language);
  return [...text.matchAll(letters[where])].flatMap(({ index, groups }) => {
    const letter = groups?.piece;
    return letter === undefined ? [] : [{ at: index, letter, kind: letters.kindOf.get(letter) }];
  });
}

/** The text in SAN. An English letter that the language does not use keeps its English meaning. */
function replaced(text: string, found: readonly Found[]): string {
  const units = [...found].reduce((parts, { at, kind }) => {
    if (kind !== undefined) parts[at] = pieceLettersOf('en')[kind];
    return parts;
  }, text.split(''));
  return units.join('');
}

/** Turns the moves or pieces in a short text into the letters of SAN. */
export function wordsInSan(text: string, pieces: PiecesOfFile | undefined): string {
  if (pieces === undefined || pieces.language === 'en') return text;
  return replaced(text, find(text, pieces.language, 'inWords'));
}

/** The same for movetext; its comments and tags stay as they are. */
export function movetextInSan(
  text: string,
  pointAt: (offset: number) => Point,
  context: LettersContext,
): string {
  const { pieces } = context;
  if (pieces === undefined) return text;
  const found = find(text, pieces.language, 'inMovetext');
  noteFound(found, pointAt, context, pieces);
  return pieces.language === 'en' ? text : replaced(text, found);
}

/** Reports the piece letters in a text through `onLetter`, and those that cannot be read as problems. */
export function noteLetters(
  written: string,
  pointAt: (offset: number) => Point,
  context: LettersContext,
): void {
  const { pieces } = context;
  if (pieces === undefined) return;
  noteFound(find(written, pieces.language, 'inWords'), pointAt, context, pieces);
}

function noteFound(
  found: readonly Found[],
  pointAt: (offset: number) => Point,
  { source, report }: LettersContext,
  { language, onLetter }: PiecesOfFile,
): void {
  for (const { at, letter, kind } of found) {
    const start = pointAt(at);
    if (kind !== undefined) {
      onLetter?.(start.offset, kind);
      continue;
    }
    const meant = kindOfSanLetter[letter] ?? 'pawn';
    const right = pieceLettersOf(language)[meant];
    const place = { file: source.file, start, end: pointAt(at + 1) };
    report({
      rule: 'move-unreadable',
      place,
      message: `${letter} is the English letter of the ${meant}, and \`pieces: ${language}\` is set.`,
      hint: `Write ${right}; a game in English letters may stand in a file of games/.`,
      fixes: [{ place, text: right }],
    });
  }
}

/** `K, D, T, L and S`: the letters of a language, of the king first. */
export function listLetters(language: PiecesLanguage): string {
  const { king, queen, rook, bishop, knight } = pieceLettersOf(language);
  return `${king}, ${queen}, ${rook}, ${bishop} and ${knight}`;
}

/** A move or a claim in SAN as an author of a language writes it; see `wordsInSan`. */
export function inLettersOf(language: PiecesLanguage | undefined, text: string): string {
  if (language === undefined || language === 'en') return text;
  const letters = pieceLettersOf(language);
  const units = text.split('');
  for (const { at, kind } of find(text, 'en', 'inWords')) {
    if (kind !== undefined) units[at] = letters[kind];
  }
  return units.join('');
}
