import { movesOf } from '../../model/index.ts';
import { inLettersOf } from '../../read/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';

export const moveOverwritten = defineCourseRule({
  id: 'move-overwritten',
  severity: 'warning',
  finds: 'A move that is understood but not written in SAN: needless letters, zeros for castling.',
  documentation: `
The move is legal and clear, but other programs may not read it: \`Nge2\` where only one knight can
go to e2 (a pinned knight does not count), \`0-0\` with zeros, \`e8Q\` without \`=\`, \`Ng1-f3\`,
\`exd6 e.p.\`. SAN has one spelling for each move (PGN standard, 8.2.3).

\`linewright check --fix\` writes it.
`,
  examples: [
    {
      title: 'A pinned rival needs no disambiguation (the example of the PGN standard, 8.2.3.4)',
      course: '```moves fen="4k3/8/8/8/1b6/2N5/8/4K1N1 w - - 0 1"\n1. Nge2\n```',
      findings: [{ at: '2:4-2:8', message: '1.Ne2 is written as Nge2.', hint: 'Write Ne2.' }],
      fixed: '```moves fen="4k3/8/8/8/1b6/2N5/8/4K1N1 w - - 0 1"\n1. Ne2\n```',
    },
    {
      title: 'Castling with zeros',
      course: '```moves\n1. e4 e5 2. Nf3 Nf6 3. Bc4 Bc5 4. 0-0\n```',
      findings: [{ at: '2:35-2:38', message: '4.O-O is written as 0-0.', hint: 'Write O-O.' }],
      fixed: '```moves\n1. e4 e5 2. Nf3 Nf6 3. Bc4 Bc5 4. O-O\n```',
    },
    {
      title: 'In the letters that `pieces` names',
      course: {
        'course.yaml': 'title: Test\nid: test\nside: both\npieces: de\n',
        'chapters/1.md': '```moves\n1. Sg1-f3\n```',
      },
      findings: [{ at: '2:4-2:10', message: '1.Nf3 is written as Sg1-f3.', hint: 'Write Sf3.' }],
      fixed: '```moves\n1. Sf3\n```',
    },
  ],
  *inChapter({ chapter }) {
    for (const { node, parent } of movesOf(chapter)) {
      if (!node.move || !node.written) continue;
      const sign = /[+#]+$/.exec(node.written.san)?.[0] ?? '';
      const written = node.written.san.slice(0, node.written.san.length - sign.length);
      const right = node.move.san.replace(/[+#]$/, '');
      if (written === right) continue;
      // The sign is the affair of move-suffix: each rule mends its own part.
      const { start, end, file } = node.written.place;
      const spelled = (san: string) =>
        inLettersOf(file === chapter.file ? chapter.pieces : undefined, san);
      const place = {
        file,
        start,
        end: { ...end, column: end.column - sign.length, offset: end.offset - sign.length },
      };
      yield {
        place,
        message: `${moveName(node, parent)} is written as ${spelled(written).replace(/\.$/, '')}.`,
        hint: `Write ${spelled(right)}.`,
        fixes: [{ place, text: spelled(right) }],
      };
    }
  },
});
