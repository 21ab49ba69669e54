import { open, stat } from 'node:fs/promises';
import { setFlagsFromString } from 'node:v8';
import type { CourseTable } from '../contract/index.ts';
import { type ComparedGame, compareGames, sideOfPlayer } from '../lookup/games/index.ts';
import { assignAddresses } from '../render/index.ts';
import { makeCourseTable } from '../site/render/course-table.ts';
import type { CompareOptions } from './compare-formats.ts';
import { createTextReport } from './compare-report.ts';
import { createJsonReport } from './compare-report-json.ts';
import type { ComparedCourse } from './comparison.ts';
import { exitCodes, stderr, stdout } from './console.ts';
import { loadCourse } from './load-course.ts';
import { createProgressLine } from './progress-line.ts';

/**
 * `linewright compare`: where the games of a PGN file, or of the standard input (`-`), leave the
 * course, and how often. Games that cannot be read are named, and the others count.
 */
export async function compare(
  file: string,
  folder: string,
  { format, player = '', all }: CompareOptions,
): Promise<number> {
  // Games live for a moment. V8 would take 130 MB for what is new, and gain no time by it.
  setFlagsFromString('--semi-space-growth-factor=1');
  const loaded = await loadCourse(folder);
  if (!loaded.checked) {
    stderr.printFindings(loaded);
    stderr.print`Nothing was compared: the course has errors.\n`;
    return exitCodes.findings;
  }
  const table = makeCourseTable(loaded.course, assignAddresses(loaded.course));
  const compared: ComparedCourse = { table, course: loaded.course, player };
  const report =
    format === 'json' ? createJsonReport(compared) : createTextReport(compared, { all });
  const sideOf = sideOfPlayer(table, player);
  const seen = { games: 0, mine: 0, otherSide: 0, broken: 0 };
  for await (const games of comparedGames(file, table)) {
    let ready = '';
    for (const game of games) {
      seen.games++;
      const side = sideOf(game);
      if (side === 'other') seen.otherSide++;
      if (side !== 'course') continue;
      seen.mine++;
      if (game.kind === 'broken') seen.broken++;
      ready += report.add(game);
    }
    if (ready !== '') stdout.printLines(ready);
    await stdout.drained();
  }
  const name = file === '-' ? 'the standard input' : file;
  if (seen.games === 0) {
    stderr.print`No game was found in ${name}. It should be PGN: tags such as [White "…"] and moves.\n`;
    return exitCodes.failed;
  }
  if (player !== '' && seen.mine + seen.otherSide === 0) {
    stderr.print`No game in ${name} has a player named ${player}.\n`;
    return exitCodes.failed;
  }
  stdout.printLines(report.end(seen.otherSide));
  return seen.broken > 0 ? exitCodes.findings : exitCodes.clean;
}

/** The games of a file, compared as they are asked for, by the pieces in which the file is read. */
async function* comparedGames(
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

/** A file or a pipe, always in the same memory: each piece is used before the next is read. */
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
