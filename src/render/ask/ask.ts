import type { Course } from '../../model/index.ts';
import { type AboutOf, type AnswerTo, type QuestionKind, questions } from './questions.ts';

/** Asks the course around a chapter a question. */
export type Ask = <Kind extends QuestionKind>(kind: Kind, about: AboutOf<Kind>) => AnswerTo<Kind>;

const known = new WeakMap<Course, Ask>();

/** Asks a course without recording. Returns the same function for each call, so that results can be cached by it. */
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
