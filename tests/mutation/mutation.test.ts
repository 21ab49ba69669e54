import { afterAll, describe, expect, test } from 'vitest';
import { checkCourse } from '../../src/check/index.ts';
import { multiple, runs, spread } from '../setup/runs.ts';
import { soundCourses } from '../sound-courses.ts';
import { checkChanged, loadInMemory } from './course-in-memory.ts';
import { allKinds } from './kinds.ts';

/** How many faults of a kind are planted in a course, spread evenly over all that it has: 30 at night. */
const most = Number(process.env.MUTATIONS ?? (multiple > 1 ? runs(3) : 1));

interface Tally {
  planted: number;
  /** Under a rule that names such a fault. */
  found: number;
  /** Under other rules alone, each with what was planted. */
  elsewhere: string[];
  slipped: string[];
}

const noTally = (): Tally => ({ planted: 0, found: 0, elsewhere: [], slipped: [] });

const table = new Map<string, Tally>();

describe('planted faults are found', async () => {
  for (const { name, folder } of soundCourses) {
    const course = await loadInMemory(folder);
    test(`${name} is sound`, () => expect(checkCourse(course.course).diagnostics).toEqual([]));
    for (const kind of allKinds) {
      test(`${name}: ${kind.name}`, () => {
        const faults = spread([...kind.plant(course)], most);
        const missed: string[] = [];
        for (const { file, text, note, must } of faults) {
          const { diagnostics } = checkChanged(course, file, text);
          const tally = table.get(kind.name) ?? noTally();
          table.set(kind.name, tally);
          tally.planted++;
          const isFound = diagnostics.some(({ rule }) => kind.rules.includes(rule));
          const others = [...new Set(diagnostics.map(({ rule }) => rule))].join(', ');
          if (isFound) tally.found++;
          else if (others) tally.elsewhere.push(`${note} (${others})`);
          else tally.slipped.push(note);
          if (must && !isFound) missed.push(`${note} (${others || 'nothing'})`);
        }
        expect(missed).toEqual([]);
      });
    }
  }

  afterAll(() => {
    const rows = allKinds.map(({ name, limit }) => {
      const { planted, found, elsewhere, slipped } = table.get(name) ?? noTally();
      const why = slipped.length + elsewhere.length > 0 && limit ? `  (${limit})` : '';
      const count = (value: number) => String(value).padStart(4);
      return `${name.padEnd(56)} ${count(planted)} planted ${count(found)} found ${count(elsewhere.length)} under another rule ${count(slipped.length)} slipped${why}`;
    });
    console.log(`\n${rows.join('\n')}\n`);
    if (process.env.MUTATIONS) {
      for (const [name, { elsewhere, slipped }] of table) {
        if (elsewhere.length > 0) console.log(name, 'under another rule:', elsewhere);
        if (slipped.length > 0) console.log(name, 'slipped:', slipped);
      }
    }
  });
});
