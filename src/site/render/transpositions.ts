import type { CourseTable, TablePlace } from '../../contract/index.ts';
import {
  lineText,
  moveText,
  type PathMove,
  type Paths,
  pathsOf,
  placeHref,
} from '../../lookup/index.ts';
import { titlesByKey } from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { Transposition } from '../site-data.ts';
import type { PlateMaker } from './plates.ts';
import type { SiteContext } from './site-context.ts';

/** A position in which different orders of moves meet. */
export interface Meeting extends Omit<Transposition, 'plate'> {
  readonly key: string;
}

/** Meetings with their boards, each at its first place in the course. */
export function meetingPlates(
  { course }: SiteContext,
  meetings: readonly Meeting[],
  { plate }: PlateMaker,
): Transposition[] {
  const titles = titlesByKey(course);
  return meetings.flatMap(({ key, ...told }) => {
    const [ref] = course.graph[key]?.at ?? [];
    const made = ref && plate(ref, { title: titles.get(key), chapter: ref.chapter });
    return made === undefined ? [] : [{ plate: made, ...told }];
  });
}

/** The positions in which different orders of moves meet, in the order of the course. */
export function transpositions(table: CourseTable, strings: Strings): Meeting[] {
  const paths = pathsOf(table);
  const { pieceLetters } = strings;
  const told = (position: number, place: TablePlace) => ({
    href: placeHref(table, position, place),
    chapter: table.chapters[place[0]]?.title ?? '',
  });
  return table.positions.flatMap(({ key }, index): Meeting[] => {
    const before = new Set(paths.into(index));
    if (before.size < 2) return [];
    const lines = linesTo(table, paths, index, before);
    if (lines.length < 2) return [];
    const shared = sharedStart(lines);
    const [parting] = lines[0]?.slice(shared - 1, shared) ?? [];
    return [
      {
        key,
        ...(parting !== undefined && { after: moveText(parting, pieceLetters) }),
        ways: lines.flatMap((line) => {
          const [there] = line.at(-1)?.move.at ?? [];
          if (there === undefined) return [];
          return [{ moves: lineText(line.slice(shared), pieceLetters), ...told(index, there) }];
        }),
      },
    ];
  });
}

/** One line for each position in which the last move is played. */
function linesTo(
  { positions }: CourseTable,
  paths: Paths,
  index: number,
  before: ReadonlySet<number>,
): PathMove[][] {
  return [...before].flatMap((from) => {
    const move = positions[from]?.moves.find(({ to }) => to === index);
    return move === undefined ? [] : [[...paths.to(from), paths.step(from, move)]];
  });
}

/** With how many moves all lines begin; of each at least the last is its own. */
function sharedStart(lines: readonly (readonly PathMove[])[]): number {
  const [first = []] = lines;
  let shared = 0;
  while (
    lines.every(
      (line) => shared < line.length - 1 && line[shared]?.move.to === first[shared]?.move.to,
    )
  ) {
    shared++;
  }
  return shared;
}
