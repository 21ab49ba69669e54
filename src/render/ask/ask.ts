import type { Course } from '../../model/index.ts';
import { type AboutOf, type AnswerTo, type QuestionKind, questions } from './questions.ts';

/** Asks the course around a chapter. */
export type Ask = <Kind extends QuestionKind>(kind: Kind, about: AboutOf<Kind>) => AnswerTo<Kind>;

const known = new WeakMap<Course, Ask>();

/** Asks a course, and notes nothing. The same for each call, so that what is made can be known by it. */
export function askOf(course: Course): Ask {
  const ask: Ask = known.get(course) ?? ((kind, about) => answerOf(course, kind, about));
  known.set(course, ask);
  return ask;
}

export function answerOf<Kind extends QuestionKind>(
  course: Course,
  kind: Kind,
  about: AboutOf<Kind>,
): AnswerTo<Kind> {
  const question = questions[kind] as (course: Course, about: unknown) => AnswerTo<Kind>;
  return question(course, about);
}
