import {
  blockAt,
  type Chapter,
  type Course,
  chapterAt,
  type Label,
  type MoveNode,
  type NodeRef,
} from '../model/index.ts';
import { type Strings, stringsFor } from '../strings/index.ts';
import { type Notation, numberedMove } from './notation.ts';

/** What the documents of all chapters of a course share. */
export interface SharedContext {
  readonly course: Course;
  readonly strings: Strings;
  readonly notation: Notation;
}

/** What every part of a chapter's document needs to know. */
export interface RenderContext extends SharedContext {
  readonly chapter: Chapter;
}

export function contextOf(course: Course): SharedContext {
  const { language, notation } = course.settings;
  const strings = stringsFor(language);
  return { course, strings, notation: { style: notation, strings } };
}

/** A place in the moves of the course: of a block of moves or of a game. */
export function nodeAt(course: Course, ref: NodeRef): MoveNode | undefined {
  const block = blockAt(course, ref);
  return block?.kind === 'moves' || block?.kind === 'game' ? block.nodes[ref.node] : undefined;
}

/** A position in words, `after 7...Be7`; with its chapter where that is not `from`. */
export function positionInWords(
  course: Course,
  ref: NodeRef,
  strings: Strings,
  from?: string,
): string {
  const move = nodeAt(course, ref)?.move;
  const words =
    move === undefined ? strings.startPosition : strings.after(numberedMove(move, strings));
  const title = chapterAt(course, ref)?.title;
  return ref.chapter === from || title === undefined ? words : strings.inChapter(words, title);
}

/**
 * A position that the author has named, in a sentence: `“The knight goes to the rim”, after 8...Na5`; without
 * a title as above. Readers never see the name itself.
 */
export function namedInWords(
  course: Course,
  { ref, title }: Label,
  strings: Strings,
  from?: string,
): string {
  const words = positionInWords(course, ref, strings, from);
  return title === undefined ? words : strings.titled(title, words);
}
