import { afterAll, describe, expect, test } from 'vitest';
import { checkCourse } from '../../src/check/index.ts';
import { runs } from '../setup/runs.ts';
import { soundCourses } from '../sound-courses.ts';
import { checkChanged, loadInMemory } from './course-in-memory.ts';
import { type Fault, faultKinds } from './faults.ts';

/** How many faults of a kind are planted in a course, spread evenly over all that it has. */
const most = Number(process.env.MUTATIONS ?? runs(12));

interface Tally {
  planted: number;
  found: number;
  slipped: string[];
}

const table = new Map<string, Tally>();

describe('planted faults are found', async () => {
  for (const { name, folder } of soundCourses) {
    const course = await loadInMemory(folder);
    test(`${name} is sound`, () => expect(checkCourse(course.course).diagnostics).toEqual([]));
    for (const kind of faultKinds) {
      test(`${name}: ${kind.name}`, () => {
        const faults = spread([...kind.plant(course)]);
        const missed: string[] = [];
        for (const { file, text, note, must } of faults) {
          const { diagnostics } = checkChanged(course, file, text);
          const tally = table.get(kind.name) ?? { planted: 0, found: 0, slipped: [] };
          table.set(kind.name, tally);
          tally.planted++;
          if (diagnostics.length > 0) tally.found++;
          else tally.slipped.push(note);
          if (must && diagnostics.length === 0) missed.push(note);
        }
        expect(missed).toEqual([]);
      });
    }
  }

  afterAll(() => {
    const rows = faultKinds.map(({ name, limit }) => {
      const { planted, found, slipped } = table.get(name) ?? { planted: 0, found: 0, slipped: [] };
      const why = slipped.length > 0 && limit ? `  (${limit})` : '';
      return `${name.padEnd(44)} ${String(planted).padStart(4)} planted ${String(found).padStart(4)} found ${String(slipped.length).padStart(3)} slipped${why}`;
    });
    console.log(`\n${rows.join('\n')}\n`);
    if (process.env.MUTATIONS) {
      for (const [name, { slipped }] of table) if (slipped.length > 0) console.log(name, slipped);
    }
  });
});

function spread(faults: readonly Fault[]): Fault[] {
  if (faults.length <= most) return [...faults];
  return Array.from({ length: most }, (_, index) =>
    faults.at(Math.floor((index * faults.length) / most)),
  ).filter((fault) => fault !== undefined);
}
