import { createLocator, unprintable, withoutControls } from '../../diagnostics/index.ts';
import type { CourseProblem, SourceFile } from '../types.ts';

/**
 * A text as everything that reads on takes it; all of it stays where it stands. Characters that
 * cannot be printed are spaces, and the first of them is reported: they come along from terminals
 * and word processors, and no editor shows them. A lone CR is a line feed: CommonMark ends a line
 * at either, YAML libraries only at the second.
 */
export function cleanText(
  source: SourceFile,
  report: (problem: Omit<CourseProblem, 'rule'>) => void,
): SourceFile {
  const { path: file, text } = source;
  const clean = { path: file, text: withoutControls(text).replace(/\r(?!\n)/g, '\n') };
  const [first, ...others] = text.matchAll(unprintable);
  if (first === undefined) return clean;
  const pointAt = createLocator(text);
  report({
    place: {
      file,
      start: pointAt(first.index),
      end: pointAt(first.index + first[0].length),
    },
    message: `A character that cannot be printed stands here: ${codeOf(first[0])}.`,
    hint:
      others.length === 0
        ? 'Delete it; it was probably pasted.'
        : `Delete it; it was probably pasted. The file has ${others.length + 1} such characters.`,
  });
  return clean;
}

/** `U+001B`, as character tables and editors name it. */
export function codeOf(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  return `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
}
