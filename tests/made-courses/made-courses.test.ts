import { expect, test } from 'vitest';
import { makeInMemory } from '../mutation/course-in-memory.ts';
import { runs } from '../setup/runs.ts';
import { makeSoundCourse } from './make-sound-course.ts';

/** At least 500 in every run. */
const count = Math.min(Math.max(500, runs(500)), 2000);

test(`${count} made sound courses have no finding`, () => {
  let moves = 0;
  const found: string[] = [];
  for (let seed = 0; seed < count; seed++) {
    const { course, now } = makeInMemory(makeSoundCourse(seed));
    for (const { rule, place, message } of now.diagnostics) {
      found.push(`course ${seed}, ${place.file}:${place.start.line}: ${rule}: ${message}`);
    }
    for (const { blocks } of course.chapters) {
      for (const { nodes } of blocks) moves += nodes.length - 1;
    }
  }
  expect(found).toEqual([]);
  // They are courses, not empty folders.
  expect(moves / count).toBeGreaterThan(40);
});
