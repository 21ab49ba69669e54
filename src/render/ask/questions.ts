import { chapterIds, resolveFragment } from '../../addresses/index.ts';
import { adviceOf } from '../../check/index.ts';
import type { PlayedMove } from '../../chess/index.ts';
import {
  type Chapter,
  type Course,
  chapterAt,
  chapterIndex,
  documentsOf,
  inCourseOrder,
  type NodeRef,
  outlinedNodeAt,
  type PlaceOnShelf,
} from '../../model/index.ts';
import { titlesByKey } from '../titles-by-key.ts';
import { diagramNumbers } from './diagram-numbers.ts';
import { nodeAt } from './node-at.ts';
import { type ToldPlace, toldPlace } from './told-places.ts';
import { otherWaysTo } from './ways.ts';

/** A chapter, as others name it. */
export interface ChapterNamed {
  readonly id: string;
  readonly title: string;
  /** From 1; pages, whose numbers readers do not see, come after all chapters. */
  readonly number: number;
  /** For a page of the author's: whether the book and the handout include it. */
  readonly page?: 'in the book' | 'on the site';
}

/** A position that the author has named. */
export interface PositionNamed {
  readonly ref: NodeRef;
  /** What readers see; they never see the name itself. */
  readonly title?: string;
}

/** A move, as text names it. */
export type MoveNamed = Pick<PlayedMove, 'san' | 'number' | 'color'>;

/** An occurrence of a position. */
export interface PlaceInOrder {
  readonly key: string;
  readonly ref: NodeRef;
  /** The node before it in its block. */
  readonly parent?: number;
}

/**
 * What a chapter's document may ask of the rest of the course. Arguments and answers are plain data. A document is
 * reused as long as all its answers stay equal (`recorder.ts`), so an answer says as little as possible. "Not there"
 * is an answer: null.
 */
