import type { Cost } from './measure.ts';

/** A figure with the most that it may be. */
export interface Figure {
  readonly value: number;
  /** What it counts: `× a bare parse`, `s`, `ms`, `MB`. */
  readonly unit: string;
  readonly goal?: number;
  /** The extremes of the pairs of which it is the median. */
  readonly spread?: { readonly least: number; readonly most: number; readonly pairs: number };
}

const missed: string[] = [];

/** Prints a row: what was measured, what it took, and each figure with its goal. */
export function row(
  name: string,
  cost: Pick<Cost, 'processor'> & Partial<Cost>,
  figures: readonly Figure[] = [],
): void {
  const { processor, wall, megabytes } = cost;
  const taken = [
    `${processor.toFixed(2).padStart(8)} s`,
    wall === undefined ? ' '.repeat(10) : `${wall.toFixed(2).padStart(8)} s`,
    megabytes === undefined ? ' '.repeat(8) : `${megabytes.toFixed(0).padStart(5)} MB`,
  ];
  const said = figures.map((figure) => {
    const { value, unit, goal } = figure;
    if (goal !== undefined && value > goal) {
      missed.push(`${name}: ${short(value)} ${unit}, the goal is ${goal}`);
    }
    return sayFigure(figure);
  });
  console.log(`${name.padEnd(52)} ${taken.join(' ')}  ${said.join('; ')}`.trimEnd());
}

/** `2.24 × the bare parse (2.10 to 2.41 in 5 pairs; goal 1.6, MISSED)` */
export function sayFigure({ value, unit, goal, spread }: Figure): string {
  const notes = [];
  if (spread !== undefined) {
    const { least, most, pairs } = spread;
    notes.push(`${short(least)} to ${short(most)} in ${pairs} pairs`);
  }
  if (goal !== undefined) notes.push(`goal ${goal}, ${value <= goal ? 'met' : 'MISSED'}`);
  return `${short(value)} ${unit}${notes.length > 0 ? ` (${notes.join('; ')})` : ''}`;
}

export function heading(title: string): void {
  console.log(`\n${title}\n${'what'.padEnd(52)} processor      clock     peak  figures`);
}

/** Which goals were missed; said last. */
export function sayMissed(): void {
  console.log(missed.length === 0 ? '\nEvery goal is met.' : `\nMissed:\n  ${missed.join('\n  ')}`);
}

function short(value: number): string {
  return value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2);
}
