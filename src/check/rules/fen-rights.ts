import { sideName, sideToMove } from '../../chess/index.ts';
import type { Finding } from '../../diagnostics/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { whereIs } from '../shared/words.ts';

export const fenRights = defineCourseRule({
  id: 'fen-rights',
  severity: 'warning',
  finds:
    'A FEN that has the board of a position of the course, but not its rights or its side to move.',
  documentation: `
A position is more than its pieces: the side to move and the rights to castle and to capture en passant belong
to it (FIDE Laws of Chess, article 9.2). A FEN that was typed by hand, or copied without its last fields, is
then another position than the one that the moves of the course lead to: its advice, its name and its lines are
not found there. Nothing is said where the moves of the course lead to the position of the FEN too.
`,
  examples: [
    {
      title: 'The rights to castle were left out',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5\n```\n\n```diagram fen="r1bqkbnr/pppp1ppp/2n5/1B2p3/4P3/5N2/PPPP1PPP/RNBQK2R b - - 3 3"\n```',
      findings: [
        {
          at: '5:17-5:79',
          message:
            'This is the board after 3.Bb5 (in line 2) with other rights to castle: there `KQkq`, here none.',
          hint: 'Write the FEN as `r1bqkbnr/pppp1ppp/2n5/1B2p3/4P3/5N2/PPPP1PPP/RNBQK2R b KQkq - 3 3`, or name the position with `:here[…]` and use its name.',
        },
      ],
    },
    {
      title: 'The wrong side is to move',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5\n```\n\n```moves fen="r1bqkbnr/pppp1ppp/2n5/1B2p3/4P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 3 3"\n3. O-O\n```',
      findings: [
        {
          at: '5:15',
          message:
            'This is the board after 3.Bb5 (in line 2) with another side to move: there Black.',
        },
      ],
    },
    {
      title: 'The position of the course, and one that it has not',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5\n```\n\n```diagram fen="r1bqkbnr/pppp1ppp/2n5/1B2p3/4P3/5N2/PPPP1PPP/RNBQK2R b KQkq - 3 3"\n```\n\n```diagram fen="4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const block of chapter.blocks) {
      const start = block.nodes[0]?.position;
      if (!block.fen || !start) continue;
      const [twin] = course
        .ask('twins', start.key)
        .map((other) => ({ ...other, differs: differences(start.key, other.key) }))
        .sort((a, b) => a.differs.length - b.differs.length);
      if (!twin) continue;
      const there = course.ask('positionPlace', twin.key);
      const board = twin.name === '' ? 'the initial position' : `the board after ${twin.name}`;
      const where = there ? ` (${whereIs(there, block.fen)})` : '';
      const [, , , , clock = '0', number = '1'] = start.fen.split(' ');
      const finding: Finding = {
        place: block.fen,
        message: `This is ${board}${where} with ${twin.differs.join(', ')}.`,
        hint: `Write the FEN as \`${twin.key} ${clock} ${number}\`, or name the position with \`:here[…]\` and use its name.`,
        ...(there ? { related: [{ place: there, message: 'the moves lead there here' }] } : {}),
      };
      yield finding;
    }
  },
});

/** What differs between two positions with the same board, from the first to the second. */
function differences(here: string, there: string): string[] {
  const [, turn, castling = '-', enPassant = '-'] = here.split(' ');
  const [, turnThere, castlingThere = '-', enPassantThere = '-'] = there.split(' ');
  const right = (text: string) => (text === '-' ? 'none' : `\`${text}\``);
  return [
    ...(turn === turnThere
      ? []
      : [`another side to move: there ${sideName(sideToMove({ key: there }))}`]),
    ...(castling === castlingThere
      ? []
      : [`other rights to castle: there ${right(castlingThere)}, here ${right(castling)}`]),
    ...(enPassant === enPassantThere
      ? []
      : [`another capture en passant: there ${right(enPassantThere)}, here ${right(enPassant)}`]),
  ];
}
