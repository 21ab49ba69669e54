/** Slips that authors make in lines, verdicts and in the words around them. */
import type { FaultKind } from './faults.ts';

export const slipsInLines: readonly FaultKind[] = [];
