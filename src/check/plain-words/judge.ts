/** Holds statements against the board. */
import { type Form, forms, type Situation, type StatementVerdict } from './forms/index.ts';
import type { Passage } from './passage.ts';
import type { Stated } from './statements.ts';

/** So many positions are looked at around a sentence; where there are more, it is left alone. */
const most = 2000;

/** So many around all sentences of a chapter; those behind are left alone. */
export interface Budget {
  left: number;
}

export function makeBudget(): Budget {
  return { left: 100_000 };
}

export interface Judged {
  /** What the position says that the sentence speaks of. */
  readonly here: StatementVerdict;
  /** Whether the sentence is false wherever it may look. */
  readonly isFalse: boolean;
}

/** What the board says of a statement; nothing where it cannot say it for sure. */
export function judge(statement: Stated, passage: Passage, budget: Budget): Judged | undefined {
  const form: Form = forms[statement.form];
  const { kind, shown, loose } = passage;
  // What is asked for is held against the answer, by `exercise-ask`.
  if (kind === 'question' && statement.form === 'mate-in') return undefined;
  const here = shown && form.judge(statement.meaning, shown);
  if (!here) return undefined;
  if (here.holds) return { here, isFalse: false };
  const reach = loose ? 'near' : form.reach;
  return {
    here,
    isFalse: reach === 'here' || !holdsNear(form, statement, passage.near(), budget),
  };
}

/** What cannot be judged there counts as true, unless its form is strict. */
function holdsNear(
  form: Form,
  { meaning }: Stated,
  near: Iterable<Situation>,
  budget: Budget,
): boolean {
  const seen = new Set<string>();
  let looked = 0;
  for (const situation of near) {
    if (++looked > most || --budget.left < 0) return true;
    if (seen.has(situation.position.fen)) continue;
    seen.add(situation.position.fen);
    if (form.judge(meaning, situation)?.holds ?? !form.strict) return true;
  }
  return false;
}
