/**
 * The work that a text takes grows no faster than the text, be it as hostile as it may: steps are
 * counted, not time, for each of a table of texts at a length and twice the length; some are parsed at a
 * greater length too.
 */
import { execFileSync } from 'node:child_process';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { Measured } from './measure.ts';

/** Twice the text may take so many times the steps; twice as many would be linear. */
const mostGrowth = 2.3;
/** Of fewer steps too many are for other things. */
const fewest = 25_000;

/**
 * Work that compares each of some things with each of others, up to a fixed number for a chapter or a
 * course; that the number holds is tested where it stands.
 */
const limited: ReadonlySet<string> = new Set([
  'headings that are underlined: read', // limit-lines.ts
  'quotes that go on without a sign: read', // limit-lines.ts
  'names and links to none: check', // nearest-name.ts
  'mentions of no move: model', // find-prose-move.ts
  // read-game.ts
  ...['read', 'model', 'check', 'render'].map(
    (stage) => `blocks that show one long game: ${stage}`,
  ),
]);

let measured: readonly Measured[] = [];

beforeAll(() => {
  const script = path.join(import.meta.dirname, 'measure.ts');
  const printed = execFileSync(process.execPath, [script], {
    encoding: 'utf8',
    // What was compiled for others has no counters.
    env: { ...process.env, NODE_DISABLE_COMPILE_CACHE: '1' },
    maxBuffer: 100_000_000,
  });
  measured = JSON.parse(printed);
}, 900_000);

const growth = ({ steps: [half = 1, whole = 0] }: Measured) => whole / half;
const isMuch = ({ steps: [, whole = 0] }: Measured) => whole > fewest;

test('no hostile text takes more than its share of steps', () => {
  expect(measured.length).toBeGreaterThan(400);
  const wrong = measured.filter(
    (each) =>
      isMuch(each) && growth(each) > mostGrowth && !limited.has(`${each.name}: ${each.stage}`),
  );
  expect(
    wrong.map(({ name, stage, steps, most }) => `${name}: ${stage} ${steps.join(', ')}: ${most}`),
  ).toEqual([]);
});

test('what is limited elsewhere would be seen here', () => {
  const seen = measured.filter((each) => isMuch(each) && growth(each) > mostGrowth);
  const names = new Set(seen.map(({ name, stage }) => `${name}: ${stage}`));
  expect([...limited].filter((name) => !names.has(name))).toEqual([]);
});
