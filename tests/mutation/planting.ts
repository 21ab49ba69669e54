/** What all kinds of faults are planted with. */
import type { Place } from '../../src/diagnostics/index.ts';
import { type CourseInMemory, textOf } from './course-in-memory.ts';
import type { Fault } from './faults.ts';

/** The course with another text at a place; `must` says that this is wrong for sure. */
export function plantAt(
  course: CourseInMemory,
  place: Pick<Place, 'file' | 'start' | 'end'>,
  text: string,
  note: string,
  must = true,
): Fault {
  const whole = textOf(course, place.file);
  return {
    file: place.file,
    text: whole.slice(0, place.start.offset) + text + whole.slice(place.end.offset),
    note: `${place.file}:${place.start.line}: ${note}`,
    must,
  };
}
