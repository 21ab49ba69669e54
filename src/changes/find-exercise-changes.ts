import type { ExerciseBlock, ExerciseLine } from '../model/index.ts';
import { exerciseNumber } from '../render/index.ts';
import type { Edition } from './edition.ts';
import type { ExerciseChange } from './types.ts';

interface Placed {
  readonly block: ExerciseBlock;
  readonly number: number;
  readonly edition: Edition;
}

/** Exercises are the same where they ask about the same position; words around them do not count. */
export function findExerciseChanges(old: Edition, now: Edition): ExerciseChange[] {
  const before = exercisesOf(old);
  const after = exercisesOf(now);
  const changes: ExerciseChange[] = [];
  for (const [key, exercises] of after) {
    const known = before.get(key) ?? [];
    for (const [index, exercise] of exercises.entries()) {
      const was = known[index];
      if (was === undefined) changes.push(describe('new', exercise));
      else if (judging(was.block) !== judging(exercise.block)) {
        changes.push(describe('changed', exercise));
      }
    }
  }
  for (const [key, exercises] of before) {
    const left = exercises.slice(after.get(key)?.length ?? 0);
    for (const exercise of left) changes.push(describe('dropped', exercise));
  }
  return changes;
}

function describe(
  what: ExerciseChange['what'],
  { block, number, edition }: Placed,
): ExerciseChange {
  const at = edition.place({ chapter: block.chapter, block: block.key, node: 0 });
  return { kind: 'exercise', what, number, at };
}

function exercisesOf(edition: Edition): Map<string, Placed[]> {
  const found = new Map<string, Placed[]>();
  for (const chapter of edition.course.chapters) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'exercise' || !block.position) continue;
      const { key } = block.position;
      const placed = { block, number: exerciseNumber(chapter, block), edition };
      found.set(key, [...(found.get(key) ?? []), placed]);
    }
  }
  return found;
}

/** How moves are judged: which are the answer, which good too, which wrong. */
function judging({ answer, also, wrong }: ExerciseBlock): string {
  const firsts = (lines: readonly ExerciseLine[]) =>
    lines.map((line) => line[1]?.move?.san ?? '').sort();
  return JSON.stringify([answer, also, wrong].map(firsts));
}
