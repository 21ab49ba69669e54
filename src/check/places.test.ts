import { expect, test } from 'vitest';
import { createLocator } from '../diagnostics/index.ts';
import { courseOf } from '../model/testing/course-of.ts';
import { checkCourse } from './check-course.ts';

test('the place of a start position is one of the file: line, column and offset agree', () => {
  const text =
    '- ```moves\n  {:here[start]} 1. e4 e5\n  ```\n\n```moves\n1. d4 d5 {:same[start]} 2. c4\n```\n';
  const locate = createLocator(text);
  const related = checkCourse(courseOf(text, 'both')).diagnostics.flatMap((found) => found.related);
  expect(related.length).toBeGreaterThan(0);
  for (const { place } of related) {
    expect(locate(place.start.offset)).toEqual(place.start);
    expect(locate(place.end.offset)).toEqual(place.end);
  }
});
