import type { CourseLinkNode } from '../../model/index.ts';
import { siblingAsked } from '../chapter-summary.ts';
import type { CourseView } from '../view/index.ts';

/** What is wrong with a link into another course, and what to do; nothing where it leads there, or stands on no shelf. */
export function siblingFault(
  node: CourseLinkNode,
  course: CourseView,
): { readonly message: string; readonly hint: string } | undefined {
  const { course: id, label } = node;
  const found = course.ask('sibling', siblingAsked(node));
  switch (found?.is) {
    case 'self':
      return {
        message: `\`${id}\` is this course itself.`,
        hint: `Write \`pos:${label}\`.`,
      };
    case 'no course':
      return {
        message: `The shelf has no course \`${id}\`.`,
        hint: found.near
          ? `Did you mean \`${found.near}/${label}\`?`
          : 'Write the `id` of a course that shelf.yaml names.',
      };
    case 'no name':
      return {
        message: `“${found.title}” publishes no position that is named \`${label}\`.`,
        hint: found.near
          ? `Did you mean \`${id}/${found.near}\`?`
          : `Name one there with \`:here[${label}]\` in a comment behind its move.`,
      };
    default:
      return undefined;
  }
}
