import type { PlaceInCourse } from './find-place.ts';

/** The claims that are true at a place after some more moves. */
export function claimsAfter(_place: PlaceInCourse, _moves: readonly string[]): string[] {
  return [];
}
