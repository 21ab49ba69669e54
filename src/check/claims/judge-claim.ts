import type { ClaimContext, Verdict } from './define-claim.ts';
import type { Claim, ClaimPart } from './reading/parse-claim.ts';

/** A part of a claim that is not true, or that a search could not decide. */
export interface Refutation {
  /** The part; all of the claim where none of the claims that `or` joins is true. */
  readonly part: Pick<ClaimPart, 'text' | 'offset' | 'length'>;
  readonly undecided: boolean;
  /** One English clause about the board, without a full stop. */
  readonly because: string;
  /** The claim of this kind that is true here, where there is one to name. */
  readonly instead?: string;
}

/** The parts of a claim that do not hold: none where it is true. */
export function judgeClaim(claim: Claim, context: ClaimContext): Refutation[] {
  const all: Refutation[] = [];
  for (const parts of claim.alternatives) {
    const refutations = parts.flatMap((part) => refute(part, part.judge(context)));
    if (refutations.length === 0) return [];
    all.push(...refutations);
  }
  if (claim.alternatives.length === 1) return all;
  return [
    {
      part: claim,
      undecided: all.some(({ undecided }) => undecided),
      because: all.map(({ part, because }) => `for \`${part.text}\`, ${because}`).join('; '),
    },
  ];
}

function refute(part: ClaimPart, { holds, because, instead }: Verdict): Refutation[] {
  // What is not there can be neither claimed nor denied.
  if (holds === !part.denied) return [];
  return [
    {
      part,
      undecided: holds === 'undecided',
      because,
      ...(instead === undefined || part.denied ? {} : { instead }),
    },
  ];
}
