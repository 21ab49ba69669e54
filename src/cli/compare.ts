import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { CourseTable } from '../contract/course-table.ts';
import { type ComparedGame, compareGames, withPlayer } from '../lookup/games/index.ts';
import { utf8Chunks } from '../movetext/index.ts';
import { assignAddresses } from '../render/addresses.ts';
import { makeCourseTable } from '../site/render/course-table.ts';
import type { CompareOptions } from './compare-formats.ts';
import { type ComparedCourse, reportComparison } from './compare-report.ts';
import { reportComparisonJson } from './compare-report-json.ts';
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
  const loaded = await loadCourse(folder);
  if (!loaded.checked) {
    stderr.printFindings(loaded);
    stderr.print`Nothing was compared: the course has errors.\n`;
    return exitCodes.findings;
  }
  const table = makeCourseTable(loaded.course, assignAddresses(loaded.course));
  const games = await readGames(file, table);
  const name = file === '-' ? 'the standard input' : file;
  if (games.length === 0) {
    stderr.print`No game was found in ${name}. It should be PGN: tags such as [White "…"] and moves.\n`;
    return exitCodes.failed;
  }
  const mine = withPlayer(table, games, player);
  if (player !== '' && mine.games.length + mine.otherSide === 0) {
    stderr.print`No game in ${name} has a player named ${player}.\n`;
    return exitCodes.failed;
  }
  const compared: ComparedCourse = { ...mine, table, course: loaded.course, player };
  if (format === 'json') stdout.printLines(reportComparisonJson(compared));
  else stdout.printLines(reportComparison(compared, { all }));
  return mine.games.some(({ kind }) => kind === 'broken') ? exitCodes.findings : exitCodes.clean;
}

async function readGames(file: string, table: CourseTable): Promise<ComparedGame[]> {
  const size = file === '-' ? 0 : (await stat(file)).size;
  const stream: AsyncIterable<Uint8Array> = file === '-' ? process.stdin : createReadStream(file);
  const comparison = compareGames(table);
  const progress = createProgressLine(stderr);
  const games: ComparedGame[] = [];
  async function* counted(): AsyncGenerator<Uint8Array> {
    let read = 0;
    for await (const chunk of stream) {
      yield chunk;
      read += chunk.length;
      if (size > 0) progress.show(`comparing games: ${Math.floor((100 * read) / size)} %`, 0, 0);
    }
  }
  try {
    for await (const chunk of utf8Chunks(counted())) {
      for (const game of comparison.push(chunk)) games.push(game);
    }
    for (const game of comparison.end()) games.push(game);
  } finally {
    progress.clear();
  }
  return games;
}
