import type { MoveNode, MovesBlock } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';
import { whereIs } from '../shared/words.ts';
import { type CourseView, type LineEnd, placeName } from '../view/index.ts';

export const lineRepeated = defineCourseRule({
  id: 'line-repeated',
  severity: 'warning',
  finds: 'A whole line, to its last move, told again in another block.',
  documentation: `
The same line in two places must be kept right in two places. Blocks may share a beginning; but where
one tells a line to its end that another has told to the same end, name a position and start from it
with \`from="…"\`, or link to it.

A line is told again too where it comes to the same end by another order of moves, or from another start, with
two moves or more in common: stop it at the position where the two meet, with \`:same[…]\` or a link.
`,
  examples: [
    {
      title: 'Told twice to the end',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6\n```\n\n```moves\n1. e4 e5 (1... c5 2. Nf3) 2. Nf3 Nc6\n```',
      side: 'both',
      findings: [
        {
          at: '6:34-6:37',
          message: 'This line, to 2...Nc6, is told to its end in line 2 already.',
          hint: 'Name a position of it there and start this block from it with from="…", or link to it.',
        },
      ],
    },
    {
      title: 'To the same end by another order of moves, and from another start',
      course:
        '```moves\n1. d4 d5 2. c4 e6 {:here[x]} 3. Nc3 Nf6 4. Bg5\n```\n\n```moves\n1. c4 e6 2. d4 d5 {:same[x]} 3. Nc3 Nf6 4. Bg5\n```\n\n```moves from="x"\n3. Nf3 c5 4. e3\n```\n\n```moves\n1. d4 d5 2. c4 e6 3. Nf3 c5 4. e3\n```',
      side: 'both',
      findings: [
        {
          at: '6:44',
          message:
            'This line, to 4.Bg5, is told to its end in line 2 already, by another order of moves.',
          hint: 'Stop where the lines meet, with `:same[…]` or a link.',
        },
        {
          at: '14:32',
          message: 'This line, to 4.e3, is told to its end in line 10 already, from another start.',
          hint: 'Name a position of it there and start this block from it with from="…", or link to it.',
        },
      ],
    },
    {
      title: 'It stops where the orders meet',
      course:
        '```moves\n1. d4 d5 2. c4 e6 {:here[x]} 3. Nc3 Nf6 4. Bg5\n```\n\n```moves\n1. c4 e6 2. d4 d5 {:same[x]}\n```',
      side: 'both',
      findings: [],
    },
    {
      title: 'Only the beginning is shared',
      course: '```moves\n1. e4 e5 2. Nf3\n```\n\n```moves\n1. e4 e5 2. Nf3 Nc6\n```',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const compared: Compared = { left: mostCompared, known: new Map() };
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        if (!node.move || !node.position || node.children.length > 0) continue;
        const twin = findTwin(node, block, course, compared);
        const place = placeOf(node, block);
        if (compared.left <= 0) {
          yield { place, ...tooMany };
          return;
        }
        const there = twin && course.ask('place', placeName(twin.end));
        if (!there) continue;
        const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
        yield {
          place,
          message: `This line, to ${moveName(node, parent)}, is told to its end ${whereIs(there, place)} already${how[twin.way]}.`,
          hint:
            twin.way === 'turned'
              ? 'Stop where the lines meet, with `:same[…]` or a link.'
              : 'Name a position of it there and start this block from it with from="…", or link to it.',
          related: [{ place: there, message: 'it ends here' }],
        };
      }
    }
  },
});

/**
 * How a line comes to the end that another has: by the same moves from where its block starts; by the same
 * from where the other's block starts; or by another order of moves up to a position in which they meet.
 */
type Way = 'whole' | 'started' | 'turned';

const how: Readonly<Record<Way, string>> = {
  whole: '',
  started: ', from another start',
  turned: ', by another order of moves',
};

/** So many moves that are not told from the same start are told again; fewer only show where lines meet. */
const leastShared = 2;

interface Shared {
  readonly way: Way;
  /** How many moves the two lines have in common, to the nodes that are compared. */
  readonly moves: number;
}

/**
 * Pairs of positions in lines that are compared in a chapter, at the most. Three hundred blocks that tell
 * all of fifty lines of forty moves again compare half a million.
 */
const mostCompared = 2_000_000;

interface Compared {
  /** Pairs of positions that may still be compared. */
  left: number;
  /** What the ways to two nodes have in common. */
  readonly known: Map<MoveNode, Map<string, Shared>>;
}

const tooMany = {
  message:
    'From here on lines are not compared with earlier ones: too many end in the same positions.',
  hint: 'Let blocks start at a name with from="…" instead of telling the moves before it again.',
};

/** The end of the same line in an earlier block, if it is told there to the same end. */
function findTwin(
  last: MoveNode,
  block: MovesBlock,
  course: CourseView,
  compared: Compared,
): { readonly end: LineEnd; readonly way: Way } | undefined {
  for (const end of course.ask('ends', last.position?.key ?? '')) {
    // They stand in the order of the course.
    if (end.chapter === block.chapter && end.block === block.key) return undefined;
    const { way, moves } = compareWays(last, block, end, course, compared);
    if (way === 'whole' || moves >= leastShared) return { end, way };
    if (compared.left <= 0) return undefined;
  }
  return undefined;
}

/** Compares two lines from their last moves back. */
function compareWays(
  last: MoveNode,
  { nodes }: MovesBlock,
  end: LineEnd,
  course: CourseView,
  compared: Compared,
): Shared {
  const others = course.nodesOf(end);
  const passed: [MoveNode, string][] = [];
  let shared: Shared | undefined;
  let own: MoveNode | undefined = last;
  let other = others[end.node];
  while (shared === undefined) {
    if (own === undefined || other === undefined || own.position?.key !== other.node.key)
      shared = { way: 'turned', moves: -1 };
    else if (own.parent === undefined) shared = { way: 'whole', moves: 0 };
    else if (other.node.parent === undefined) shared = { way: 'started', moves: 0 };
    else {
      const name = `${other.node.index} ${end.block} ${end.chapter}`;
      shared = compared.known.get(own)?.get(name);
      compared.left--;
      if (shared) break;
      passed.push([own, name]);
      own = nodes[own.parent];
      other = others[other.node.parent];
    }
  }
  for (const [node, name] of passed.reverse()) {
    shared = { way: shared.way, moves: shared.moves + 1 };
    const known = compared.known.get(node) ?? new Map<string, Shared>();
    compared.known.set(node, known.set(name, shared));
  }
  return shared;
}
