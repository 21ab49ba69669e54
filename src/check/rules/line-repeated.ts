import type { MoveNode, MovesBlock } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../move-name.ts';
import { type CourseView, type LineEnd, placeName } from '../view/index.ts';
import { whereIs } from '../words.ts';

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
        const there = twin && course.ask('place', placeName(twin));
        if (!there) continue;
        const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
        yield {
          place,
          message: `This line, to ${moveName(node, parent)}, is told to its end ${whereIs(there, place)} already.`,
          hint: 'Name a position of it there and start this block from it with from="…", or link to it.',
          related: [{ place: there, message: 'it ends here' }],
        };
      }
    }
  },
});

/**
 * Pairs of positions in lines that are compared in a chapter, at the most. Three hundred blocks that tell
 * all of fifty lines of forty moves again compare half a million.
 */
const mostCompared = 2_000_000;

interface Compared {
  /** Pairs of positions that may still be compared. */
  left: number;
  /** Whether the moves that led to two nodes were found to be the same, from where the first's block starts. */
  readonly known: Map<MoveNode, Map<string, boolean>>;
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
): LineEnd | undefined {
  for (const end of course.ask('ends', last.position?.key ?? '')) {
    // They stand in the order of the course.
    if (end.chapter === block.chapter && end.block === block.key) return undefined;
    if (isSameWay(last, block, end, course, compared)) return end;
    if (compared.left <= 0) return undefined;
  }
  return undefined;
}

/** Whether the moves from the block's start to `last` are those that lead to the end of another line. */
function isSameWay(
  last: MoveNode,
  { nodes }: MovesBlock,
  end: LineEnd,
  course: CourseView,
  compared: Compared,
): boolean {
  const others = course.nodesOf(end);
  const passed: [MoveNode, string][] = [];
  let same: boolean | undefined;
  let own: MoveNode | undefined = last;
  let other = others.get(end.node);
  while (same === undefined) {
    if (own === undefined || other === undefined || own.position?.key !== other.node.key)
      same = false;
    else if (own.parent === undefined) same = true;
    else {
      const name = `${other.node.index} ${end.block} ${end.chapter}`;
      same = compared.known.get(own)?.get(name);
      compared.left--;
      passed.push([own, name]);
      own = nodes[own.parent];
      other = others.get(other.node.parent ?? -1);
    }
  }
  for (const [node, name] of passed) {
    const known = compared.known.get(node) ?? new Map<string, boolean>();
    compared.known.set(node, known.set(name, same));
  }
  return same;
}
