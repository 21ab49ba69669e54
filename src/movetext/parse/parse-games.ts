import { GameSplitter } from '../archive/split-games.ts';
import { Scanner } from '../scan/scanner.ts';
import type { Movetext, Span } from '../types.ts';
import { parseGame } from './parse-game.ts';

/**
 * Reads the text of a PGN file of any number of games. Places are offsets in UTF-16 units into the
 * whole `text`. `GameSplitter` says where games begin. An error in one game does not reach into
 * the next. A comment after the result belongs to the finished game, unless a blank line parts them.
 */
export function parseGames(text: string): Movetext[] {
  return [...eachGame(text)];
}

/** The same one by one, so that not all of them need to be kept. */
export function* eachGame(text: string): Generator<Movetext> {
  for (const span of findGames(text)) {
    const scanner = new Scanner(text, span);
    if (scanner.peek().kind !== 'end') yield parseGame(text, scanner, { ofArchive: true });
  }
}

/** Where games stand in a text, one after another. */
function* findGames(text: string): Generator<Span> {
  const bytes = new TextEncoder().encode(text);
  const splitter = new GameSplitter(Number.POSITIVE_INFINITY);
  const found = [...splitter.push(bytes), ...splitter.end()];
  /** A place in the text, and the same in its bytes. */
  let [unit, byte] = [0, 0];
  const unitAt = (goal: number) => {
    if (bytes.length === text.length) return goal;
    for (; byte < goal; byte += 1) unit += unitsFrom(bytes[byte] ?? 0);
    return unit;
  };
  for (const game of found) yield { start: unitAt(game.start), end: unitAt(game.end) };
}

/** How many UTF-16 units begin with a byte of UTF-8: two with one that leads four, none within a sign. */
function unitsFrom(byte: number): number {
  if ((byte & 0xc0) === 0x80) return 0;
  return byte >= 0xf0 ? 2 : 1;
}
