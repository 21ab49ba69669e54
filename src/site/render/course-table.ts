import { createHash } from 'node:crypto';
import { adviceOf, isMarkedBad } from '../../check/index.ts';
import { sideToMove } from '../../chess/index.ts';
import type { CourseTable, TableMove, TableMoveKind, TablePosition } from '../../contract/index.ts';
import { tablePlace } from '../../lookup/index.ts';
import {
  type Course,
  chapterIndex,
  courseId,
  type GraphMove,
  type GraphPosition,
  type NodeRef,
  positionsBefore,
} from '../../model/index.ts';
import { type Addresses, namesByKey, nodeAt, titlesByKey } from '../../render/index.ts';

/** The positions of a course's `moves` blocks as one table, for the reader's browser. */
export function makeCourseTable(course: Course, addresses: Addresses): CourseTable {
  const graph = Object.values(course.graph);
  const indexOf = new Map(graph.map(({ key }, index) => [key, index]));
  const placesOf = (refs: readonly NodeRef[], key: string) =>
    refs.map((ref) => tablePlace(chapterIndex(course, ref.chapter), addresses.id(ref), key));
  const named = namesByKey(course);
  const titles = titlesByKey(course);

  const moveOf = (position: GraphPosition, move: GraphMove): TableMove => ({
    san: move.san,
    to: indexOf.get(move.to) ?? 0,
    kind: kindOf(course, position, move),
    at: placesOf(move.at, move.to),
  });
  const positions = graph.map((position): TablePosition => {
    const names = named.get(position.key);
    const title = titles.get(position.key);
    const moves = position.moves.map((move) => moveOf(position, move));
    return {
      key: position.key,
      at: placesOf(position.at, position.key),
      ...numberOf(position),
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
function numberOf({ at, fen }: GraphPosition): Pick<TablePosition, 'number'> {
  const number = Number(fen.slice(fen.lastIndexOf(' ') + 1));
  return at[0]?.node === 0 && number > 1 ? { number } : {};
}

function kindOf(course: Course, position: GraphPosition, move: GraphMove): TableMoveKind {
  const { side } = course.settings;
  const nodes = move.at.flatMap((ref) => nodeAt(course, ref) ?? []);
  if (side !== 'both' && sideToMove(position) !== side) return 'reply';
  const advised = adviceOf(course)
    .get(position.key)
    ?.some(({ san }) => san === move.san);
  if (advised) return 'advice';
  return nodes.some(isMarkedBad) ? 'bad' : 'option';
}