export const questions = {
  label(course: Course, name: string): PositionNamed | null {
    const label = course.labels[name];
    if (label === undefined) return null;
    const { ref, title } = label;
    return { ref, ...(title !== undefined && { title }) };
  },
  /** Where a link into another course leads, by `course/label`. */
  sibling: (course: Course, link: string): PlaceOnShelf | null => course.siblings?.[link] ?? null,
  /** The author's title of a position, by its key. */
  title: (course: Course, key: string): string | null => titlesByKey(course).get(key) ?? null,
  /** The move that leads to a node. */
  move(course: Course, ref: NodeRef): MoveNamed | null {
    const move = nodeAt(course, ref)?.move;
    return move === undefined ? null : { san: move.san, number: move.number, color: move.color };
  },
  chapter(course: Course, file: string): ChapterNamed | null {
    const chapter = chapterAt(course, { chapter: file });
    if (chapter === undefined) return null;
    const { id, title, page } = chapter;
    const number = chapterIndex(course, file) + 1;
    return { id, title, number, ...(page && { page: page.book ? 'in the book' : 'on the site' }) };
  },
  /** The id of a node within its page; empty if its chapter does not exist. */
  id(course: Course, ref: NodeRef): string {
    const chapter = chapterAt(course, ref);
    return chapter ? chapterIds(chapter).ofNode({ key: ref.block }, ref.node) : '';
  },
  /**
   * Where else the course reaches the positions of a tree, by their index: for each other position that leads there,
   * its first occurrence. Positions without any are left out.
   * @param tree the keys of the positions, each with the index of its parent.
   */
  otherWays: (
    course: Course,
    {
      keys,
      parents,
    }: { readonly keys: readonly (string | null)[]; readonly parents: readonly (number | null)[] },
  ): readonly (readonly [index: number, places: readonly NodeRef[]])[] =>
    keys.flatMap((key, index) => {
      const parent = parents[index] ?? null;
      if (key === null || parent === null) return [];
      const places = otherWaysTo(course, key, keys[parent] ?? null);
      return places.length === 0 ? [] : [[index, places] as const];
    }),
  /** The first occurrence of a position in a chapter, by key. */
  placeIn(
    course: Course,
    { key, chapter }: { readonly key: string; readonly chapter: string },
  ): NodeRef | null {
    return course.graph[key]?.at.find((ref) => ref.chapter === chapter) ?? null;
  },
  /** The first occurrence of each position, in the order of the course; in the given chapter, if it occurs there. */
  places(
    course: Course,
    { keys, here }: { readonly keys: readonly string[]; readonly here?: string | undefined },
  ): readonly PlaceInOrder[] {
    const inOrder = inCourseOrder(course);
    return keys
      .flatMap((key) => {
        const at = course.graph[key]?.at ?? [];
        const ref = at.find((place) => place.chapter === here) ?? at[0];
        if (ref === undefined) return [];
        const { parent } = outlinedNodeAt(course, ref) ?? {};
        return [{ key, ref, ...(parent !== undefined && { parent }) }];
      })
      .sort((a, b) => inOrder(a.ref, b.ref));
  },
  /** The advice in a position, by key: the first occurrence of that move. */
  advice: (course: Course, key: string): NodeRef | null =>
    adviceOf(course).get(key)?.[0]?.ref ?? null,
  /** The first occurrence of each move that the course has from a position, by key. */
  movesFrom: (course: Course, key: string): readonly NodeRef[] =>
    (course.graph[key]?.moves ?? []).flatMap(({ at: [ref] }) => ref ?? []),
  /** The number of a diagram, counted through the course; null for other blocks. */
  diagramNumber: (
    course: Course,
    { chapter, block }: { readonly chapter: string; readonly block: string },
  ): number | null => diagramNumbers(course).get(`${chapter} ${block}`) ?? null,
  /** Whether a chapter's page has an id that is visible without opening answers. */
  shows(
    course: Course,
    { chapter, id }: { readonly chapter: string; readonly id: string },
  ): boolean {
    const there = chapterAt(course, { chapter });
    return (
      there !== undefined &&
      resolveFragment(there, id) === id &&
      !/^exercise-\d+-(?:answer|also|wrong)-/.test(id)
    );
  },
  /** Where a reader on paper finds the element with an id in a chapter. */
  told: (
    course: Course,
    { chapter, id }: { readonly chapter: string; readonly id: string },
  ): ToldPlace => toldPlace(course, chapter, id),
  /** The chapter that an author's link names by its file or its page, and what the fragment leads to there. */
  link(
    course: Course,
    { path, fragment }: { readonly path: string; readonly fragment?: string | undefined },
  ): { readonly file: string; readonly id?: string } | null {
    const there = chapterNamed(course, path);
    if (there === undefined) return null;
    if (fragment === undefined) return { file: there.file };
    return { file: there.file, id: resolveFragment(there, fragment) ?? fragment };
  },
} as const;

export type Questions = typeof questions;
export type QuestionKind = keyof Questions;
export type AboutOf<Kind extends QuestionKind> = Parameters<Questions[Kind]>[1];
export type AnswerTo<Kind extends QuestionKind> = ReturnType<Questions[Kind]>;

/** The chapter of which alone the answer says something, for the kinds that have one: that, and the order of the course. */
const aboutOneChapter: {
  readonly [Kind in QuestionKind]?: (about: AboutOf<Kind>) => string;
} = {
  move: ({ chapter }) => chapter,
  chapter: (file) => file,
  id: ({ chapter }) => chapter,
  placeIn: ({ chapter }) => chapter,
  shows: ({ chapter }) => chapter,
};

/** The file of the chapter that alone decides an answer; undefined where others may. */
export function chapterAsked<Kind extends QuestionKind>(
  kind: Kind,
  about: AboutOf<Kind>,
): string | undefined {
  return aboutOneChapter[kind]?.(about);
}

const pages = new WeakMap<Course, ReadonlyMap<string, Chapter>>();

/** Finds a chapter by its file or by its page in the site. */
function chapterNamed(course: Course, path: string): Chapter | undefined {
  const byPage =
    pages.get(course) ?? new Map(documentsOf(course).map((each) => [`${each.id}.html`, each]));
  pages.set(course, byPage);
  return chapterAt(course, { chapter: path }) ?? byPage.get(path);
}
