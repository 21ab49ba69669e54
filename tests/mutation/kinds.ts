import { type FaultKind, faultKinds } from './faults.ts';
import { slipsInLines } from './slips-in-lines.ts';

/** All that is planted: a new file of slips is a line here. */
export const allKinds: readonly FaultKind[] = [...faultKinds, ...slipsInLines];
