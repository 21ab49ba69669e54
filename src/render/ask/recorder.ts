import type { Chapter, Course } from '../../model/index.ts';
import type { RenderContext, SharedContext } from '../context.ts';
import { type Ask, answerOf } from './ask.ts';
import { chapterAsked, type QuestionKind } from './questions.ts';

/** A question that was asked and its answer; `course`, with a print of the whole, for a look at the course itself. */
export type AskedOfCourse = readonly [
  kind: QuestionKind | 'course',
  about: unknown,
  answer: unknown,
];

/**
 * A chapter's context that notes what is asked of the course around it. What is made with it holds as long as the
 * chapter and all answers are as they were (`stillAnswered`).
 * @param edition a print of the whole course.
 * @param before what was asked earlier, where the course would answer the same: then it is not asked again.
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

/**
 * Whether a course still gives the answers that were noted.
 * @param isUnchanged whether all that others may show of a chapter is what it was when they were given.
 */
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
