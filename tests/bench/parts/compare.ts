import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { compareFormats } from '../../../src/cli/compare-formats.ts';
import { cli, measure, root } from '../measure.ts';
import { heading, row } from '../report.ts';

const [few, many] = [400, 200_000];

/** `compare` of many games with the demo course in every format, against a bare replay of a few. */
export async function benchCompare(work: string): Promise<void> {
  heading('compare with the demo course');
  const demo = path.join(root, 'demo-course');
  const pair = readFileSync(path.join(demo, 'games/lantern-street.pgn'), 'utf8');
  const games = (count: number) => {
    const file = path.join(work, `games-${count}.pgn`);
    writeFileSync(file, `${pair}\n`.repeat(count / 2));
    return file;
  };
  const script = path.join(root, 'tests/bench/alone/bare-games.ts');
  const bare = measure([script, games(few)], { work });
  row(`${few} whole games: chess.js replays them`, bare);
  const file = games(many);
  for (const format of compareFormats) {
    const cost = measure([cli, 'compare', file, demo, '--format', format], { work });
    row(`${many} whole games: compare, ${format}`, cost, [
      { value: cost.processor, unit: 's', goal: 20 },
      { value: cost.megabytes, unit: 'MB', goal: 250 },
      { value: (cost.processor / many / bare.processor) * few, unit: '× the bare replay' },
    ]);
  }
}
