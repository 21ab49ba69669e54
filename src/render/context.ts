import type { Chapter, Course, CourseSettings, NodeRef } from '../model/index.ts';
import { type Strings, stringsFor } from '../strings/index.ts';
import { type Ask, askOf } from './ask/ask.ts';
import type { PositionNamed } from './ask/questions.ts';
import { type Notation, numberedMove } from './notation.ts';

/** What the documents of all chapters of a course share. */
export interface SharedContext {
  /**
   * The whole course. What a chapter's document needs of the rest it asks for by `ask`: one that looks at the
   * course itself is made anew after each change of any chapter.
   */
  readonly course: Course;
  readonly ask: Ask;
  readonly settings: CourseSettings;
  readonly strings: Strings;
  readonly notation: Notation;
}

/** What every part of a chapter's document needs to know. */
export interface RenderContext extends SharedContext {
  readonly chapter: Chapter;
}

export function contextOf(course: Course): SharedContext {
  const { settings } = course;
  const strings = stringsFor(settings.language, settings.notation);
  const style = settings.notation === 'figurines' ? 'figurines' : 'letters';
  return { course, ask: askOf(course), settings, strings, notation: { style, strings } };
}

/** A position in words, `after 7...Be7`; with its chapter where that is not `from`. */
export function positionInWords(ask: Ask, ref: NodeRef, strings: Strings, from?: string): string {
  const move = ask('move', ref);
  const words = move === null ? strings.startPosition : strings.after(numberedMove(move, strings));
  const title = ref.chapter === from ? undefined : ask('chapter', ref.chapter)?.title;
  return title === undefined ? words : strings.inChapter(words, title);
}

/**
 * A position that the author has named, in a sentence: `“The knight goes to the rim”, after 8...Na5`; without
 * a title as above. Readers never see the name itself.
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
