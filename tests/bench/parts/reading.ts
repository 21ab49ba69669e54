import { cpSync } from 'node:fs';
import path from 'node:path';
import { cli, measure, median, root } from '../measure.ts';
import { heading, row } from '../report.ts';
import { serveCompressed } from '../serve-compressed.ts';
import { measureShownMoves } from '../shown-moves.ts';

/** What a screen of 60 Hz gives each picture, in milliseconds. */
const frame = 1000 / 60;

/** A move shown in a chapter of the demo course, in a browser. */
export async function benchReading(work: string): Promise<void> {
  heading('reading the demo course');
  const demo = path.join(work, 'demo');
  cpSync(path.join(root, 'demo-course'), demo, { recursive: true });
  const site = path.join(work, 'demo-site');
  row('build of the demo course', measure([cli, 'build', demo, '--out', site], { work }));
  const served = await serveCompressed(site);
  const shown = await measureShownMoves(`${served.address}isolated-pawn.html`);
  served.close();
  if (shown === undefined) {
    console.log('a move shown: no Chromium was found');
    return;
  }
  for (const [name, milliseconds] of [
    [`a move shown, median of ${shown.length}`, median(shown)],
    ['a move shown, the slowest', Math.max(...shown)],
  ] as const) {
    row(name, { processor: milliseconds / 1000 }, [
      { value: milliseconds, unit: 'ms on the clock' },
      { value: milliseconds / frame, unit: 'of a frame' },
    ]);
  }
}
