/** What `:judge[…]` says: `2026-11-01 The knight is better than the bishop.` */
export interface JudgementText {
  /** The first word if it looks like a date. Whether it is a valid one is for the check. */
  readonly date?: string;
  /** What readers see. */
  readonly text: string;
}

/** Figures in groups, as dates are written anywhere: `2026-11-01`, `1.11.2026`, `2026-11`. */
const dated = /^(\d{4}[-./]\d{1,2}(?:[-./]\d{1,2})?|\d{1,2}[-./]\d{1,2}[-./]\d{2,4})(?:\s+|$)/;

/** Reads the argument of a `:judge[…]`. */
export function readJudgement(argument: string): JudgementText {
  const [whole = '', date] = dated.exec(argument) ?? [];
  return date === undefined
    ? { text: argument }
    : { date, text: argument.slice(whole.length).trim() };
}
