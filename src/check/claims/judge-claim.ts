import type { ClaimContext } from './define-claim.ts';
import type { Claim, ClaimPart } from './parse-claim.ts';

/** A part of a claim that is not true, or that a search could not decide. */
export interface Refutation {
  readonly part: ClaimPart;
  readonly undecided: boolean;
  /** One English clause about the board, without a full stop. */
  readonly because: string;
  /** The claim of this kind that is true here, where there is one to name. */
  readonly instead?: string;
}

/** The parts of a claim that do not hold: none where it is true. */
export function judgeClaim(claim: Claim, context: ClaimContext): Refutation[] {
  const refutations: Refutation[] = [];
  for (const part of claim.parts) {
    const { holds, because, instead } = part.judge(context);
    // What is not there can be neither claimed nor denied.
    const stands = holds === !part.denied;
    if (stands) continue;
    refutations.push({
      part,
      undecided: holds === 'undecided',
      because,
      ...(instead === undefined || part.denied ? {} : { instead }),
    });
  }
  return refutations;
}
