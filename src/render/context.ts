import type { Chapter, Course, CourseSettings, NodeRef } from '../model/index.ts';
import { type Strings, stringsFor } from '../strings/index.ts';
import { type Ask, askOf } from './ask/ask.ts';
import type { PositionNamed } from './ask/questions.ts';
import { type Notation, numberedMove } from './notation.ts';

/** What the documents of all chapters of a course share. */
export interface SharedContext {
  /**
   * The whole course. Use `ask` instead where you can: what looks at the course itself is made anew after each change
   * of any chapter.
   */
  readonly course: Course;
  readonly ask: Ask;
  readonly settings: CourseSettings;
  readonly strings: Strings;
  readonly notation: Notation;
}

/** What every renderer of a chapter's parts needs. */
export interface RenderContext extends SharedContext {
  readonly chapter: Chapter;
}

export function contextOf(course: Course): SharedContext {
  const { settings } = course;
  const strings = stringsFor(settings.language, settings.notation);
  const style = settings.notation === 'figurines' ? 'figurines' : 'letters';
  return { course, ask: askOf(course), settings, strings, notation: { style, strings } };
}

/** A position in words, `after 7...Be7`; with the title of its chapter unless that is `from`. */
export function positionInWords(ask: Ask, ref: NodeRef, strings: Strings, from?: string): string {
  const move = ask('move', ref);
  const words = move === null ? strings.startPosition : strings.after(numberedMove(move, strings));
  const title = ref.chapter === from ? undefined : ask('chapter', ref.chapter)?.title;
  return title === undefined ? words : strings.inChapter(words, title);
}

/**
 * A named position in a sentence: `“The knight goes to the rim”, after 8...Na5`; without a title as in
 * `positionInWords`. Readers never see the name itself.
 */
export function namedInWords(
  ask: Ask,
  { ref, title }: PositionNamed,
  strings: Strings,
  from?: string,
): string {
  const words = positionInWords(ask, ref, strings, from);
  return title === undefined ? words : strings.titled(title, words);
}
