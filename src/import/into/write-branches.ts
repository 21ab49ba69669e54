import { applyFixes } from '../../diagnostics/index.ts';
import { addLine, EditRefusedError, type Edits, type NewMove } from '../../edit/index.ts';
import {
  type Course,
  chapterAt,
  inCourseOrder,
  type NodeRef,
  nodeAt,
  taughtInCourse,
} from '../../model/index.ts';
import type { NewBranch, NewNode } from './types.ts';

export interface WrittenBranches {
  /** The chapters that changed, by their files. */
  readonly texts: ReadonlyMap<string, string>;
  /** Branches that no place can take, each with the reason. */
  readonly refused: readonly { readonly branch: NewBranch; readonly reason: string }[];
}

export interface WriteOptions {
  readonly texts: ReadonlyMap<string, string>;
  /** Reads a course whose chapters have other texts. */
  readonly read: (texts: ReadonlyMap<string, string>) => Course;
  /** Where the lines come from, for the note that asks the author to finish them. */
  readonly from: string;
}

/**
 * Writes new branches where they belong: behind the course's own moves at that position, each with a `:todo` that says
 * where it comes from. Chapters are changed by range. Of branches that would touch one another some wait until
 * the others are written, and then find their places anew.
 */
export function writeBranches(
  course: Course,
  branches: readonly NewBranch[],
  { texts: given, read, from }: WriteOptions,
): WrittenBranches {
  const texts = new Map(given);
  const changed = new Map<string, string>();
  const refused: { branch: NewBranch; reason: string }[] = [];
  let now = course;
  let waiting = [...branches];
  while (waiting.length > 0) {
    const edits = new Map<string, Edits[number][]>();
    const later: NewBranch[] = [];
    for (const branch of waiting) {
      try {
        const { file, made } = editsOf(now, branch, { texts, from });
        const known = edits.get(file) ?? [];
        if (made.some((edit) => known.some((each) => touch(each, edit)))) later.push(branch);
        else edits.set(file, [...known, ...made]);
      } catch (error) {
        if (!(error instanceof EditRefusedError)) throw error;
        refused.push({ branch, reason: error.message });
      }
    }
    for (const [file, made] of edits) {
      const text = applyFixes(texts.get(file) ?? '', made);
      texts.set(file, text);
      changed.set(file, text);
    }
    if (later.length > 0) now = read(texts);
    waiting = later;
  }
  return { texts: changed, refused };
}

function touch({ place: a }: Edits[number], { place: b }: Edits[number]): boolean {
  return a.start.offset <= b.end.offset && b.start.offset <= a.end.offset;
}

function editsOf(
  course: Course,
  { position, root, games }: NewBranch,
  { texts, from }: Pick<WriteOptions, 'texts' | 'from'>,
): { file: string; made: Edits } {
  const ref = branchPoint(course, position.key);
  const chapter = ref && chapterAt(course, ref);
  const text = chapter && texts.get(chapter.file);
  if (!ref || !chapter || text === undefined) {
    throw new EditRefusedError('No chapter has this position any more', 'run the import again');
  }
  const numbers = games.map(({ number }) => number).join(', ');
  const todo = `from ${from}, game ${numbers}`.replace(/[[\]{}\\]/g, ' ');
  const [first, ...rest] = lineOf(course, root);
  const directives = [...(first?.directives ?? []), { name: 'todo' as const, argument: todo }];
  const moves = first ? [{ ...first, directives }, ...rest] : rest;
  return { file: chapter.file, made: addLine({ text, chapter }, ref, moves) };
}

/** Where a branch belongs: a place that is taught, and one where the course goes on, before others. */
export function branchPoint(course: Course, key: string): NodeRef | undefined {
  const taught = taughtInCourse(course);
  const worth = (ref: NodeRef) => {
    const node = nodeAt(course, ref);
    if (node === undefined) return 0;
    return (taught.has(node) ? 2 : 0) + (node.children.length > 0 ? 1 : 0);
  };
  const places = [...(course.graph[key]?.at ?? [])].sort(inCourseOrder(course));
  return places.sort((a, b) => worth(b) - worth(a))[0];
}

/** A node and its first children as a line; the others stand in their places. */
function lineOf(course: Course, root: NewNode, isOther = false): NewMove[] {
  const moves: NewMove[] = [];
  let others: readonly NewNode[] = [];
  for (let node: NewNode | undefined = root; node; ) {
    const variations = others.map((other) => lineOf(course, other, true));
    moves.push({ ...moveOf(course, node, isOther && node === root), variations });
    const next: NewNode | undefined = node.children[0];
    others = node.children.slice(1);
    node = next;
  }
  return moves;
}

function moveOf(course: Course, node: NewNode, isOther: boolean): NewMove {
  const { san, glyphs, comments, meets } = node;
  const isBad = glyphs.some((nag) => nag === 2 || nag === 4 || nag === 6);
  const name = meets === undefined ? undefined : nameAt(course, meets);
  const meeting =
    name === undefined
      ? {
          name: 'todo' as const,
          argument: 'this position stands elsewhere too: name it, and say same here',
        }
      : { name: 'same' as const, argument: name };
  return {
    san,
    glyphs,
    directives: [
      // The first of several is what is advised; the author may choose another.
      ...(isOther && node.isOwn && !isBad ? [{ name: 'option' as const, argument: '' }] : []),
      ...(meets === undefined ? [] : [meeting]),
    ],
    comment: comments.flatMap(({ comment }) => comment ?? []).join(' '),
    source: comments.flatMap(({ source }) => source ?? []).join(' '),
  };
}

function nameAt(course: Course, key: string): string | undefined {
  return Object.values(course.labels).find(({ ref }) => nodeAt(course, ref)?.position?.key === key)
    ?.name;
}
