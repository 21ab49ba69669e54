import type { MoveNode, MovesBlock } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../move-name.ts';
import { type LineEnd, placeName } from '../view/index.ts';
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
    const compared = { left: mostCompared };
    const passed = new Set<string>();
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      const isEarlier = ({ chapter: file, block: key }: LineEnd) =>
        file === chapter.file
          ? passed.has(key)
          : course.ask('order', file) < course.ask('order', chapter.file);
      for (const node of block.nodes) {
        if (!node.move || !node.position || node.children.length > 0) continue;
        const earlier = course.ask('ends', node.position.key).filter(isEarlier);
        const twin = earlier.length > 0 && findTwin(keysTo(node, block), earlier, compared);
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
      passed.add(block.key);
    }
  },
});

/**
 * Pairs of positions in lines that are compared in a chapter, at the most. Three hundred blocks that tell
 * all of fifty lines of forty moves again compare half a million.
 */
const mostCompared = 2_000_000;

const tooMany = {
  message:
    'From here on lines are not compared with earlier ones: too many end in the same positions.',
  hint: 'Let blocks start at a name with from="…" instead of telling the moves before it again.',
};

/** The first earlier line that ends with the moves of this one. */
function findTwin(
  line: readonly string[],
  earlier: readonly LineEnd[],
  compared: { left: number },
): LineEnd | undefined {
  return earlier.find(({ line: other }) => {
    const shift = other.length - line.length;
    if (shift < 0) return false;
    for (let at = line.length - 1; at >= 0; at--) {
      if (compared.left-- <= 0 || line[at] !== other[at + shift]) return false;
    }
    return true;
  });
}

/** The keys of the positions from the block's start to a node. */
function keysTo(last: MoveNode, { nodes }: MovesBlock): string[] {
  const keys: string[] = [];
  for (let node: MoveNode | undefined = last; node; node = nodes[node.parent ?? -1]) {
    keys.push(node.position?.key ?? '');
  }
  return keys.reverse();
}
