/** Several courses practised as one: what is asked, where it counts, and that no line leaves its course. */
import { expect, test } from 'vitest';
import type { PracticeCourse } from '../practice/session/practice-course.ts';
import { begin, goOn, positionNow, type Session, tryMove } from '../practice/session/session.ts';
import type { Item } from '../practice/store/item.ts';
import { smallCourse } from '../practice/testing/small-course.ts';
import { dueToday, placesOf } from './due-today.ts';
import { mergeCourses } from './merge-courses.ts';

const today = 20_000;
const clock = { today, now: today * 86_400_000 };

const onShelf = (at: string, side: 'white' | 'black', { table, notes }: PracticeCourse) => ({
  shelved: {
    ...{ at, side, course: at, title: at, shortTitle: at, language: 'en' },
    ...{ table: '', chapters: 1 },
  },
  table,
  notes,
});

// Both advise 1.e4 and 2.Nf3; behind that each has its own advice.
const merged = mergeCourses([
  onShelf('a/', 'white', smallCourse([['e4 e5 Nf3 Nc6 Bb5']], ['Bb5'])),
  onShelf('b/', 'black', smallCourse([['e4 e5 Nf3 Nc6 Bc4 Bc5 c3']])),
]);
const [first, second] = merged.parts;

/** Of a course, the moves with these SANs are known and due; the others are unmet. */
function due(part: typeof first, ...sans: readonly string[]) {
  if (part === undefined) throw new Error('no such course');
  const items = part.course.items.flatMap(({ key, advice: [advice = ''] }): [string, Item][] => {
    if (!sans.includes(advice)) return [];
    const days = { last: today - 3, due: today, at: clock.now };
    const memory = { stability: 3, difficulty: 5, answers: 1, misses: 0, history: [] };
    return [[key, { key, advice, ...days, ...memory }]];
  });
  return { part, progress: new Map(items) };
}

const sanOf = (position: number) => merged.course.itemAt.get(position)?.advice[0];

test('what two courses ask with the same answer is asked once, and counts in both', () => {
  const asked = dueToday([due(first, 'e4', 'Bb5'), due(second, 'e4', 'Bc4')], clock);
  expect(asked.tasks.map(({ position }) => sanOf(position)).sort()).toEqual(['Bb5', 'Bc4', 'e4']);
  const [shared] = [...asked.twins.keys()];
  expect(sanOf(shared ?? -1)).toBe('e4');
  const places = placesOf(shared ?? -1, asked, merged);
  expect(places.map(({ part }) => part)).toEqual([first, second]);
  for (const { part, position } of places) {
    expect(part.course.itemAt.get(position)?.advice).toEqual(['e4']);
  }
});

test('a session goes through the courses one after the other, each from its own start', () => {
  const { tasks } = dueToday([due(first, 'Nf3', 'Bb5'), due(second, 'Bc4', 'c3')], clock);
  const asked: string[] = [];
  let session: Session = begin(merged.course, tasks, new Set(merged.course.table.chapters.keys()));
  while (session.stage.kind !== 'end') {
    if (session.stage.kind === 'read') {
      session = goOn(session);
      continue;
    }
    const position = positionNow(session);
    const home = merged.course.homeOf?.(position);
    asked.push(`${home?.at} ${home?.side} ${sanOf(position)}`);
    const homes = session.line.map(({ from }) => merged.course.homeOf?.(from));
    expect(new Set([...homes, home]).size).toBe(1);
    session = tryMove(session, sanOf(position) ?? '', false);
  }
  const [a, b] = ['a/ white', 'b/ black'];
  expect(asked).toEqual([`${a} Nf3`, `${a} Bb5`, `${b} Bc4`, `${b} c3`]);
});
