import type { Chapter } from './types.ts';

/** The same chapter with a body that is loaded on each access. Two accesses may return different objects. */
export function withLateBody(
  { body: _, ...chapter }: Chapter,
  bodyOf: () => Chapter['body'],
): Chapter {
  return {
    ...chapter,
    get body() {
      return bodyOf();
    },
  };
}
