/** Types in a chapter as an editor does and asks what editors ask, in one process with the server; prints JSON. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { uriOf } from '../../../src/lsp/addresses.ts';
import { openSession } from '../../../src/lsp/testing/open-session.ts';

const [, , folder = ''] = process.argv;
const times = 15;

/** For each question what its answers took, in seconds. */
const taken: Record<string, { processor: number; wall: number }[]> = {};

async function take(name: string, answer: () => Promise<unknown>): Promise<void> {
  const [before, start] = [process.cpuUsage(), performance.now()];
  await answer();
  const wall = (performance.now() - start) / 1000;
  const { user, system } = process.cpuUsage(before);
  const list = taken[name] ?? [];
  taken[name] = list;
  list.push({ processor: (user + system) / 1e6, wall });
}

const chapters = readdirSync(path.join(folder, 'chapters')).sort();
const file = path.join(folder, 'chapters', chapters[Math.floor(chapters.length / 2)] ?? '');
const uri = uriOf(file);
const text = readFileSync(file, 'utf8');
const session = await openSession();
let version = 1;
await session.open(uri, text);
await session.findings(uri, 1);

const ask = (method: string, params: object = {}) =>
  session.client.sendRequest(`textDocument/${method}`, { textDocument: { uri }, ...params });
/** Behind so many signs of a text. */
const place = (of: string, offset: number) => {
  const lines = of.slice(0, offset).split('\n');
  return { position: { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 } };
};
const block = /```moves[^\n]*\n(?:\{[^}]*\}\s*)?(?:\d+\.+\s*)?(?:\S+ ){3}/.exec(text);
if (!block) throw new Error(`${file} has no moves`);
const inMoves = block.index + block[0].length;
const change = (made: string) => {
  version += 1;
  return session.change(uri, made, version);
};

for (let count = 0; count < times; count += 1) {
  await take('findings after an edit', async () => {
    await change(`${text}\nEdit ${count}.\n`);
    await session.findings(uri, version);
  });
  for (const [name, typed] of [
    ['a completion of moves, at once', ''],
    ['a completion of claims, at once', '{:claim['],
  ] as const) {
    const made = text.slice(0, inMoves) + typed + text.slice(inMoves);
    await change(made);
    await take(name, () => ask('completion', place(made, inMoves + typed.length)));
    await session.findings(uri, version);
  }
  await change(text);
  await take('a hover, at once', () => ask('hover', place(text, inMoves - 2)));
  await session.findings(uri, version);
  await take('a hover', () => ask('hover', place(text, inMoves - 2)));
  await take('the places of a move', () =>
    ask('references', {
      ...place(text, inMoves - 2),
      context: { includeDeclaration: true },
    }),
  );
  await take('the outline', () => ask('documentSymbol'));
  await take('the colours', () => ask('semanticTokens/full'));
}
await session.close();
console.log(JSON.stringify(taken));
