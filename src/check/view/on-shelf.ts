import { nearestName } from '../../diagnostics/index.ts';
import type { CourseIndex } from './course-index.ts';

/** What a link into another course leads to; nothing where that is not known. */
export type SiblingFound =
  | undefined
  | { readonly is: 'there' }
  | { readonly is: 'alone' }
  | { readonly is: 'self' }
  | { readonly is: 'no course'; readonly near?: string }
  | { readonly is: 'no name'; readonly title: string; readonly near?: string };

/** @param about `course/label`. */
export function findSibling({ shelf }: CourseIndex, about: string): SiblingFound {
  if (shelf === undefined) return undefined;
  if (shelf === 'none') return { is: 'alone' };
  const [id = '', label = ''] = about.split('/');
  const course = shelf.courses.get(id);
  if (course === undefined) {
    if (id === shelf.own) return { is: 'self' };
    const near = nearestName(id, shelf.courses.keys());
    return { is: 'no course', ...(near !== undefined && { near }) };
  }
  if (Object.hasOwn(course.names, label)) return { is: 'there' };
  const near = nearestName(label, Object.keys(course.names));
  return { is: 'no name', title: course.title, ...(near !== undefined && { near }) };
}
