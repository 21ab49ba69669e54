import { createReadStream } from 'node:fs';
import { createGameSplitter, type GameBytes } from '../../lookup/games/index.ts';
import { decodeGame, utf8Chunks } from '../../movetext/index.ts';

/** A whole game of a PGN file. */
export interface ArchivePart {
  readonly text: string;
  /** The line of the file that it begins in, from 1. */
  readonly line: number;
  /** Whether it is longer than any game can be; then `text` is its beginning. */
  readonly tooLong?: boolean;
}

/** So much of a longer game is told. */
const beginning = 80;

/**
 * Reads a PGN file of any size, game by game and once, so that a pipe will do. Games that are not
 * UTF-8 are read as ISO 8859-1, which section 4.1 of the PGN standard asks for, and a file in UTF-16 as such.
 */
export async function* readArchive(file: string): AsyncGenerator<ArchivePart> {
  const splitter = createGameSplitter();
  for await (const chunk of utf8Chunks(createReadStream(file, { highWaterMark: 1 << 18 }))) {
    for (const game of splitter.push(chunk)) yield partOf(game);
  }
  for (const game of splitter.end()) yield partOf(game);
}

function partOf({ bytes, tooLong, line }: GameBytes): ArchivePart {
  const text = decodeGame(bytes);
  return tooLong ? { text: text.slice(0, beginning), line, tooLong } : { text, line };
}
