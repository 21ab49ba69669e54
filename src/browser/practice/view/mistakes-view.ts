import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { pathsOf } from '../../../lookup/index.ts';
import { element, make } from '../../element.ts';
import { mostMissed, weeksOf } from '../session/mistakes.ts';
import type { Progress } from '../session/overview.ts';
import type { CourseItem, PracticeCourse } from '../session/practice-course.ts';
import { barTable, dayName, missedText } from './forecast-table.ts';
import { adviceStep, positionCard } from './position-card.ts';

export function weeksTable(
  items: readonly CourseItem[],
  progress: Progress,
  today: number,
  { practice }: PracticeWords,
): HTMLElement | undefined {
  const weeks = weeksOf(items, progress, today);
  if (weeks.every(({ answers }) => answers === 0)) return undefined;
  const rows = weeks.map(({ answers, misses }, index) => {
    const ago = fill(practice.weeksAgo, { n: String(index) });
    const missed = missedText(misses === 0 ? practice.scoreNone : practice.score, misses, answers);
    return {
      name: [practice.thisWeek, practice.weekBefore][index] ?? ago,
      parts: [
        ['met', answers],
        ['missed', misses],
      ] as const,
      text: answers === 0 ? practice.noAnswers : missed,
    };
  });
  return barTable(practice.weeks, rows);
}

export function oftenMissed(
  course: PracticeCourse,
  items: readonly CourseItem[],
  progress: Progress,
  words: PracticeWords,
): HTMLElement | undefined {
  const { practice } = words;
  const paths = pathsOf(course.table);
  const cards = mostMissed(items, progress).flatMap(({ item, kept }) => {
    const step = adviceStep(course, item.position);
    if (step === undefined) return [];
    const { number, color } = paths.step(step.from, step.move);
    const day = dayName(kept.last, { day: 'numeric', month: 'long', year: 'numeric' });
    const text = fill(missedText(practice.oftenMissed, kept.misses, kept.answers), { day });
    return [positionCard(course, step, { number, color }, words, text)];
  });
  if (cards.length === 0) return undefined;
  const list = element('ul', { class: 'practice-missed', role: 'list' }, cards);
  return make('section', '', make('h2', '', practice.often), list);
}
