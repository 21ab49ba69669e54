import type { CourseTable } from '../../contract/course-table.ts';
import { compareGames } from '../../lookup/games/compare-games.ts';
import type { ComparedGame } from '../../lookup/games/types.ts';

/** Games that have been compared since the last report, and how far the file has been read. */
export interface Report {
  readonly games: readonly ComparedGame[];
  readonly bytes: number;
}

/** Milliseconds between reports: often enough to look alive and to yield. */
const pace = 50;

/**
 * Compares the games of a file while it is read, piece by piece. After each report it waits for
 * what the report returns, so that a page can draw, or stop it by throwing.
 */
export async function compareBlob(
  table: CourseTable,
  blob: Blob,
  onReport: (report: Report) => Promise<void> | void,
): Promise<void> {
  const comparison = compareGames(table);
  const reader = blob.stream().getReader();
  let games: ComparedGame[] = [];
  let bytes = 0;
  let reported = performance.now();
  const report = async () => {
    const ready = games;
    games = [];
    await onReport({ games: ready, bytes });
    reported = performance.now();
  };
  for (let last = false; !last; ) {
    const { done, value } = await reader.read();
    last = done;
    for (const game of value === undefined ? comparison.end() : comparison.push(value)) {
      games.push(game);
      if (performance.now() - reported > pace) await report();
    }
    bytes += value?.length ?? 0;
    if (last || performance.now() - reported > pace) await report();
  }
}
