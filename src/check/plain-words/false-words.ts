import type { Finding } from '../../diagnostics/index.ts';
import type { Chapter } from '../../model/index.ts';
import type { CourseView } from '../view/index.ts';
import { wrongAnswers } from './answers-in-tables.ts';
import { wrongOrders } from './chapter-order.ts';
import { type Budget, judge, makeBudget } from './judge.ts';
import { vocabularyFor } from './languages/index.ts';
import { wrongMention } from './moves-in-words.ts';
import type { Passage } from './passage.ts';
import { passagesOf } from './passages.ts';
import { type Stated, statementsIn } from './statements.ts';
import { placeIn } from './text.ts';
import type { WordsScope } from './words-scope.ts';

/** What the texts of a chapter state that the board, or the course, refutes. */
export function* falseWords(chapter: Chapter, course: CourseView): Generator<Finding> {
  const vocabulary = vocabularyFor(course.language);
  if (!vocabulary) return;
  const around: WordsScope = { chapter, course, vocabulary };
  const budget = makeBudget();
  for (const passage of passagesOf(chapter, course)) {
    const placeOf = (start: number, end: number) =>
      passage.place ?? placeIn(passage.text, start, end);
    for (const { statement, because, instead } of refuted(
      statementsIn(passage, vocabulary),
      passage,
      budget,
    )) {
      yield {
        place: placeOf(statement.start, statement.end),
        message: `“${statement.words}” is not so ${passage.shown?.where()}: ${because}.`,
        hint: `${instead ? `${instead} ` : ''}${passage.kind === 'front' ? frontAdvice : advice}`,
      };
    }
    const wrong = wrongMention(passage, around);
    if (wrong) {
      const { mention, start, end, there, isUnkept } = wrong;
      yield {
        place: placeOf(start, end),
        message: isUnkept
          ? `${mention.name} is announced here, and no line of the course has it.`
          : `${mention.name} can be played in no position of this chapter at move ${mention.number}.`,
        hint:
          there.length > 0
            ? `There the chapter has ${there.slice(0, 6).join(', ')}.`
            : 'Look at its number and its square.',
      };
    }
    for (const { start, end, reply, answer, there } of wrongAnswers(passage, around)) {
      yield {
        place: placeOf(start, end),
        message: `The table answers ${reply} with ${answer}, and no line of the course does.`,
        hint: `There the course has ${there.slice(0, 6).join(', ')}.`,
      };
    }
    for (const { start, end, words, because } of wrongOrders(passage, around)) {
      yield {
        place: placeOf(start, end),
        message: `“${words}” is not so: ${because}.`,
        hint: 'Mend the words, or the link.',
      };
    }
  }
}

const advice =
  'Mend the words; if they speak of another position, name the move that leads there, or write `:allow[words-false …]`.';

const frontAdvice =
  'Mend the words: a title and a summary may speak of any position that the chapter shows, and of no other.';

interface Refuted {
  readonly statement: Stated;
  readonly because: string;
  readonly instead?: string;
}

/** One finding for words that two forms read. */
function refuted(statements: Iterable<Stated>, passage: Passage, budget: Budget): Refuted[] {
  const found: Refuted[] = [];
  for (const statement of statements) {
    const judged = judge(statement, passage, budget);
    if (!judged?.isFalse) continue;
    const { because, instead } = judged.here;
    const isKnown = found.some(
      ({ statement: { start, end } }) => statement.start < end && start < statement.end,
    );
    if (!isKnown) found.push({ statement, because, ...(instead !== undefined && { instead }) });
  }
  return found;
}
