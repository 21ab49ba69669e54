import { dataOf } from '../../../contract/attributes.ts';
import type { CourseExercise, CourseExercises } from '../../../contract/course-exercises.ts';
import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { make, makeButton } from '../../element.ts';
import { beginExercise } from '../../exercise/begin.ts';
import { loadScript } from '../../load-script.ts';
import { focusable } from './focusable.ts';

/** An exercise of a chapter within practice: its whole answer is played, as on the chapter's page. */
export interface ExerciseView {
  readonly element: HTMLElement;
  /** To be called once the element is in the page. */
  start(): Promise<void>;
}

export function makeExerciseView(
  exercise: CourseExercise,
  { words: chapterWords }: CourseExercises,
  { title, words }: { readonly title: string; readonly words: PracticeWords },
  events: { readonly onNext: (() => void) | undefined; readonly onEnd: () => void },
): ExerciseView {
  const { practice } = words;
  const heading = focusable(make('h1', '', practice.exercise));
  const stand = make('div', '');
  stand.dataset.words = JSON.stringify(chapterWords);
  stand.innerHTML = exercise.html;
  const acts = make('p', 'practice-acts', makeButton(practice.back, events.onEnd));
  if (events.onNext !== undefined) {
    acts.prepend(makeButton(practice.nextExercise, events.onNext));
  }
  const about = make('p', 'practice-about', fill(practice.about, { title }));
  const element = make('section', 'practice-exercise', about, heading, stand, acts);
  return {
    element,
    async start() {
      heading.focus({ preventScroll: true });
      const section = stand.querySelector<HTMLElement>('.exercise');
      const { solver } = dataOf('page', element.closest<HTMLElement>('[data-solver]') ?? element);
      if (section === null || solver === undefined) return;
      try {
        // Loaded again it would answer twice.
        loaded ??= loadScript(solver);
        await loaded;
      } catch {
        // The answer stays folded below the question, as without scripts.
        loaded = undefined;
        return;
      }
      beginExercise(section);
    },
  };
}

let loaded: Promise<void> | undefined;
