import { createReadStream } from 'node:fs';
import { type ArchiveGame, createArchiveReader } from '../movetext/index.ts';

/** So much of a game that is too long is told. */
const beginning = 80;

/** Reads a PGN file game by game and once, so that a pipe will do. */
export async function* readArchive(file: string): AsyncGenerator<ArchiveGame> {
  const reader = createArchiveReader();
  for await (const chunk of createReadStream(file, { highWaterMark: 1 << 18 })) {
    for (const game of reader.push(chunk)) yield shortened(game);
  }
  for (const game of reader.end()) yield shortened(game);
}

function shortened(game: ArchiveGame): ArchiveGame {
  return game.tooLong ? { ...game, text: game.text.slice(0, beginning) } : game;
}
