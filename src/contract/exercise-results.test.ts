import { expect, test } from 'vitest';
import { joinExerciseResults, readExerciseResults } from './exercise-results.ts';

const day = '2026-11-26';

test('what is no result is left out', () => {
  const sound = { 'k w - -': { grade: 'once', day } };
  const read = readExerciseResults({
    ...sound,
    a: { grade: 'won', day },
    b: 7,
    c: { grade: 'once' },
  });
  expect(read).toEqual(sound);
  for (const none of [undefined, null, [], 'text']) expect(readExerciseResults(none)).toEqual({});
});

test('of two results the better one stays, of equal ones the later that is joined', () => {
  const once = { grade: 'once', day } as const;
  const shown = { grade: 'shown', day: '2026-12-01' } as const;
  expect(joinExerciseResults({ k: once }, { k: shown })).toEqual({ k: once });
  expect(joinExerciseResults({ k: shown }, { k: once, l: shown })).toEqual({ k: once, l: shown });
  const later = { ...once, day: '2026-12-02' };
  expect(joinExerciseResults({ k: once }, { k: later })).toEqual({ k: later });
});
