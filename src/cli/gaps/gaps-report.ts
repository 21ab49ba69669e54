import { nameMoves } from '../../chess/index.ts';
import { jsonVersion, printable, writeJsonLine } from '../../diagnostics/index.ts';
import { writeScore } from '../../facts/index.ts';
import type { Gap } from '../../gaps/index.ts';
import type { Course, MoveNode } from '../../model/index.ts';
import { count } from '../console.ts';

/** Replies that are shown without `--all`. */
const most = 20;

export interface GapsReport {
  readonly course: Course;
  readonly gaps: readonly Gap[];
  /** How many positions an engine has looked at. */
  readonly engine: number;
  readonly games: number;
  readonly all: boolean;
}

export function reportGapsAsText({ gaps, engine, games, all }: GapsReport): string {
  const sources = [
    'replies that lead back into the course',
    engine > 0 ? `an engine’s best of ${count(engine, 'position')}` : '',
    games > 0 ? count(games, 'game') : '',
  ].filter((source) => source !== '');
  const head = `${count(gaps.length, 'reply', 'replies')} missing, the most wanted first; looked for: ${sources.join(', ')}.\n`;
  const without =
    engine > 0 ? '' : 'No results of an engine are kept: linewright engine makes some.\n';
  const shown = all ? gaps : gaps.slice(0, most);
  const rest = gaps.length - shown.length;
  const more = rest > 0 ? `… and ${rest} more: --all shows them\n` : '';
  return [`${head}${without}`, ...shown.map(gapText), more]
    .filter((part) => part !== '')
    .join('\n');
}

function gapText(gap: Gap, index: number): string {
  const { name, place, path, known, engine, games } = gap;
  const rank = String(index + 1).padStart(3);
  const where = path.length === 0 ? 'at the start' : `after ${pathText(path)}`;
  const write = place.behind === '' ? 'write it there' : `write it behind ${place.behind}`;
  const reasons = [
    games === undefined ? '' : `played in ${count(games, 'game')}`,
    engine === undefined
      ? ''
      : `${ordinal(engine.rank)} of ${engine.engine} at depth ${engine.depth}: ${writeScore(engine.score)}${engine.loss > 0 ? `, ${engine.loss} behind its best` : ''}`,
    known === undefined ? '' : `leads to a position of the course: ${known.file}:${known.line}`,
  ].filter((reason) => reason !== '');
  return [
    `${rank}  ${name}  ${where}`,
    `     ${place.file}:${place.line}:${place.column}  ${write}`,
    ...reasons.map((reason) => `     ${reason}`),
    '',
  ]
    .map(printable)
    .join('\n');
}

function ordinal(rank: number): string {
  return rank === 1 ? 'the first move' : `move ${rank}`;
}

function pathText(path: readonly MoveNode[]): string {
  return nameMoves(path.flatMap(({ move }) => move ?? []));
}

/**
 * The report for programs: moves in canonical SAN, positions as the first four fields of a FEN, scores in pawns for the side
 * to move (`#3` is mate in three), places counted from 1.
 */
export function reportGapsAsJson({ course, gaps, engine, games }: GapsReport): string {
  const { title, side } = course.settings;
  const rows = gaps.map((gap) => {
    const { position, path, san, place, known } = gap;
    const said = gap.engine && { ...gap.engine, score: writeScore(gap.engine.score) };
    return `    ${writeJsonLine({
      position,
      line: path.flatMap(({ move }) => move?.san ?? []),
      reply: san,
      place,
      known,
      engine: said,
      games: gap.games,
    })}`;
  });
  return [
    '{',
    `  "version": ${jsonVersion},`,
    `  "course": ${writeJsonLine({ title, side })},`,
    rows.length === 0 ? '  "gaps": [],' : `  "gaps": [\n${rows.join(',\n')}\n  ],`,
    `  "sums": ${writeJsonLine({ gaps: gaps.length, enginePositions: engine, games })}`,
    '}\n',
  ].join('\n');
}
