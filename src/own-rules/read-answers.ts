/** Tests what code of a course's own gives: it may be anything. */
import * as z from 'zod';
import type { Verdict } from '../check/index.ts';
import { type Place, severities } from '../diagnostics/index.ts';
import type { DefinedInFile, ReadClaim } from './protocol.ts';
import type { FoundByRule } from './types.ts';

/** So many findings of one rule in one chapter are taken. */
const mostFindings = 1000;

const id = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/;
const sentence = z.string().trim().min(1).max(2000);
const whole = z.number().int().nonnegative();
const point = z.object({ line: whole.min(1), column: whole.min(1), offset: whole });
const place = z
  .object({ file: z.string().min(1), start: point, end: point })
  .refine(({ start, end }) => start.offset <= end.offset);

const finding = z.object({
  message: sentence,
  hint: sentence.optional(),
  place: place.optional(),
  related: z
    .array(z.object({ place, message: sentence }))
    .max(100)
    .optional(),
});

const verdict = z.object({
  holds: z.union([z.boolean(), z.literal(['empty', 'undecided'])]),
  because: sentence,
  instead: sentence.optional(),
});

const word = z.object({ text: z.string(), offset: whole });

const readClaim = z.union([
  z.object({ labels: z.array(word) }),
  z.object({
    fault: z.object({ reason: sentence, offset: whole, length: whole, hint: sentence.optional() }),
  }),
]);

const defined = z.union([
  z.object({
    defines: z.literal('rule'),
    id: z.string().regex(id),
    severity: z.enum(severities),
    finds: sentence,
    inChapter: z.boolean(),
    inCourse: z.boolean(),
  }),
  z.object({
    defines: z.literal('claim'),
    name: z.string().regex(id),
    usage: z.array(sentence).min(1),
    definition: sentence,
    source: sentence,
    examples: z.array(
      z.object({
        fen: z.string(),
        claim: sentence,
        holds: z.union([z.boolean(), z.literal(['empty', 'undecided'])]),
        side: z.enum(['white', 'black', 'both']).optional(),
      }),
    ),
  }),
]);

/** A rule or a claim as it may be; else what is wrong with it, as a clause. */
export type Definition = z.output<typeof defined>;

export function readDefinition(given: DefinedInFile): Definition | { readonly wrong: string } {
  if (given.defines === 'nothing') {
    return {
      wrong: `it is ${given.what}, and neither a rule of \`defineCourseRule\` nor a claim of \`defineClaim\``,
    };
  }
  const result = defined.safeParse(given);
  if (!result.success) {
    const [issue] = result.error.issues.flatMap((each) =>
      each.code === 'invalid_union' ? (each.errors.find(isOfKind) ?? [each]) : [each],
    );
    const where = issue?.path.join('.') ?? '';
    const what = given.defines === 'rule' ? given.id : given.name;
    return {
      wrong: `the \`${where}\` of the ${given.defines} \`${what}\` is missing or not as it must be`,
    };
  }
  const { data } = result;
  if (data.defines === 'rule' && !data.inChapter && !data.inCourse) {
    return { wrong: `the rule \`${data.id}\` has neither \`inChapter\` nor \`inCourse\`` };
  }
  return data;
}

/** Whether these are the issues of the kind that was meant, and not of the other one. */
function isOfKind(issues: readonly z.core.$ZodIssue[]): boolean {
  return !issues.some(({ path }) => path[0] === 'defines');
}

/** What a rule found, as far as it is findings of these files; and what of it is none, as a clause. */
export function readFindings(
  given: unknown,
  isFile: (file: string) => boolean,
): { readonly found: readonly FoundByRule[]; readonly wrong?: string } {
  if (!Array.isArray(given)) return { found: [], wrong: 'it gave something that is no list' };
  const found: FoundByRule[] = [];
  let wrong: string | undefined;
  for (const one of given.slice(0, mostFindings)) {
    const result = finding.safeParse(one);
    const places = result.data ? placesOf(result.data) : [];
    if (result.success && places.every(({ file }) => isFile(file))) {
      found.push(withoutUndefined(result.data));
    } else wrong ??= whatIsWrong(one, result.success);
  }
  if (given.length > mostFindings) wrong ??= `it gave more than ${mostFindings} findings`;
  return { found, ...(wrong !== undefined && { wrong }) };
}

function placesOf({ place, related = [] }: z.output<typeof finding>): readonly Place[] {
  return [...(place ? [place] : []), ...related.map((other) => other.place)];
}

function whatIsWrong(one: unknown, isFinding: boolean): string {
  if (isFinding) return 'it gave a finding with a place in a file that it was not given';
  const shown = JSON.stringify(one) ?? 'nothing';
  return `it gave ${shown.length > 80 ? `${shown.slice(0, 80)}…` : shown}, which is no finding: one has a \`message\`, and a \`place\` that the rule was given`;
}

export function readVerdict(given: unknown): Verdict | undefined {
  const result = verdict.safeParse(given);
  return result.success ? withoutUndefined(result.data) : undefined;
}

export function readReadClaim(given: unknown): ReadClaim | undefined {
  const result = readClaim.safeParse(given);
  if (!result.success) return undefined;
  const { data } = result;
  return 'fault' in data ? { fault: withoutUndefined(data.fault) } : data;
}

type Defined<Value> = { [Key in keyof Value]: Exclude<Value[Key], undefined> };

/** Fields that were given as nothing, and those that were not given, are the same. */
function withoutUndefined<Value extends object>(value: Value): Defined<Value> {
  return Object.fromEntries(
    Object.entries(value).filter(([, field]) => field !== undefined),
  ) as Defined<Value>;
}
