import { nameMoves, numberedSan } from '../../chess/index.ts';
import type { CourseTable, TableMoveKind } from '../../contract/index.ts';
import { placeHref, positionOf } from '../../lookup/index.ts';
import {
  type Course,
  nameAt,
  nodeAt,
  type PathStep,
  pathsInto,
  type ShownAt,
  shownAt,
} from '../../model/index.ts';

export interface Whereabouts {
  /** The first four fields of the FEN. */
  readonly position: string;
  readonly places: readonly WherePlace[];
  /** What the course plays here, advice first. */
  readonly moves: readonly {
    readonly san: string;
    readonly name: string;
    readonly kind: TableMoveKind;
  }[];
  /** Why a line ends here, where the course says so. */
  readonly ends?: string;
  /** The ways that lead here, by their moves: `1.d4 d5 2.c4`. */
  readonly ways: readonly string[];
  readonly moreWays: boolean;
}

/** A place of the course that shows a position. */
export interface WherePlace {
  /** Of the chapter, or of the game that it shows. */
  readonly file: string;
  /** Counted from 1. */
  readonly line: number;
  readonly column: number;
  readonly chapter: string;
  readonly draft?: true;
  readonly block: ShownAt['block']['kind'];
  /** `7...Be7`; absent at the start of a block. */
  readonly after?: string;
  /** The author's names for it. */
  readonly names: readonly string[];
  /** The address of its page, with the position where it has an address of its own. */
  readonly address: string;
}

const mostPaths = 8;

/** @param site address that the course is published at; without it addresses begin at the site's own root. */
export function whereaboutsOf(
  { course, table, site }: { course: Course; table: CourseTable; site: string | undefined },
  key: string,
): Whereabouts {
  const index = positionOf(table, key);
  const entry = index === undefined ? undefined : table.positions[index];
  const { paths, more } = pathsInto(course, key, mostPaths);
  const ends = entry?.moves.length === 0 ? endOf(course, key) : undefined;
  const root = site === undefined ? '' : `${site}/`;
  const pageOf = new Map(course.chapters.map(({ file }, at) => [file, table.chapters[at]?.page]));
  const addressOf = (place: ShownAt) => {
    const page = pageOf.get(place.chapter.file) ?? 'index.html';
    const at = entry?.at.find(([chapter]) => table.chapters[chapter]?.page === page);
    const isLine = place.own && place.block.kind === 'moves';
    return root + (isLine && at && index !== undefined ? placeHref(table, index, at) : page);
  };
  return {
    position: key,
    places: shownAt(course, key).map((place) => wherePlace(place, addressOf(place))),
    moves: (entry?.moves ?? []).map(({ san, kind }) => ({
      san,
      kind,
      name: nameIn(course, key, san),
    })),
    ...(ends !== undefined && { ends }),
    ways: paths.map((path) => pathText(course, path)),
    moreWays: more,
  };
}

function wherePlace(
  { chapter, block, place: { file, start }, node, own }: ShownAt,
  address: string,
): WherePlace {
  return {
    file,
    line: start.line,
    column: start.column,
    chapter: chapter.title,
    ...(chapter.draft && { draft: true }),
    block: block.kind,
    ...(node?.move && { after: numberedSan(node.move) }),
    names: own ? (node?.labels ?? []) : [],
    address,
  };
}

function endOf(course: Course, key: string): string | undefined {
  for (const ref of course.graph[key]?.at ?? []) {
    const end = nodeAt(course, ref)?.statements.find(({ name }) => name === 'end');
    if (end !== undefined) return end.argument;
  }
  return undefined;
}

/** A move that the course has in a position, with its number: `8.dxc5`. */
function nameIn(course: Course, key: string, san: string): string {
  const [ref] = course.graph[key]?.moves.find((move) => move.san === san)?.at ?? [];
  return (ref && nameAt(course, ref)) ?? san;
}

function pathText(course: Course, path: readonly PathStep[]): string {
  return nameMoves(
    path.flatMap(({ move: { at } }) => {
      const [ref] = at;
      return (ref && nodeAt(course, ref)?.move) ?? [];
    }),
  );
}
