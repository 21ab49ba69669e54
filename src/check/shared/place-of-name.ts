import type { RelatedPlace } from '../../diagnostics/index.ts';
import type { CourseView } from '../view/index.ts';

/** The move that a name stands behind, as a place related to a finding. */
export function placeOfName(name: string, course: CourseView): RelatedPlace[] {
  const place = course.ask('namePlace', name)?.move;
  return place ? [{ place, message: `\`${name}\` is the position after this` }] : [];
}
