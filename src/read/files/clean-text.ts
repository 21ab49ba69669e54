import { createLocator, unprintable, withoutControls } from '../../diagnostics/index.ts';
import type { CourseProblem, SourceFile } from '../types.ts';

/**
 * Prepares a text for all readers, without moving any of its characters. Unprintable characters become spaces and the
 * first is reported: they are pasted from terminals and word processors, and no editor shows them. A lone CR becomes
 * a line feed, since CommonMark ends a line at either but YAML libraries only at a line feed.
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
