/** Reads claims: `pinned f3 and not loose e4`, `open d or open e`, `after Nf3: pinned f3`. */

import { claimKinds } from '../claim-kinds.ts';
import type { ClaimKind, Judge } from '../define-claim.ts';
import { type AfterMoves, afterMoves } from './after-moves.ts';
import { ArgumentReader, type ClaimFault, UnreadableClaim, type Word } from './argument-reader.ts';
import { unknownName } from './unknown-name.ts';

/** One of the claims that `and` and `or` join. */
export interface ClaimPart {
  /** As written, words set apart by one space, with its `not` and without its `after`. */
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
  /** As written, words set apart by one space. */
  readonly text: string;
  readonly offset: number;
  readonly length: number;
  /** What `or` joins: the claim is true where all parts of one of them are. */
  readonly alternatives: readonly (readonly ClaimPart[])[];
  /** All parts, in the order of the text. */
  readonly parts: readonly ClaimPart[];
}

/**
 * Reads a claim. `not` denies the one claim that follows it; `and` joins claims more closely than `or`;
 * `after` and its moves speak for all that follows, up to another `after`.
 * @param own claims of the course's own.
 */
export function parseClaim(text: string, own: readonly ClaimKind[] = []): Claim | ClaimFault {
  const words = [...text.matchAll(/\S+/g)].map(
    (match): Word => ({ text: match[0], offset: match.index }),
  );
  try {
    return readClaim(words, text, own.length === 0 ? claimKinds : [...claimKinds, ...own]);
  } catch (error) {
    if (error instanceof UnreadableClaim) return error.fault;
    throw error;
  }
}

export function isClaimFault(result: Claim | ClaimFault): result is ClaimFault {
  return 'reason' in result;
}

function readClaim(words: readonly Word[], text: string, kinds: readonly ClaimKind[]): Claim {
  const alternatives: ClaimPart[][] = [[]];
  let after: AfterMoves | undefined;
  for (const { part, joint, end } of splitAtJoints(words, text)) {
    if (joint === 'or') alternatives.push([]);
    const lead = afterMoves(part, end);
    after = lead?.after ?? after;
    alternatives.at(-1)?.push(parsePart(lead?.rest ?? part, { end, after, kinds }));
  }
  const offset = words[0]?.offset ?? 0;
  const last = words.at(-1);
  return {
    text: words.map((word) => word.text).join(' '),
    offset,
    length: last ? last.offset + last.text.length - offset : 0,
    alternatives,
    parts: alternatives.flat(),
  };
}

interface Stretch {
  readonly part: readonly Word[];
  /** The word that joins it to the one before. */
  readonly joint: string | undefined;
  readonly end: number;
}

function splitAtJoints(words: readonly Word[], text: string): Stretch[] {
  const stretches: Stretch[] = [];
  let part: Word[] = [];
  let joint: Word | undefined;
  const close = (next?: Word) => {
    const last = part.at(-1);
    if (!last) throw new UnreadableClaim(nothingThere(next, joint, text));
    stretches.push({ part, joint: joint?.text, end: last.offset + last.text.length });
    part = [];
    joint = next;
  };
  for (const word of words) {
    if (word.text === 'and' || word.text === 'or') close(word);
    else part.push(word);
  }
  close();
  return stretches;
}

function nothingThere(next: Word | undefined, joint: Word | undefined, text: string): ClaimFault {
  if (next) {
    const reason = `a claim is missing before this \`${next.text}\``;
    return { reason, offset: next.offset, length: next.text.length };
  }
  const reason = joint
    ? `a claim is missing behind the last \`${joint.text}\``
    : 'nothing is claimed';
  return { reason, offset: text.length, length: 0 };
}

function parsePart(
  words: readonly Word[],
  {
    end,
    after,
    kinds,
  }: {
    readonly end: number;
    readonly after: AfterMoves | undefined;
    readonly kinds: readonly ClaimKind[];
  },
): ClaimPart {
  const denied = words[0]?.text === 'not';
  const [first, ...rest] = denied ? words.slice(1) : words;
  if (!first) {
    const where = denied ? 'behind `not`' : 'behind the colon';
    throw new UnreadableClaim({ reason: `a claim is missing ${where}`, offset: end, length: 0 });
  }
  if (denied && first.text === 'after') {
    throw new UnreadableClaim({
      reason: '`not` stands before `after`',
      offset: first.offset,
      length: first.text.length,
      hint: 'Deny what is claimed: `after Nf3: not pinned f3`.',
    });
  }
  // `mate in 2` is a claim of its own beside `mate`.
  const double = rest[0] && kinds.find(({ name }) => name === `${first.text} ${rest[0]?.text}`);
  const kind = double ?? kinds.find(({ name }) => name === first.text);
  if (!kind)
    throw new UnreadableClaim({ ...unknownName([first, ...rest], kinds), isUnknown: true });
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
    judge: after ? after.judgeThere(judge) : judge,
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
