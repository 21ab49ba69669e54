/** Reads claims: `pinned f3 and not loose e4`. */
import { nearestName } from '../../diagnostics/index.ts';
import { ArgumentReader, type ClaimFault, UnreadableClaim, type Word } from './argument-reader.ts';
import { claimKinds } from './claim-kinds.ts';
import type { ClaimKind, Judge } from './define-claim.ts';

/** One of the claims that `and` joins. */
export interface ClaimPart {
  /** As written, words set apart by one space, with its `not`. */
  readonly text: string;
  /** Where it stands in the text that was parsed. */
  readonly offset: number;
  readonly length: number;
  readonly denied: boolean;
  readonly kind: ClaimKind;
  /** Names of positions that it speaks of. */
  readonly labels: readonly Word[];
  readonly judge: Judge;
}

export interface Claim {
  readonly parts: readonly ClaimPart[];
}

/** Reads a claim. `not` denies the one claim that follows it; `and` joins whole claims. */
export function parseClaim(text: string): Claim | ClaimFault {
  const words = [...text.matchAll(/\S+/g)].map(
    (match): Word => ({ text: match[0], offset: match.index }),
  );
  try {
    return { parts: splitAtAnd(words, text).map(({ part, end }) => parsePart(part, end)) };
  } catch (error) {
    if (error instanceof UnreadableClaim) return error.fault;
    throw error;
  }
}

export function isClaimFault(result: Claim | ClaimFault): result is ClaimFault {
  return 'reason' in result;
}

function splitAtAnd(words: readonly Word[], text: string): { part: Word[]; end: number }[] {
  const parts: { part: Word[]; end: number }[] = [];
  let part: Word[] = [];
  const close = (joint?: Word) => {
    const last = part.at(-1);
    if (!last) {
      const where = joint ? 'before this `and`' : 'behind the last `and`';
      const nothing = words.length === 0 ? 'nothing is claimed' : `a claim is missing ${where}`;
      throw new UnreadableClaim({
        reason: nothing,
        offset: joint?.offset ?? text.length,
        length: joint?.text.length ?? 0,
      });
    }
    parts.push({ part, end: last.offset + last.text.length });
    part = [];
  };
  for (const word of words) {
    if (word.text === 'and') close(word);
    else part.push(word);
  }
  close();
  return parts;
}

function parsePart(words: readonly Word[], end: number): ClaimPart {
  const denied = words[0]?.text === 'not';
  const [first, ...rest] = denied ? words.slice(1) : words;
  if (!first) {
    throw new UnreadableClaim({
      reason: 'a claim is missing behind `not`',
      offset: end,
      length: 0,
    });
  }
  // `mate in 2` is a claim of its own beside `mate`.
  const double =
    rest[0] && claimKinds.find(({ name }) => name === `${first.text} ${rest[0]?.text}`);
  const kind = double ?? claimKinds.find(({ name }) => name === first.text);
  if (!kind) throw new UnreadableClaim(unknownName(first));
  const reader = new ArgumentReader(double ? rest.slice(1) : rest, end);
  const offset = words[0]?.offset ?? 0;
  const judge = readArguments(kind, reader);
  return {
    text: words.map(({ text }) => text).join(' '),
    offset,
    length: end - offset,
    denied,
    kind,
    labels: reader.labels,
    judge,
  };
}

function readArguments(kind: ClaimKind, reader: ArgumentReader): Judge {
  try {
    return kind.read(reader);
  } catch (error) {
    if (!(error instanceof UnreadableClaim)) throw error;
    const forms = kind.usage.map((form) => `\`${form}\``);
    const hint = `Write it like ${forms.join(' or ')}.`;
    throw new UnreadableClaim({ hint, ...error.fault });
  }
}

function unknownName(word: Word): ClaimFault {
  const names = claimKinds.map(({ name }) => name);
  const near = nearestName(word.text, names);
  return {
    reason: `there is no claim \`${word.text}\``,
    offset: word.offset,
    length: word.text.length,
    hint: near ? `Did you mean \`${near}\`?` : `The claims are ${names.join(', ')}.`,
  };
}
