import { onOneLine } from './controls.ts';
import type { Diagnostic, Fix, RelatedPlace, Severity } from './diagnostic.ts';
import type { Place } from './place.ts';

/** What a rule reports; its id and severity are added by the check. */
export interface Finding {
  readonly place: Place;
  readonly message: string;
  readonly hint?: string;
  readonly related?: readonly RelatedPlace[];
  readonly fixes?: readonly Fix[];
}

export interface ExpectedFinding {
  /** Default: the example's only chapter. */
  readonly file?: string;
  /** Where it starts, `7:12` for line and column, or also where it ends, `7:12-7:15`. */
  readonly at: string;
  readonly message: string;
  readonly hint?: string;
}

/** A course in small: what the rule finds in it, or that it finds nothing. */
export interface Example {
  readonly title: string;
  /** Text of one chapter without front matter, or whole files by their path in the course. */
  readonly course: string | Readonly<Record<string, string>>;
  /** The side of the course; default `white`. */
  readonly side?: 'white' | 'black' | 'both';
  /**
   * What an engine says: its lines, best first, as in `+0.35 Nf3 Nc6; +0.20 Bc4`, by the moves from the initial
   * position or by a position's key. Scores are for the side to move, in pawns; `#3` is mate in three.
   */
  readonly engine?: Readonly<Record<string, string>>;
  /** All findings of this rule; none where the example is sound. */
  readonly findings: readonly ExpectedFinding[];
  /** The file of the findings after `--fix`, for rules that can repair. */
  readonly fixed?: string;
}

/** One rule in one file: what it finds, why, how to mend it, and examples that are its tests. */
export interface Rule {
  readonly id: string;
  readonly severity: Severity;
  /** One sentence: what it finds. */
  readonly finds: string;
  /** Markdown for the handbook: why it matters and what to do. */
  readonly documentation: string;
  /** Rules without which the course cannot be built at all stay on whatever the settings say. */
  readonly always?: boolean;
  readonly examples: readonly Example[];
}

/**
 * Stamps a rule's finding with its id and severity. Its sentences quote authors and file names:
 * whatever those hold, a sentence is one line of characters that can be printed.
 */
export function makeDiagnostic(
  rule: Pick<Rule, 'id'>,
  severity: Severity,
  finding: Finding,
): Diagnostic {
  const { message, hint, related = [] } = finding;
  return {
    rule: rule.id,
    severity,
    ...finding,
    message: onOneLine(message),
    ...(hint === undefined ? {} : { hint: onOneLine(hint) }),
    related: related.map((other) => ({ ...other, message: onOneLine(other.message) })),
  };
}
