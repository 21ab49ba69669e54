/**
 * How a reader did in an exercise: found at once, found after other moves or with a hint, or shown. An exercise is known
 * by its position, as `linewright changes` knows it.
 */
export const exerciseGrades = ['once', 'tries', 'shown'] as const;
export type ExerciseGrade = (typeof exerciseGrades)[number];

export interface ExerciseResult {
  readonly grade: ExerciseGrade;
  /** The reader's own day of it: `2026-11-26`. */
  readonly day: string;
}

/** By `Position.key`. */
export type ExerciseResults = Readonly<Record<string, ExerciseResult>>;

/** Where a reader's results are kept, in `localStorage`. `course` is `CourseTable.course`. */
export function exerciseResultsKey(course: string): string {
  return `exercises:${course}`;
}

/** Where the addresses of the exercises that are being gone through are kept, in `sessionStorage`. */
export function exerciseRoundKey(course: string): string {
  return `exercises:${course}:round`;
}

export const exercisesPage = 'exercises.html';

/** Reads what was kept, or came with a file; what is no result is left out. */
export function readExerciseResults(data: unknown): ExerciseResults {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return {};
  const sound = Object.entries(data).flatMap(([key, value]: [string, unknown]) => {
    const { grade, day } = (value ?? {}) as Partial<Record<keyof ExerciseResult, unknown>>;
    const known = exerciseGrades.find((each) => each === grade);
    if (known === undefined || typeof day !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(day)) return [];
    return [[key, { grade: known, day }] as const];
  });
  return Object.fromEntries(sound);
}

/** The better of two results of each exercise: what was found once is not forgotten by looking at the answer. */
export function joinExerciseResults(a: ExerciseResults, b: ExerciseResults): ExerciseResults {
  const joined = { ...a };
  for (const [key, result] of Object.entries(b)) {
    const known = joined[key];
    if (known === undefined || rank(result) <= rank(known)) joined[key] = result;
  }
  return joined;
}

function rank({ grade }: ExerciseResult): number {
  return exerciseGrades.indexOf(grade);
}
