import { numberedSan } from '../../chess/index.ts';
import { documentsOf } from '../../read/index.ts';
import type { Block, Chapter, Course, MoveNode, NodeRef } from '../types.ts';

/** The chapter or the page of a reference; absent where the course has it no more. */
export function chapterAt(course: Course, { chapter }: Pick<NodeRef, 'chapter'>) {
  return placesOf(course).get(chapter)?.chapter;
}

/** Where a chapter stands in its course, from 0, and a page behind all chapters; -1 where the course has it not. */
export function chapterIndex(course: Course, file: string): number {
  return placesOf(course).get(file)?.index ?? -1;
}

export function blockAt(course: Course, ref: Pick<NodeRef, 'chapter' | 'block'>) {
  const chapter = chapterAt(course, ref);
  return chapter && blocksOf(chapter).get(ref.block)?.block;
}

/** The index of a block in its chapter; -1 if the chapter does not have it. */
export function blockIndex(chapter: Chapter, key: string): number {
  return blocksOf(chapter).get(key)?.index ?? -1;
}

export function nodeAt(course: Course, ref: NodeRef): MoveNode | undefined {
  return blockAt(course, ref)?.nodes[ref.node];
}

/** The move that leads to a node, with its number; none at the start of a block. */
export function nameAt(course: Course, ref: NodeRef): string | undefined {
  const move = nodeAt(course, ref)?.move;
  return move && numberedSan(move);
}

const documents = new WeakMap<
  Course,
  ReadonlyMap<string, { readonly chapter: Chapter; readonly index: number }>
>();

function placesOf(course: Course) {
  const known =
    documents.get(course) ??
    new Map(documentsOf(course).map((chapter, index) => [chapter.file, { chapter, index }]));
  documents.set(course, known);
  return known;
}

const blocks = new WeakMap<
  readonly Block[],
  ReadonlyMap<string, { readonly block: Block; readonly index: number }>
>();

function blocksOf({ blocks: list }: Chapter) {
  const known =
    blocks.get(list) ?? new Map(list.map((block, index) => [block.key, { block, index }]));
  blocks.set(list, known);
  return known;
}

/** Compares references by their order in the course. */
export function inCourseOrder(course: Course): (a: NodeRef, b: NodeRef) => number {
  const block = (ref: NodeRef) => {
    const chapter = chapterAt(course, ref);
    return chapter ? blockIndex(chapter, ref.block) : -1;
  };
  return (a, b) =>
    chapterIndex(course, a.chapter) - chapterIndex(course, b.chapter) ||
    block(a) - block(b) ||
    a.node - b.node;
}
