import { createLocator, unprintable } from '../diagnostics/index.ts';
import type { Movetext, Tag } from '../movetext/index.ts';
import type { FormalNotes } from './formal-notes.ts';

/** Says something of an offset of the text, and quotes what is lost. */
export type Tell = (offset: number, message: string, quoted?: string) => void;

/** The longest line and the longest string of the standard (4.3, 7). */
const longest = 255;

/** A game as it was read, the text that it stands in, and where. */
export interface WrittenGame {
  readonly number: number;
  readonly movetext: Movetext;
  readonly text: string;
  /** The line of the file that an offset of `text` stands in. */
  readonly lineAt: (offset: number) => number;
}

/** Tells what is odd about a game before a move is played: its tags, its result, its lines. */
export function tellGame(game: WrittenGame, tell: Tell, formal: FormalNotes): void {
  const { movetext, text, lineAt, number } = game;
  const { tags, line, problems, untold, escaped = [] } = movetext;
  for (const { span, message, lost = span } of problems) {
    tell(span.start, message, text.slice(lost.start, lost.end));
  }
  const last = problems.at(-1);
  if (untold && last) {
    const places = untold.toLocaleString('en');
    tell(last.span.end, `${places} more places of this game cannot be read.`);
  }
  for (const { start, end } of escaped) {
    tell(start, 'This line begins with %, so it is passed over (6).', text.slice(start, end));
  }
  for (const tag of tags) {
    tellTag(tag, (kind) =>
      formal.see(kind, { game: number, line: lineAt(tag.span.start) }, tag.name),
    );
  }
  tellTags(game, tell, formal);
  const start = tags[0]?.span.start ?? line.span.start;
  if (line.moves.length > 0 && line.result === undefined) {
    formal.see('no-result', { game: number, line: lineAt(start) });
  }
}

function tellTag(
  { name, value }: Tag,
  see: (kind: 'tab' | 'long-string' | 'tag-name') => void,
): void {
  if (value.includes('\t')) see('tab');
  if (value.length > longest) see('long-string');
  if (hasOtherThanAscii(name)) see('tag-name');
}

/** Tags that do not agree with each other or with the moves. */
function tellTags(
  { movetext, text, lineAt, number }: WrittenGame,
  tell: Tell,
  formal: FormalNotes,
): void {
  const { tags, line } = movetext;
  const first = new Map<string, Tag>();
  for (const tag of tags) {
    const { name, span } = tag;
    if (!first.has(name)) first.set(name, tag);
    else
      tell(
        span.start,
        `The tag \`${name}\` is given twice; the first counts.`,
        text.slice(span.start, span.end),
      );
  }
  const [setUp, fen, result] = ['SetUp', 'FEN', 'Result'].map((name) => first.get(name));
  if (setUp?.value === '1' && fen === undefined) {
    tell(
      setUp.span.start,
      'SetUp "1" asks for a FEN (9.7), but there is no FEN; the game begins at the start.',
    );
  }
  if (fen !== undefined && setUp?.value !== '1') {
    formal.see('fen-alone', { game: number, line: lineAt(fen.span.start) });
  }
  if (result !== undefined && line.result !== undefined && result.value !== line.result.text) {
    const ends = `The moves end with ${line.result.text}`;
    tell(
      result.span.start,
      `${ends}, but the tag Result says ${result.value} (8.2.6); both are kept.`,
    );
  }
}

/** Tells what is odd about the signs of a text, as it was read. */
export function tellSigns(
  text: string,
  { isWindows, game, line: first }: { isWindows: boolean; game: number; line: number },
  formal: FormalNotes,
): void {
  const pointAt = createLocator(text);
  const place = (offset: number) => ({ game, line: first - 1 + pointAt(offset).line });
  for (const { index } of text.matchAll(unprintable)) {
    // Space within a line too, for the standard's import format (4.2).
    if (text[index] !== '\v' && text[index] !== '\f') formal.see('controls', place(index));
  }
  if (isWindows) formal.see('windows', place(0));
  for (const { index, 0: line } of text.matchAll(longLine)) {
    formal.see('long-line', place(index), String(line.length));
  }
}

const longLine = /^.{256,}$/gm;

export function hasOtherThanAscii(text: string): boolean {
  return /[^\0-\x7F]/.test(text);
}

/** A game of which no move is played has no block that could hold its tags. */
export function tellLostTags({ movetext: { tags }, text }: WrittenGame, tell: Tell): void {
  const [first] = tags;
  const last = tags.at(-1);
  if (first === undefined || last === undefined) return;
  const quoted = text.slice(first.span.start, last.span.end);
  tell(first.span.start, 'This game has no moves; its tags stand only here.', quoted);
}
