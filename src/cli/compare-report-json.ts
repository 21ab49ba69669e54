import { writeJson } from '../diagnostics/index.ts';
import { byPosition, linesOf, partingOf } from '../lookup/games/index.ts';
import { type ComparedCourse, placeOf } from './compare-report.ts';

/**
 * The comparison for programs: all positions in which games leave the course, most games first,
 * and all games; `aside` is where a game's side first played what the course has beside its advice. Moves are canonical SAN, positions the first four fields of a FEN.
 */
export function reportComparisonJson({ course, table, games, otherSide }: ComparedCourse): string {
  const lineOf = linesOf(table);
  const keyOf = (index: number) => table.positions[index]?.key ?? '';
  const sum = (kind: string) => games.filter((game) => game.kind === kind).length;
  const positions = byPosition(table, games).map((row) => ({
    position: keyOf(row.position),
    line: lineOf(row.position)?.map(({ san }) => san),
    place: placeOf(course, keyOf(row.position)),
    leaving: row.leaving,
    by: row.by,
    course: row.moves.map(({ san, kind }) => ({ san, kind })),
    played: row.played,
    score: row.score,
    games: row.games.map(({ number }) => number),
  }));
  const report = {
    course: { title: table.title, side: table.side, edition: table.edition },
    sums: {
      games: games.length,
      met: sum('met'),
      apart: sum('apart'),
      empty: sum('empty'),
      broken: sum('broken'),
      variant: sum('variant'),
      otherSide,
    },
    positions,
    games: games.map((game) => {
      if (game.kind !== 'met') return game;
      const { exit, aside, ...head } = game;
      const { leaving, by } = partingOf(table, exit);
      return {
        ...head,
        leaving,
        by,
        position: keyOf(exit.position),
        last: exit.last,
        next: exit.next,
        aside: aside && { position: keyOf(aside.position), next: aside.next },
      };
    }),
  };
  return writeJson(report);
}
