import type { Cost } from './measure.ts';

/** A figure with the most that it may be. */
export interface Figure {
  readonly value: number;
  /** What it counts: `× a bare parse`, `s`, `ms`, `MB`. */
  readonly unit: string;
  readonly goal?: number;
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
  const said = figures.map(({ value, unit, goal }) => {
    const figure = `${short(value)} ${unit}`;
    if (goal === undefined) return figure;
    const isMet = value <= goal;
    if (!isMet) missed.push(`${name}: ${figure}, the goal is ${goal}`);
    return `${figure} (goal ${goal}, ${isMet ? 'met' : 'MISSED'})`;
  });
  console.log(`${name.padEnd(52)} ${taken.join(' ')}  ${said.join('; ')}`.trimEnd());
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
