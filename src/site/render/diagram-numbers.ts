import type { Course } from '../../model/types.ts';

const known = new WeakMap<Course, readonly ReadonlyMap<number, number>[]>();

/**
 * The numbers of a course's diagrams, for each chapter by block index: counted through all chapters,
 * so that a chapter printed alone and the whole course in print name the same diagram alike.
 */
export function diagramNumbers(course: Course): readonly ReadonlyMap<number, number>[] {
  const numbers = known.get(course) ?? count(course);
  known.set(course, numbers);
  return numbers;
}

function count({ chapters }: Course): readonly ReadonlyMap<number, number>[] {
  let last = 0;
  return chapters.map(
    ({ blocks }) =>
      new Map(
        blocks.flatMap((block): [number, number][] => {
          if (block.kind !== 'diagram' || block.position === undefined) return [];
          last += 1;
          return [[block.index, last]];
        }),
      ),
  );
}
