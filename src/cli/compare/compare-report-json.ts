import { jsonVersion, writeJsonLine } from '../../diagnostics/index.ts';
import {
  type ComparedGame,
  countPositions,
  linesOf,
  type PositionRow,
  partingOf,
} from '../../lookup/games/index.ts';
import {
  type ComparedCourse,
  type ComparisonReport,
  countGames,
  endsOnPurpose,
  whereOf,
} from './comparison.ts';

/**
 * The report for programs: the games, then the positions where games leave the course, most games first; `aside` is
 * where a game first has a move of the course that is not its advice. Moves are canonical SAN, positions the first
 * four fields of a FEN. Games come first, a line each, so that none is held in memory.
 */
export function createJsonReport(
  { course, table }: ComparedCourse,
  beginning = `{\n  "version": ${jsonVersion},`,
): ComparisonReport {
  const lineOf = linesOf(table);
  const keyOf = (index: number) => table.positions[index]?.key ?? '';
  const count = countPositions(table, { keep: ({ number }) => number });
  const { add: addToSums, sums } = countGames();
  const { title, side, edition } = table;
  const head = `${beginning}\n  "course": ${writeJsonLine({ title, side, edition })},\n  "games": [`;
  const gameOf = (game: ComparedGame) => {
    if (game.kind !== 'met') return game;
    const { exit, aside, ...rest } = game;
    const { leaving, by } = partingOf(table, exit);
    return {
      ...rest,
      leaving,
      by,
      position: keyOf(exit.position),
      last: exit.last,
      next: exit.next,
      aside: aside && { position: keyOf(aside.position), next: aside.next },
    };
  };
  const rowOf = (row: PositionRow<number>) => ({
    position: keyOf(row.position),
    line: lineOf(row.position)?.map(({ san }) => san),
    place: whereOf(course, keyOf(row.position)),
    leaving: row.leaving,
    onPurpose: row.leaving === 'ended' ? endsOnPurpose(course, keyOf(row.position)) : undefined,
    by: row.by,
    course: row.moves.map(({ san, kind }) => ({ san, kind })),
    played: row.played,
    score: row.score,
    games: row.games,
  });
  return {
    add: (game) => {
      const before = sums.games === 0 ? head : ',';
      addToSums(game);
      count.add(game);
      return `${before}\n    ${writeJsonLine(gameOf(game))}`;
    },
    end: (otherSide) =>
      [
        sums.games === 0 ? `${head}],` : '\n  ],',
        `  "positions": [`,
        count
          .rows()
          .map((row) => `    ${writeJsonLine(rowOf(row))}`)
          .join(',\n'),
        '  ],',
        `  "sums": ${writeJsonLine({ ...sums, otherSide })}`,
        '}\n',
      ].join('\n'),
  };
}
