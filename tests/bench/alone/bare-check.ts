/**
 * The cheapest thing that reads a course as `check` must: bare remark-parse over its chapters, and each
 * of its moves played once on the board core.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { MadeLine } from '../make-course.ts';

const [folder = '', lines = ''] = process.argv.slice(2);
const { createReplay, initialPosition } = await import('../../../dist/chess/index.js' as string);

const parser = unified().use(remarkParse);
const chapters = path.join(folder, 'chapters');
let nodes = 0;
for (const name of readdirSync(chapters)) {
  nodes += parser.parse(readFileSync(path.join(chapters, name), 'utf8')).children.length;
}
let played = 0;
for (const { fen, moves } of JSON.parse(readFileSync(lines, 'utf8')) as MadeLine[]) {
  const key = fen.split(' ').slice(0, 4).join(' ');
  const replay = createReplay(fen === '' ? initialPosition : { fen, key });
  for (const move of moves) if (replay.play(move) === undefined) played += 1;
}
if (nodes === 0 || played === 0) throw new Error('nothing was read or played');
