import { movesOf } from '../../model/index.ts';
import { inLettersOf } from '../../read/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';

export const moveSuffix = defineCourseRule({
  id: 'move-suffix',
  severity: 'warning',
  finds: 'A check or mate sign that is missing or wrong.',
  documentation: `
SAN ends with \`+\` if the move gives check and with \`#\` if it mates (PGN standard, 8.2.3.5). A
false sign misleads the reader, and a missing one hides a forcing move.

\`linewright check --fix\` writes the right sign.
`,
  examples: [
    {
      title: 'Check without its sign',
      course: '```moves\n1. e4 e5 2. Qh5 Nc6 3. Qxf7\n```',
      findings: [
        {
          at: '2:24-2:28',
          message: '3.Qxf7+ gives check, and its sign is missing.',
          hint: 'Write Qxf7+.',
        },
      ],
      fixed: '```moves\n1. e4 e5 2. Qh5 Nc6 3. Qxf7+\n```',
    },
    {
      title: 'A sign where there is no check',
      course: '```moves\n1. e4+ e5\n```',
      findings: [{ at: '2:4-2:7', message: '1.e4 gives no check.', hint: 'Write e4.' }],
      fixed: '```moves\n1. e4 e5\n```',
    },
    {
      title: 'Mate is more than check',
      course: '```moves\n1. f3 e5 2. g4 Qh4+\n```',
      findings: [
        {
          at: '2:16-2:20',
          message: '2...Qh4# is mate, not only check.',
          hint: 'Write Qh4#.',
        },
      ],
      fixed: '```moves\n1. f3 e5 2. g4 Qh4#\n```',
    },
    {
      title: 'In the letters that `pieces` names',
      course: {
        'course.yaml': 'title: Test\nid: test\nside: both\npieces: de\n',
        'chapters/1.md': '```moves\n1. e4 e5 2. Dh5 Sc6 3. Dxf7\n```',
      },
      findings: [
        {
          at: '2:24-2:28',
          message: '3.Qxf7+ gives check, and its sign is missing.',
          hint: 'Write Dxf7+.',
        },
      ],
      fixed: '```moves\n1. e4 e5 2. Dh5 Sc6 3. Dxf7+\n```',
    },
  ],
  *inChapter({ chapter }) {
    for (const { node, parent } of movesOf(chapter)) {
      if (!node.move || !node.written) continue;
      const { san } = node.move;
      const written = signOf(node.written.san);
      const right = signOf(san);
      if (written === right) continue;
      const { place } = node.written;
      const { end } = place;
      const sign = {
        file: place.file,
        start: {
          ...end,
          column: end.column - written.length,
          offset: end.offset - written.length,
        },
        end,
      };
      yield {
        place,
        message: `${moveName(node, parent)} ${sentence(written, right)}.`,
        hint: `Write ${inLettersOf(chapter.pieces, san)}.`,
        // Only the sign: the letters before it are the affair of move-overwritten.
        fixes: [{ place: sign, text: right }],
      };
    }
  },
});

/** The signs of check and mate that a move ends with. */
function signOf(san: string): string {
  let start = san.length;
  while (san[start - 1] === '+' || san[start - 1] === '#') start--;
  return san.slice(start);
}

function sentence(written: string, right: string): string {
  if (right === '') return written === '#' ? 'is no mate, nor even check' : 'gives no check';
  const what = right === '#' ? 'is mate' : 'gives check';
  if (written === '') return `${what}, and its sign is missing`;
  return right === '#' ? 'is mate, not only check' : 'is check and no mate';
}
