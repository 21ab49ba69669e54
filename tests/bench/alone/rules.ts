/**
 * What each rule costs on 10,000 moves: made sound courses for one side, all their chapters. Prints the
 * milliseconds of the processor of each rule as JSON, the median of three runs; the questions that rules ask of
 * the course are answered anew for each of them.
 */
import { summariseChapter } from '../../../src/check/chapter-summary.ts';
import { checkOptions, rules } from '../../../src/check/index.ts';
import { createCourseView, makeCourseIndex } from '../../../src/check/view/index.ts';
import type { Course } from '../../../src/model/index.ts';
import { makeSoundCourse } from '../../made-courses/make-sound-course.ts';
import { makeInMemory } from '../../mutation/course-in-memory.ts';
import { median } from '../measure.ts';

const wanted = 10_000;

const courses: Course[] = [];
let moves = 0;
for (let seed = 0; moves < wanted; seed++) {
  const { course } = makeInMemory(makeSoundCourse(seed));
  if (course.settings.side === 'both') continue;
  courses.push(course);
  for (const { blocks } of course.chapters) {
    for (const { nodes } of blocks) moves += nodes.length - 1;
  }
}

/** Milliseconds, for as many moves as wanted. */
function cost(rule: (typeof rules)[number]): number {
  let spent = 0;
  for (const { chapters, settings } of courses) {
    const index = makeCourseIndex(chapters.map((each) => summariseChapter(each, settings.side)));
    const { view } = createCourseView(index, checkOptions(settings));
    const start = process.cpuUsage();
    for (const chapter of chapters) {
      for (const _ of rule.inChapter?.({ chapter, course: view }) ?? []);
    }
    spent += process.cpuUsage(start).user / 1000;
  }
  return (spent * wanted) / moves;
}

const costs = rules
  .filter(({ inChapter }) => inChapter)
  .map((rule) => [rule.id, median([cost(rule), cost(rule), cost(rule)])] as const);
console.log(JSON.stringify(Object.fromEntries(costs)));
