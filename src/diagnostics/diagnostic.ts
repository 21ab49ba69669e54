import type { Place } from './place.ts';

export const severities = ['error', 'warning'] as const;
export type Severity = (typeof severities)[number];

/** Another place that has a part in a finding, and what stands there. */
export interface RelatedPlace {
  readonly place: Place;
  readonly message: string;
}

/** A repair of the author's text: the range is replaced by `text`, nothing else is touched. */
export interface Fix {
  readonly place: Place;
  readonly text: string;
}

/**
 * One finding. The field names are those of the JSON output, so that one vocabulary serves
 * the code, the reporters and the tools that read them; the remark plugin turns them into
 * the fields of vfile-message (message = reason, rule = ruleId, hint = note).
 */
export interface Diagnostic {
  /** Id of the rule, such as `move-illegal`. */
  readonly rule: string;
  readonly severity: Severity;
  readonly place: Place;
  /** One sentence in plain English: what is wrong, on the board where there is a board. */
  readonly message: string;
  /** What to do about it. */
  readonly hint?: string;
  readonly related: readonly RelatedPlace[];
  /** Repairs that change nothing but the words named, and that together mend the finding. */
  readonly fixes?: readonly Fix[];
}
