import { parseGame } from './parse-game.ts';
import { createScanner } from './scanner.ts';
import type { Movetext } from './types.ts';

/**
 * Reads a PGN file of any number of games. Places are offsets in UTF-16 units into the whole
 * `text`. A game begins at a line with a tag after moves, or, where games have no tags, at a line
 * with move number 1 after a result. An error in one game does not reach into the next: a
 * variation left open ends at the next tag line, a comment left open at the next tag
 * line that follows a blank line. A comment after the result belongs to the finished game, unless a blank
 * line parts them.
 */
export function parseGames(text: string): Movetext[] {
  return [...eachGame(text)];
}

/** The same one by one, so that not all of them need to be kept. */
export function* eachGame(text: string): Generator<Movetext> {
  const scanner = createScanner(text, true);
  while (scanner.peek().kind !== 'end') yield parseGame(text, scanner, true);
}
