/**
 * The text of a file of facts: a line a position, engine and settings, sorted, so that a change of the course
 * changes few lines of it.
 *
 *     position ⇥ engine ⇥ settings ⇥ depth ⇥ lines
 *     8/8/4k3/8/8/4K3/4P3/8 w - - ⇥ Some Engine 1 ⇥ nodes 400000, lines 2, hash 64 ⇥ 21 ⇥ +2.10 Kd4 Kd6 e4; +1.95 Kf4
 */
import { parseScore, writeScore } from './score.ts';
import type { EngineFact, EngineLine, FactFault } from './types.ts';

const head = [
  '# What an engine says of positions of this course: made by `linewright engine`, read by `linewright check`.',
  '# position, engine, settings, depth, lines; scores in pawns for the side to move, #3 is mate in three.',
];

/** Writes facts; of two with the same position, engine and settings the later counts. */
export function makeFactsFile(facts: Iterable<EngineFact>): string {
  const rows = new Map([...facts].map((fact) => [factName(fact), makeRow(fact)]));
  return `${[...head, ...[...rows.values()].sort()].join('\n')}\n`;
}

/** What tells facts apart: position, engine and settings. */
export function factName({ key, engine, settings }: Omit<EngineFact, 'depth' | 'lines'>): string {
  return [key, engine, settings].join('\t');
}

function makeRow(fact: EngineFact): string {
  const lines = fact.lines.map(({ score, moves }) => [writeScore(score), ...moves].join(' '));
  return [factName(fact), fact.depth, lines.join('; ')].join('\t');
}

/** Reads what `makeFactsFile` writes; a line that says nothing is a fault, and the others count. */
export function parseFactsFile(text: string): {
  readonly facts: readonly EngineFact[];
  readonly faults: readonly FactFault[];
} {
  const facts: EngineFact[] = [];
  const faults: FactFault[] = [];
  for (const [index, line] of text.split(/\r\n|\n|\r/).entries()) {
    if (line.trim() === '' || line.startsWith('#')) continue;
    const read = parseRow(line);
    if (typeof read === 'string') faults.push({ line: index + 1, reason: read });
    else facts.push(read);
  }
  return { facts, faults };
}

/** A file may have ten thousand lines: whether a position is legal shows when the course has it. */
const shapeOfKey = /^[1-8pnbrqkPNBRQK/]{15,71} [wb] (?:-|[KQkq]{1,4}) (?:-|[a-h][36])$/;

const san =
  /^(?:[KQRBN][a-h]?[1-8]?x?[a-h][1-8]|(?:[a-h]x)?[a-h][1-8](?:=[QRBN])?|O-O(?:-O)?)[+#]?$/;

/** A row, or why it is none. */
function parseRow(row: string): EngineFact | string {
  if (/^(?:<{7}|={7}|>{7}|\|{7})/.test(row)) return 'it is a mark of a merge that git left open';
  const cells = row.split('\t');
  const [key = '', engine = '', settings = '', depth = '', written = ''] = cells;
  if (cells.length !== 5) return `it has ${cells.length} columns, and five are needed`;
  if (!shapeOfKey.test(key)) return `its position is none: ${key}`;
  if (engine.trim() === '') return 'it names no engine';
  if (!/^\d{1,4}$/.test(depth)) return `its depth is no number: ${depth}`;
  const lines: EngineLine[] = [];
  for (const each of written.split('; ')) {
    const [score = '', ...moves] = each.split(' ');
    const read = parseScore(score);
    if (read === undefined) return `${score === '' ? 'nothing' : score} is no score`;
    const wrong = moves.find((move) => !san.test(move));
    if (wrong !== undefined) return `${wrong} is no move`;
    if (moves.length === 0) return `no move stands behind ${score}`;
    lines.push({ score: read, moves });
  }
  return { key, engine, settings, depth: Number(depth), lines };
}
