import { createLocator, unprintable, withoutControls } from '../diagnostics/index.ts';
import type { CourseProblem, SourceFile } from './types.ts';

/**
 * A text without the characters that cannot be printed: spaces stand in their place. The first of
 * them is reported; they come along from terminals and word processors, and no editor shows them.
 */
export function reportControls(
  source: SourceFile,
  report: (problem: Omit<CourseProblem, 'rule'>) => void,
): SourceFile {
  const { path: file, text } = source;
  const [first, ...others] = text.matchAll(unprintable);
  if (first === undefined) return source;
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
  return { path: file, text: withoutControls(text) };
}

/** `U+001B`, as character tables and editors name it. */
export function codeOf(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  return `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
}
