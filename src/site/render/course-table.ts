import { createHash } from 'node:crypto';
import { adviceOf } from '../../check/index.ts';
import { sideToMove } from '../../chess/index.ts';
import type {
  CourseTable,
  TableMove,
  TableMoveKind,
  TablePlace,
  TablePosition,
} from '../../contract/index.ts';
import {
  type Course,
  courseId,
  type GraphMove,
  type GraphPosition,
  type NodeRef,
  outlinedBlockAt,
  outlinedNodeAt,
  positionsBefore,
} from '../../model/index.ts';
import {
  type Addresses,
  contextOf,
  freshParts,
  namesByKey,
  type Parts,
  titlesByKey,
} from '../../render/index.ts';
import { placesPart } from './table-places.ts';

/**
 * The positions of a course's `moves` blocks as one table, for the reader's browser.
 * @param parts of chapters; default: made when asked for.
 */
export function makeCourseTable(
  course: Course,
  addresses: Addresses,
  parts: Parts = freshParts(contextOf(course)),
): CourseTable {
  const ids = new Map(
    course.chapters.map((chapter, index) => [
      chapter.file,
      { index, ids: parts.of(placesPart, chapter) },
    ]),
  );
  const graph = Object.values(course.graph);
  const indexOf = new Map(graph.map(({ key }, index) => [key, index]));
  const placesOf = (refs: readonly NodeRef[]) =>
    refs.flatMap(({ chapter, block, node }): TablePlace[] => {
      const there = ids.get(chapter);
      if (there === undefined) return [];
      const id = there.ids[block]?.[node];
      return [id === undefined ? [there.index] : [there.index, id]];
    });
  const named = namesByKey(course);
  const titles = titlesByKey(course);

  const moveOf = (position: GraphPosition, move: GraphMove): TableMove => ({
    san: move.san,
    to: indexOf.get(move.to) ?? 0,
    kind: kindOf(course, position, move),
    at: placesOf(move.at),
  });
  const positions = graph.map((position): TablePosition => {
    const names = named.get(position.key);
    const title = titles.get(position.key);
    const moves = position.moves.map((move) => moveOf(position, move));
    return {
      key: position.key,
      at: placesOf(position.at),
      ...numberOf(course, position),
      ...(names !== undefined && { names }),
      ...(title !== undefined && { title }),
      moves: moves.sort((a, b) => Number(b.kind === 'advice') - Number(a.kind === 'advice')),
    };
  });

  const early = positionsBefore(course);
  const before = graph.flatMap(({ key }, index) => (early.has(key) ? [index] : []));
  const { title, language, side } = course.settings;
  const table = {
    format: 1,
    course: courseId(course),
    title,
    language,
    side,
    chapters: course.chapters.map(({ title, file }) => ({ title, page: addresses.page(file) })),
    positions,
    ...(before.length > 0 && { before }),
  } as const;
  const edition = createHash('sha256').update(JSON.stringify(table)).digest('hex').slice(0, 12);
  return { ...table, edition };
}

/** Of a position that a block begins with: what follows is numbered from there. */
function numberOf(course: Course, { at: [ref] }: GraphPosition): Pick<TablePosition, 'number'> {
  const number = ref?.node === 0 ? outlinedBlockAt(course, ref)?.block.number : undefined;
  return number === undefined ? {} : { number };
}

function kindOf(course: Course, position: GraphPosition, move: GraphMove): TableMoveKind {
  const { side } = course.settings;
  if (side !== 'both' && sideToMove(position) !== side) return 'reply';
  const advised = adviceOf(course)
    .get(position.key)
    ?.some(({ san }) => san === move.san);
  if (advised) return 'advice';
  const isBad = move.at.some((ref) => outlinedNodeAt(course, ref)?.bad !== undefined);
  return isBad ? 'bad' : 'option';
}
