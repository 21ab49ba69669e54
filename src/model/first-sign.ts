import { type Place, withinLine } from '../diagnostics/index.ts';

/** The first sign of a stretch: where a finding about a whole block is shown. */
export function firstSign(place: Place): Place {
  return withinLine(place, 0, 1);
}
