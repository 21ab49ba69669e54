import { open, stat } from 'node:fs/promises';
import type { CourseTable } from '../../contract/index.ts';
import { type ComparedGame, compareGames } from '../../lookup/games/index.ts';
import { stderr } from '../console.ts';
import { createProgressLine } from '../progress-line.ts';

/** The games of a file, each compared as it is read. */
export async function* comparedGames(
  file: string,
  table: CourseTable,
): AsyncGenerator<Iterable<ComparedGame>> {
  const size = file === '-' ? 0 : (await stat(file)).size;
  const stream: AsyncIterable<Uint8Array> = file === '-' ? process.stdin : readPieces(file);
  const comparison = compareGames(table);
  const progress = createProgressLine(stderr);
  try {
    let read = 0;
    for await (const chunk of stream) {
      yield comparison.push(chunk);
      read += chunk.length;
      if (size > 0) progress.show(`comparing games: ${Math.floor((100 * read) / size)} %`, 0, 0);
    }
    yield comparison.end();
  } finally {
    progress.clear();
  }
}

/** Reads a file or a pipe into one buffer: use each piece before asking for the next. */
async function* readPieces(file: string): AsyncGenerator<Uint8Array> {
  const buffer = new Uint8Array(1 << 18);
  const handle = await open(file);
  try {
    for (;;) {
      const { bytesRead } = await handle.read(buffer);
      if (bytesRead === 0) return;
      yield buffer.subarray(0, bytesRead);
    }
  } finally {
    await handle.close();
  }
}
