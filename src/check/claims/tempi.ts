import { initialPosition, sideName } from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { countTempi } from './shared/count-tempi.ts';
import { counted } from './shared/english.ts';
import { readCountSince } from './shared/read-count-since.ts';

export const tempi = defineClaim({
  name: 'tempi',
  usage: ['tempi white 3', 'tempi white 2 since tabiya'],
  definition: `
Exactly so many moves are the fewest by which the side's pieces and pawns come from the initial position
to where they stand here, or from a named position. Each goes its way as on an empty board, pieces of
one kind stand for each other, castling is one move where the side still had the right to it, and what
was exchanged costs nothing. So moves that were made twice, or back and forth, are not counted: the
difference to the moves made is the time lost. A pawn goes to another file only with a capture. Where
the placement needs a promotion, the claim and its denial are false.
`,
  source:
    'I. A. Horowitz and G. Mott-Smith, Point Count Chess, no. 126, by a summary; exchanges and castling are ours',
  examples: [
    {
      fen: 'rnbqkb1r/pppp1ppp/5n2/4p3/4P3/3P1N2/PPP2PPP/RNBQKB1R b KQkq - 0 3',
      claim: 'tempi white 3 and tempi black 2',
      holds: true,
      note: 'After 1.e4 e5 2.Nf3 Nf6 3.d3.',
    },
    {
      fen: 'rnbqkb1r/pppp1p1p/5np1/4p3/4P3/3P1N2/PPP2PPP/RNBQKB1R b KQkq - 0 4',
      claim: 'tempi white 3 and tempi black 3',
      holds: true,
      note: 'After 1.Nf3 Nf6 2.d3 e5 3.e3 g6 4.e4: the e-pawn took two moves for one.',
    },
    {
      fen: 'rnbqkb1r/pppp1p1p/5np1/4p3/4P3/3P1N2/PPP2PPP/RNBQKB1R b KQkq - 0 4',
      claim: 'tempi white 4',
      holds: false,
      because: "White's placement takes 3 moves",
    },
    {
      fen: 'r1bqk2r/pppp1ppp/2n2n2/2b1p3/2B1P3/5N2/PPPP1PPP/RNBQ1RK1 b kq - 5 4',
      claim: 'tempi white 4 and tempi white 1 since before',
      labels: { before: 'r1bqk2r/pppp1ppp/2n2n2/2b1p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4' },
      holds: true,
      note: 'Castling is one move.',
    },
  ],
  parse: readCountSince,
  judge({ position, labelled }, { color, count, since }) {
    const before = since === undefined ? initialPosition : labelled(since);
    if (!before) return empty(`the moves to \`${since}\` cannot be played`);
    const found = countTempi(before, position, color);
    const placement = `${sideName(color)}'s placement`;
    const from = since === undefined ? '' : ` from \`${since}\``;
    if (found === undefined)
      return empty(`no moves lead to ${placement}${from} without a promotion`);
    const because = `${placement} takes ${counted(found, 'move')}${from}`;
    if (found === count) return yes(because);
    return no(because, `tempi ${color} ${found}${since === undefined ? '' : ` since ${since}`}`);
  },
});
