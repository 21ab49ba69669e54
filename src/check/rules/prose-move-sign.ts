import { numberSign } from '../../chess/index.ts';
import { type Place, withinLine } from '../../diagnostics/index.ts';
import {
  type Chapter,
  type MoveNode,
  movesSpokenOf,
  type NodeRef,
  type ProseMove,
  textNodes,
} from '../../model/index.ts';
import { inLettersOf } from '../../read/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const proseMoveSign = defineCourseRule({
  id: 'prose-move-sign',
  severity: 'warning',
  finds:
    'A move in the text with a capture, check or mate sign that the move has not, or without one that it has.',
  documentation: `
A move in the text is the move of the block that it links to, and reads like it: with \`x\` if it takes, with
\`+\` if it gives check and with \`#\` if it mates (PGN standard, 8.2.3.3 and 8.2.3.5). Whoever reads
\`Bxf6\` looks for what is taken.

\`linewright check --fix\` writes the move as the block has it.
`,
  examples: [
    {
      title: 'Nothing is taken, and a check is no mate',
      course:
        '```moves\n1. e4 e5 2. Qh5 Nc6 3. Qxf7+ Kxf7\n```\n\nAfter `2.Qxh5` comes `3.Qxf7#`, and `3.Qf7+` is the same.',
      side: 'both',
      findings: [
        {
          at: '5:8-5:14',
          message: '2.Qh5 takes nothing.',
          hint: 'Write 2.Qh5.',
        },
        { at: '5:23-5:30', message: '3.Qxf7+ is check and no mate.' },
        {
          at: '5:38-5:44',
          message: '3.Qxf7+ takes something, and its sign is missing.',
        },
      ],
      fixed:
        '```moves\n1. e4 e5 2. Qh5 Nc6 3. Qxf7+ Kxf7\n```\n\nAfter `2.Qh5` comes `3.Qxf7+`, and `3.Qxf7+` is the same.',
    },
    {
      title: 'In the letters that `pieces` names',
      course: {
        'course.yaml': 'title: Test\nid: test\nside: both\npieces: de\n',
        'chapters/1.md': '```moves\n1. e4 e5 2. Dh5\n```\n\nAfter `2.Dxh5` he defends.',
      },
      findings: [{ at: '5:8-5:14', message: '2.Qh5 takes nothing.', hint: 'Write 2.Dh5.' }],
      fixed: '```moves\n1. e4 e5 2. Dh5\n```\n\nAfter `2.Dh5` he defends.',
    },
    {
      title: 'As the block has it',
      course:
        '```moves\n1. e4 d5 2. exd5 Qxd5 {not `2...Nf6`} (2... Nf6)\n```\n\n`1.e4 d5 2.exd5 Qxd5`',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    const nodeOf = nodesOf(chapter);
    for (const node of textNodes(chapter, 'proseMoves')) {
      const targets = movesSpokenOf(chapter, node);
      for (const [index, move] of node.moves.entries()) {
        const played = nodeOf(targets[index])?.move;
        const fault = played && faultOf(move.san, played.san);
        if (!played || !fault) continue;
        const number = numberSign(played);
        const san = placeOfSan(move, chapter.file);
        const right = inLettersOf(chapter.pieces, played.san);
        yield {
          place: { file: chapter.file, ...move.range },
          message: `${number}${played.san} ${fault}.`,
          hint: `Write ${number}${right}.`,
          ...(san && { fixes: [{ place: san, text: right }] }),
        };
      }
    }
  },
});

/** What the written move says that the played one is not, or the other way round. */
function faultOf(written: string, san: string): string | undefined {
  const [takes, isTaking] = [written, san].map((text) => /[x:]/.test(text));
  if (takes && !isTaking) return 'takes nothing';
  if (!takes && isTaking) return 'takes something, and its sign is missing';
  const [sign, right] = [written, san].map((text) => /[+#]+$/.exec(text)?.[0] ?? '');
  if (sign === right || right === undefined) return undefined;
  if (right === '') return sign === '#' ? 'is no mate, nor even check' : 'gives no check';
  if (sign === '') return `${right === '#' ? 'is mate' : 'gives check'}, and its sign is missing`;
  return right === '#' ? 'is mate, not only check' : 'is check and no mate';
}

function nodesOf({ file, blocks }: Chapter): (ref: NodeRef | undefined) => MoveNode | undefined {
  const byKey = new Map(blocks.map((block) => [block.key, block]));
  return (ref) => (ref?.chapter === file ? byKey.get(ref.block)?.nodes[ref.node] : undefined);
}

/** Where the move without its number stands, if the file spells it as it is read. */
function placeOfSan({ text, san, range }: ProseMove, file: string): Place | undefined {
  const { start, end } = range;
  if (end.offset - start.offset !== text.length) return undefined;
  const from = text.indexOf(san);
  return withinLine({ file, ...range }, from, from + san.length);
}
