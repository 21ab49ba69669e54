import type { Chapter, Course } from '../../model/index.ts';
import type { RenderContext, SharedContext } from '../context.ts';
import { type Ask, answerOf } from './ask.ts';
import { chapterAsked, type QuestionKind } from './questions.ts';

/** A question and its answer; `course`, with a print of the whole, stands for access to the course itself. */
export type AskedOfCourse = readonly [
  kind: QuestionKind | 'course',
  about: unknown,
  answer: unknown,
];

/**
 * A chapter's context that records its questions to the rest of the course. What is made with it is valid as long as
 * the chapter and all answers are the same (`stillAnswered`).
 * @param edition a print of the whole course.
 * @param before recorded questions that the course would still answer the same; these are not asked again.
 */
export function recordAsked(
  shared: SharedContext,
  chapter: Chapter,
  edition: string,
  before: readonly AskedOfCourse[] = [],
): { readonly context: RenderContext; readonly asked: () => readonly AskedOfCourse[] } {
  const { course, settings, strings, notation } = shared;
  const earlier = new Map(before.map((asked) => [nameOf(asked[0], asked[1]), asked]));
  const known = new Map<string, AskedOfCourse>();
  const ask: Ask = (kind, about) => {
    const name = nameOf(kind, about);
    const asked = known.get(name) ??
      earlier.get(name) ?? [kind, about, answerOf(course, kind, about)];
    known.set(name, asked);
    return asked[2] as never;
  };
  const context = {
    ask,
    settings,
    strings,
    notation,
    chapter,
    get course() {
      known.set('course', ['course', null, edition]);
      return course;
    },
  };
  return { context, asked: () => [...known.values()] };
}

function nameOf(kind: string, about: unknown): string {
  return `${kind} ${JSON.stringify(about)}`;
}

/** Whether a course still gives the recorded answers. */
export function stillAnswered(
  course: Course,
  edition: string,
  asked: readonly AskedOfCourse[],
  isUnchanged: (chapter: string) => boolean = () => false,
): boolean {
  return asked.every(([kind, about, answer]) => {
    if (kind === 'course') return answer === edition;
    const chapter = chapterAsked(kind, about as never);
    if (chapter !== undefined && isUnchanged(chapter)) return true;
    return JSON.stringify(answerOf(course, kind, about as never)) === JSON.stringify(answer);
  });
}
