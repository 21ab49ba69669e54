import { createHash } from 'node:crypto';
import type { Chapter, Course } from '../../model/index.ts';
import type { RenderContext, SharedContext } from '../context.ts';
import { type Ask, answerOf } from './ask.ts';
import type { QuestionKind } from './questions.ts';

/** A question that was asked and the print of its answer; `course` for a look at the course itself. */
export type AskedOfCourse = readonly [kind: QuestionKind | 'course', about: unknown, print: string];

/**
 * A chapter's context that notes what is asked of the course around it. What is made with it holds as long as the
 * chapter and all answers are as they were (`stillAnswered`).
 * @param edition a print of the whole course.
 */
export function recordAsked(
  shared: SharedContext,
  chapter: Chapter,
  edition: string,
): { readonly context: RenderContext; readonly asked: () => readonly AskedOfCourse[] } {
  const { course, settings, strings, notation } = shared;
  const known = new Map<string, { readonly answer: unknown; readonly asked: AskedOfCourse }>();
  const ask: Ask = (kind, about) => {
    const name = `${kind} ${JSON.stringify(about)}`;
    const before = known.get(name);
    if (before) return before.answer as never;
    const answer = answerOf(course, kind, about);
    known.set(name, { answer, asked: [kind, about, printOf(answer)] });
    return answer;
  };
  const context = {
    ask,
    settings,
    strings,
    notation,
    chapter,
    get course() {
      known.set('course', { answer: course, asked: ['course', null, edition] });
      return course;
    },
  };
  return { context, asked: () => [...known.values()].map(({ asked }) => asked) };
}

/** Whether a course still gives the answers that were noted. */
export function stillAnswered(
  course: Course,
  edition: string,
  asked: readonly AskedOfCourse[],
): boolean {
  return asked.every(([kind, about, print]) =>
    kind === 'course'
      ? print === edition
      : printOf(answerOf(course, kind, about as never)) === print,
  );
}

/** Longer answers are told by their hash. */
const longest = 32;

function printOf(answer: unknown): string {
  const text = JSON.stringify(answer);
  if (text.length <= longest) return text;
  return createHash('sha256').update(text).digest('base64url').slice(0, 22);
}
