import { type Card, fsrs, type Grade, Rating, State } from 'ts-fsrs';
import type { How, Item } from '../store/item.ts';
import { dateOfDay, dayOf, dayOfDate } from './day.ts';

/** An opening is looked at once a year, however well one knows it. */
export const longest = 365;
/** How many answers are remembered one by one. */
export const keptHistory = 10;

/**
 * FSRS with its published parameters. Whole days only: what is asked again the same day is the
 * session's matter. No chance in it, so that two browsers come to the same day.
 */
const scheduler = fsrs({
  request_retention: 0.9,
  maximum_interval: longest,
  enable_fuzz: false,
  enable_short_term: false,
});

/** At the board there is no second try: a wrong first move is a move not known. */
const grades: Readonly<Record<How, Grade>> = {
  known: Rating.Good,
  slow: Rating.Hard,
  wrong: Rating.Again,
  shown: Rating.Again,
};

/** What is asked: a position and the moves that the course advises there. */
export interface Asked {
  readonly key: string;
  readonly advice: readonly string[];
}

/**
 * The record of an item after an answer; `before` is absent for a first answer. What is known
 * twice a day counts once, what is not known counts always: so two tabs do no harm.
 * `now` in ms since 1970; it may lie before the last answer, where a clock was put right.
 */
export function answered(before: Item | undefined, asked: Asked, how: How, now: number): Item {
  const today = dayOf(now);
  const same = before !== undefined && asked.advice.includes(before.advice) ? before : undefined;
  const good = how === 'known' || how === 'slow';
  if (same !== undefined && good && (same.last === today || same.last === today + 1)) return same;
  const card = same === undefined ? newCard(today) : cardOf(same, today);
  const next = scheduler.next(card, dateOfDay(today), grades[how]).card;
  return {
    key: asked.key,
    advice: same?.advice ?? asked.advice[0] ?? '',
    last: today,
    // A game may come tomorrow: what was missed is asked then, whatever FSRS would allow. It keeps
    // grades apart by a day more, also at its limit.
    due: good ? Math.min(dayOfDate(next.due), today + longest) : today + 1,
    stability: next.stability,
    difficulty: next.difficulty,
    answers: (same?.answers ?? 0) + 1,
    misses: (same?.misses ?? 0) + (good ? 0 : 1),
    at: timeAfter(before, now),
    history: [...(before?.history ?? []), [today, how] as const].slice(-keptHistory),
  };
}

/** Later than the time of the record before, unless that lies in a future that never was. */
function timeAfter(before: Item | undefined, now: number): number {
  if (before === undefined || dayOf(before.at) > dayOf(now) + 1) return now;
  return Math.max(now, before.at + 1);
}

function newCard(today: number): Card {
  return {
    due: dateOfDay(today),
    stability: 0,
    difficulty: 0,
    elapsed_days: 0,
    scheduled_days: 0,
    learning_steps: 0,
    reps: 0,
    lapses: 0,
    state: State.New,
  };
}

/** A last answer in the future, or before anybody's time, comes from a wrong clock. */
function cardOf(item: Item, today: number): Card {
  const last = Math.min(Math.max(item.last, today - longest), today);
  return {
    ...newCard(today),
    stability: item.stability,
    difficulty: item.difficulty,
    scheduled_days: Math.max(1, item.due - item.last),
    reps: item.answers,
    lapses: item.misses,
    state: State.Review,
    last_review: dateOfDay(last),
  };
}
