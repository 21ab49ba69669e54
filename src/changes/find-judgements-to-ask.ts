import type { CheckedCourse } from '../check/index.ts';
import { type Course, type Judgement, judgementsOf, nodeAt } from '../model/index.ts';
import { type Edition, makeEdition } from './edition.ts';

/** A judgement of the new edition that its author should look at again, and why. */
export interface JudgementToAsk {
  readonly judgement: Judgement;
  /**
   * - `lines`: the moves, the advice or an assessment behind its position are not what they were.
   * - `old`: it is older than the previous edition and has not been dated anew.
   */
  readonly why: 'lines' | 'old';
}

/**
 * The judgements that are asked again at a new edition. The previous edition has the date of its latest news;
 * where it has none, or a judgement has no date, a judgement is older if the previous edition has it already, in
 * the same words and with the same date, at the same position.
 */
export function findJudgementsToAsk(before: Course, { course }: CheckedCourse): JudgementToAsk[] {
  const old = makeEdition(before, false);
  const now = makeEdition(course, true);
  const published = before.news[0]?.date;
  const known = new Set(judgementsIn(before).map((each) => printOf(each, before)));
  return judgementsIn(course).flatMap((judgement): JudgementToAsk[] => {
    const wasThere = known.has(printOf(judgement, course));
    const key = judgement.of && nodeAt(course, judgement.of)?.position?.key;
    if (wasThere && key !== undefined && linesChanged(key, old, now)) {
      return [{ judgement, why: 'lines' }];
    }
    const isOld =
      judgement.date === undefined || published === undefined
        ? wasThere
        : judgement.date < published;
    return isOld ? [{ judgement, why: 'old' }] : [];
  });
}

function judgementsIn({ chapters }: Course): Judgement[] {
  return chapters.flatMap(judgementsOf);
}

/** A judgement in its words, wherever it stands in the text. */
function printOf({ date, text, of }: Judgement, course: Course): string {
  return JSON.stringify([of && nodeAt(course, of)?.position?.key, date, text]);
}

/** Whether what the course shows from a position on differs between two editions. */
function linesChanged(key: string, old: Edition, now: Edition): boolean {
  const seen = new Set([key]);
  const open = [key];
  for (let here = open.pop(); here !== undefined; here = open.pop()) {
    if (shown(here, old) !== shown(here, now)) return true;
    for (const { to } of now.graph[here]?.moves ?? []) {
      if (!seen.has(to)) open.push(to);
      seen.add(to);
    }
  }
  return false;
}

/** The moves from a position in any order, those that are called bad, the advice and the assessment. */
function shown(key: string, edition: Edition): string {
  const moves = (edition.graph[key]?.moves ?? []).map(
    ({ san }) => `${san}${edition.isBad(key, san) ? '?' : ''}`,
  );
  return JSON.stringify([moves.sort(), edition.advice(key), edition.assessment(key)]);
}
