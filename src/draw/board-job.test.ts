import { expect, test } from 'vitest';
import { boardJob } from './board-job.ts';
import { makePng } from './png.ts';

const middlegame = 'r1bq1rk1/pp2ppbp/2np1np1/8/3NP3/2N1BP2/PPPQ2PP/R3KB1R';
const plain = { placement: middlegame, lastMove: { from: 'f1', to: 'e2' }, marks: ['d5'] } as const;
const withArrow = { ...plain, arrows: [{ meaning: 'threat', from: 'd4', to: 'c6' }] } as const;

test.each([
  { width: 320, scale: 2 },
  { width: 560, scale: 1 },
])('the colours of all boards do for a board of $width at $scale', (size) => {
  const job = boardJob(plain, size);
  const own = makePng(job.svg, size);
  const shared = makePng(job.svg, job);
  expect(shared).not.toEqual(own);
  // As small as with colours of its own: as many of them.
  expect(shared.length / own.length).toBeLessThan(1.02);
});

test('a board with an arrow has colours of its own', () => {
  const job = boardJob(withArrow, { width: 320, scale: 2 });
  expect(makePng(job.svg, job)).toEqual(makePng(job.svg, { width: 320, scale: 2 }));
});
