import type { PhrasingContent } from 'mdast';
import { numberedSan } from '../../chess/index.ts';
import { type PositionLinkNode, placeOfNode, textNodes } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const linkMove = defineCourseRule({
  id: 'link-move',
  severity: 'warning',
  finds: 'A link whose words are one move, and that leads to a place of another.',
  documentation: `
A link to a named position whose words are a move with its number, such as \`[7.Bg2](pos:main)\`, is read as
a link to that move. It must be the one that led to the position, one on the way there, by whatever order of
moves, or one that the course plays from there. Words such as “after” may stand before it. Other words are
left alone.
`,
  examples: [
    {
      title: 'The words name another move',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 {:here[main]} a6\n```\n\nWe know [3.Bc4](pos:main), and [after `2...Nf6`](pos:main).',
      side: 'both',
      findings: [
        {
          at: '5:9-5:26',
          message: 'The words say 3.Bc4, and `main` is the position after 3.Bb5.',
          hint: 'Correct the words or the name.',
        },
        {
          at: '5:32',
          message: 'The words say 2...Nf6, and `main` is the position after 3.Bb5.',
        },
      ],
    },
    {
      title: 'The move itself, one before it, the next one; other words',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 {:here[main]} a6\n```\n\n[3.Bb5](pos:main), [1.e4](pos:main), [3...a6](pos:main), [the Exchange after 4.Bxc6](pos:main)',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const node of textNodes(chapter, 'positionLink')) {
      const named = moveOf(node);
      const there = named && course.ask('moveAt', node.label);
      if (!there || there.near.some((name) => bare(name) === bare(named))) continue;
      yield {
        place: placeOfNode(node, chapter.file),
        message: `The words say ${named}, and \`${node.label}\` is the position after ${there.name}.`,
        hint: 'Correct the words or the name.',
      };
    }
  },
});

/** English, German and Spanish. */
const lead = /^(?:after|nach|tras|después de)\s+/i;

/**
 * A move in words. R is a rook in English and a king in Spanish, so that only inline code, which is always
 * in English letters, may speak of it.
 */
const written =
  /^(\d{1,3})\s?(\.\.\.|…|\.)\s?([KQBN]?[a-h1-8]{0,3}x?[a-h][1-8]|O-O(?:-O)?)[+#]?[!?]{0,2}$/;

/** The move that the words of a link are, if they are one: of a run in inline code the last. */
function moveOf({ children }: PositionLinkNode): string | undefined {
  const [first, second] = children.filter((child) => !isBlank(child));
  const code = first?.type === 'text' && lead.test(`${first.value.trim()} `) ? second : first;
  if (code?.type === 'proseMoves' && children.at(-1) === code) {
    const move = code.moves.at(-1);
    return move && numberedSan(move);
  }
  if (first?.type !== 'text' || second) return undefined;
  const [, number, dots, san] = written.exec(first.value.trim().replace(lead, '')) ?? [];
  if (!number || !san) return undefined;
  return numberedSan({ san, number: Number(number), color: dots === '.' ? 'white' : 'black' });
}

function isBlank(node: PhrasingContent): boolean {
  return node.type === 'text' && node.value.trim() === '';
}

function bare(name: string): string {
  return name.replace(/[+#x=]/g, '').replace(/0-0/g, 'O-O');
}
