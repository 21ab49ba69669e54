import type { Course, MoveNode, MovesBlock } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../move-name.ts';
import { type Occurrence, occurrenceAt, placeOf, whereIs } from '../occurrences.ts';

export const lineRepeated = defineCourseRule({
  id: 'line-repeated',
  severity: 'warning',
  finds: 'A whole line, to its last move, told again in another block.',
  documentation: `
The same line in two places must be kept right in two places. Blocks may share a beginning; but where
one tells a line to its end that another has told to the same end, name a position and start from it
with \`from="…"\`, or link to it.
`,
  examples: [
    {
      title: 'Told twice to the end',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6\n```\n\n```moves\n1. e4 e5 (1... c5 2. Nf3) 2. Nf3 Nc6\n```',
      side: 'both',
      findings: [
        {
          start: '6:34',
          end: '6:37',
          message: 'This line, to 2...Nc6, is told to its end in line 2 already.',
          hint: 'Name a position of it there and start this block from it with from="…", or link to it.',
        },
      ],
    },
    {
      title: 'Only the beginning is shared',
      course: '```moves\n1. e4 e5 2. Nf3\n```\n\n```moves\n1. e4 e5 2. Nf3 Nc6\n```',
      side: 'both',
      findings: [],
    },
  ],
  *find(course) {
    const compared: Compared = { left: mostCompared, known: new Map() };
    for (const chapter of course.chapters) {
      for (const block of chapter.blocks) {
        if (block.kind !== 'moves') continue;
        for (const node of block.nodes) {
          if (!node.move || node.children.length > 0) continue;
          const earlier = toldBefore(course, block, node, compared);
          const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
          const place = placeOf({ chapter, block, node, parent });
          if (compared.left <= 0) {
            yield { place, ...tooMany };
            return;
          }
          if (!earlier) continue;
          const there = placeOf(earlier);
          yield {
            place,
            message: `This line, to ${moveName(node, parent)}, is told to its end ${whereIs(there, place)} already.`,
            hint: 'Name a position of it there and start this block from it with from="…", or link to it.',
            related: [{ place: there, message: 'it ends here' }],
          };
        }
      }
    }
  },
});

/**
 * Pairs of positions in lines that are compared in a course, at the most. Three hundred blocks that tell
 * all of fifty lines of forty moves again compare half a million.
 */
const mostCompared = 2_000_000;

interface Compared {
  /** Pairs of positions that may still be compared. */
  left: number;
  /** Whether the moves that led to two nodes were found to be the same, from where the first's block starts. */
  readonly known: Map<MoveNode, Map<MoveNode, boolean>>;
}

const tooMany = {
  message:
    'From here on lines are not compared with earlier ones: too many end in the same positions.',
  hint: 'Let blocks start at a name with from="…" instead of telling the moves before it again.',
};

/** The end of the same line in an earlier block, if it is told there to the same end. */
function toldBefore(
  course: Course,
  block: MovesBlock,
  last: MoveNode,
  compared: Compared,
): Occurrence | undefined {
  const before = last.parent === undefined ? undefined : block.nodes[last.parent]?.position;
  const moves = before && course.graph[before.key]?.moves;
  const twins = moves?.find(({ san }) => san === last.move?.san)?.at ?? [];
  for (const ref of twins) {
    compared.left--;
    if (ref.chapter > block.chapter) break;
    if (ref.chapter === block.chapter && ref.block >= block.index) break;
    const twin = occurrenceAt(course, ref);
    if (twin.block.kind !== 'moves' || twin.node.children.length > 0) continue;
    if (sameWay(block, last, twin.block, twin.node, compared)) return twin;
    if (compared.left <= 0) return undefined;
  }
  return undefined;
}

/** Whether the moves from the block's start to `last` are those that lead to `twin`. */
function sameWay(
  block: MovesBlock,
  last: MoveNode,
  other: MovesBlock,
  twin: MoveNode,
  compared: Compared,
): boolean {
  const passed: (readonly [MoveNode, MoveNode])[] = [];
  let a: MoveNode | undefined = last;
  let b: MoveNode | undefined = twin;
  let isSame: boolean | undefined;
  while (isSame === undefined) {
    if (!a || !b || a.position?.key !== b.position?.key) isSame = false;
    else {
      isSame = compared.known.get(a)?.get(b);
      if (isSame === undefined) {
        compared.left--;
        passed.push([a, b]);
        if (a.parent === undefined) isSame = true;
        a = block.nodes[a.parent ?? -1];
        b = b.parent === undefined ? undefined : other.nodes[b.parent];
      }
    }
  }
  // Lines that part late have their beginnings compared once.
  for (const [one, two] of passed) {
    const twins = compared.known.get(one) ?? new Map<MoveNode, boolean>();
    compared.known.set(one, twins.set(two, isSame));
  }
  return isSame;
}
