/** The page of all exercises: shows the reader's results, and leads through what he has not solved. */
import { dataOf } from '../../contract/attributes.ts';
import type { ExerciseGrade, ExerciseResults } from '../../contract/exercise-results.ts';
import { fill } from '../../contract/sentence.ts';
import { type State, stateMark } from '../../draw/state-marks.ts';
import { wordsOf } from '../board/board-words.ts';
import { courseOfPage, keepRound, resultsOf } from './results.ts';

/** Looks again when the reader comes back to the page, or has solved one in another tab. */
function start(page: HTMLElement): void {
  const show = () => showResults(page);
  show();
  addEventListener('pageshow', show);
  addEventListener('storage', show);
}

const marks: Readonly<Record<ExerciseGrade | 'none', State>> = {
  once: 'right',
  tries: 'right',
  shown: 'wrong',
  none: 'rest',
};

function showResults(page: HTMLElement): void {
  const words = wordsOf(page, 'exercises');
  const course = courseOfPage();
  const results = resultsOf(course);
  const cards = [...page.querySelectorAll<HTMLElement>('.exercise-cards > li')].map((element) => ({
    element,
    link: element.querySelector('a'),
    grade: gradeOf(element, results),
  }));
  for (const { element, grade } of cards) {
    const result = element.querySelector<HTMLElement>('.card-result');
    if (result === null) continue;
    const kind = grade ?? 'none';
    result.hidden = false;
    result.innerHTML = stateMark(marks[kind]);
    result.append(` ${words.grades[kind]}`);
  }
  const isSolved = (grade: ExerciseGrade | undefined) => grade === 'once' || grade === 'tries';
  const solved = cards.filter(({ grade }) => isSolved(grade)).length;
  const all = cards.flatMap(({ link }) => link ?? []);
  const open = cards.flatMap(({ link, grade }) => (isSolved(grade) || link === null ? [] : [link]));
  const round = open.length > 0 ? open : all;
  const act = page.querySelector<HTMLAnchorElement>('.exercises-begin .act');
  if (act === null || round[0] === undefined) return;
  act.href = addressOf(round[0]);
  act.textContent = open.length === 0 ? words.again : solved === 0 ? words.begin : words.goOn;
  act.onclick = () => keepRound(course, round.map(addressOf));
  for (const [index, link] of all.entries()) {
    link.onclick = () => keepRound(course, all.slice(index).map(addressOf));
  }
  const told = page.querySelector('.exercises-solved');
  if (told !== null) {
    const numbers = { n: String(solved), count: String(cards.length) };
    told.textContent = solved === 0 ? '' : fill(words.solved, numbers);
  }
}

function addressOf(link: HTMLAnchorElement): string {
  return link.getAttribute('href') ?? '';
}

function gradeOf(card: HTMLElement, results: ExerciseResults): ExerciseGrade | undefined {
  return results[dataOf('card', card).key ?? '']?.grade;
}

const main = document.querySelector<HTMLElement>('main');
if (main !== null) start(main);
