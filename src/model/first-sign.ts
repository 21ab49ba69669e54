import { type Place, withinLine } from '../diagnostics/index.ts';

/** The first character of a range: where a finding about a whole block is shown. */
export function firstSign(place: Place): Place {
  return withinLine(place, 0, 1);
}
