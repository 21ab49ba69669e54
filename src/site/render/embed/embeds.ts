import { describePosition, inUci, sideToMove } from '../../../chess/index.ts';
import type { BoardPicture } from '../../../draw/index.ts';
import {
  type Block,
  blockAt,
  type Course,
  inCourseOrder,
  type MoveNode,
  mainLine,
  type NodeRef,
  outlineOf,
} from '../../../model/index.ts';
import { type Addresses, askOf, nodeAt, positionInWords, sanText } from '../../../render/index.ts';
import type { Strings } from '../../../strings/index.ts';

/** A named position with the line it stands in, to be shown on other sites. */
export interface Embed {
  readonly label: string;
  /** Names its page and its picture: the label, with a number where file systems see no difference. */
  readonly name: string;
  readonly chapter: string;
  /** Where it stands in the course, relative to the site. */
  readonly href: string;
  /** The author's title, else `after 7...Be7`. */
  readonly words: string;
  readonly alt: string;
  readonly picture: BoardPicture;
  /** The attributes of `<course-board>` (`browser/embed/read-line.ts`), but for `href`. */
  readonly attributes: Readonly<Record<string, string>>;
}

/** Files of the folder that are no position's. */
const taken = ['list', 'board'];

/** Every named position of a course, in the order of the course. */
export function findEmbeds(course: Course, addresses: Addresses, strings: Strings): Embed[] {
  const names = new Set(taken);
  const inOrder = inCourseOrder(course);
  return Object.values(course.labels)
    .sort((a, b) => inOrder(a.ref, b.ref))
    .flatMap(({ name: label, title, ref }): Embed[] => {
      const block = blockAt(course, ref);
      const node = nodeAt(course, ref);
      if (!block || !node?.position) return [];
      const { position, move, marks, arrows } = node;
      const { view } = block;
      let name = label;
      for (let count = 2; names.has(name.toLowerCase()); count++) name = `${label}-${count}`;
      names.add(name.toLowerCase());
      const turn = sideToMove(position);
      return [
        {
          label,
          name,
          chapter: ref.chapter,
          href: addresses.href(ref),
          words: title ?? positionInWords(askOf(course), ref, strings, ref.chapter),
          alt: describePosition(position, strings.position),
          picture: { placement: position.fen, view, marks, arrows, lastMove: move, turn },
          attributes: attributesOf(lineThrough(course, label, ref, block), block, strings),
        },
      ];
    });
}

interface Line {
  readonly nodes: readonly MoveNode[];
  /** Index of the named position. */
  readonly at: number;
}

/**
 * Moves before a named position, and behind it, that its board can be played through. Each named
 * position carries its whole line, and no line of a book is as long.
 */
const longestLine = 300;

/** The moves that lead to a position within its block, and those that lead on. */
function lineThrough(course: Course, label: string, ref: NodeRef, { nodes }: Block): Line {
  const into: MoveNode[] = [];
  for (let node = nodes[ref.node]; node; node = nodes[node.parent ?? -1]) {
    if (into.push(node) > longestLine) break;
  }
  into.reverse();
  const onward: MoveNode[] = [];
  for (let node = next(nodes, into.at(-1)); node; node = next(nodes, node)) {
    if (onward.push(node) >= longestLine) break;
  }
  return {
    nodes: [...into, ...(onward.length > 0 ? onward : continuation(course, label))],
    at: into.length - 1,
  };
}

function next(nodes: readonly MoveNode[], node: MoveNode | undefined): MoveNode | undefined {
  return nodes[node?.children[0] ?? -1];
}

/** Where a line ends at a name, the first block that starts from it goes on. */
function continuation(course: Course, label: string): MoveNode[] {
  const ref = blocksFrom(course).get(label);
  const block = ref && blockAt(course, ref);
  return block ? mainLine(block.nodes).slice(1, 1 + longestLine) : [];
}

type BlockRef = Pick<NodeRef, 'chapter' | 'block'>;

const known = new WeakMap<Course, ReadonlyMap<string, BlockRef>>();

/** The first block that starts from each name. */
function blocksFrom(course: Course): ReadonlyMap<string, BlockRef> {
  const found = known.get(course) ?? findBlocks(course);
  known.set(course, found);
  return found;
}

function findBlocks(course: Course): ReadonlyMap<string, BlockRef> {
  const blocks = new Map<string, BlockRef>();
  for (const chapter of course.chapters) {
    for (const { from, key } of outlineOf(course, chapter).blocks) {
      if (from === undefined || blocks.has(from)) continue;
      blocks.set(from, { chapter: chapter.file, block: key });
    }
  }
  return blocks;
}

function attributesOf({ nodes, at }: Line, { view }: Block, strings: Strings) {
  const moves = nodes.flatMap(({ move }, index) => (move && index > 0 ? [move] : []));
  const shown = nodes[at];
  const arrows = (meaning: string) =>
    (shown?.arrows ?? [])
      .filter((arrow) => arrow.meaning === meaning)
      .map(({ from, to }) => `${from}-${to}`)
      .join(' ');
  const all = {
    fen: nodes[0]?.position?.fen ?? '',
    moves: moves.map(inUci).join(' '),
    sans: moves.map(({ san }) => sanText(san, strings)).join(' '),
    at: at === 0 ? '' : String(at),
    view: view === 'black' ? view : '',
    mark: shown?.marks.join(' ') ?? '',
    plan: arrows('plan'),
    threat: arrows('threat'),
    guard: arrows('guard'),
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== ''));
}
