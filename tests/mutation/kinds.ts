import { type FaultKind, faultKinds } from './faults.ts';
import { slipsInLines } from './slips-in-lines.ts';
import { slipsOfArrows } from './slips-of-arrows.ts';
import { slipsOfClaims } from './slips-of-claims.ts';

/** All that is planted: a new file of slips is a line here. */
export const allKinds: readonly FaultKind[] = [
  ...faultKinds,
  ...slipsInLines,
  ...slipsOfArrows,
  ...slipsOfClaims,
];
