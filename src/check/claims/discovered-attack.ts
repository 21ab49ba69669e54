import { nameOf, readBoard, slides } from '../../chess/index.ts';
import { type ClaimContext, defineClaim, empty, no, yes } from './define-claim.ts';
import { judgePiece } from './shared/judge-piece.ts';
import { reaches, whyNotReached } from './shared/reach.ts';

export const discoveredAttack = defineClaim({
  name: 'discovered-attack',
  usage: ['discovered-attack e1 e8', 'after Nc6: discovered-attack e1 e8'],
  definition: `
The bishop, rook or queen on the first square attacks the enemy piece on the second, and did not before
the move just made, though both stood there: the move has opened the line. It speaks of the last move
shown, or of the last one after \`after\`; where the move before the position is not known, as in a
diagram of a FEN or of a name, the claim and its denial are false. A pawn taken en passant may open the line too.
`,
  source: 'Wikipedia, “Discovered attack”',
  examples: [
    {
      fen: '4k3/8/8/4N3/1q6/8/8/4R1K1 w - - 0 1',
      claim: 'after Nc6: discovered-attack e1 e8',
      holds: true,
      note: 'The knight attacks the queen, and the rook behind it gives check.',
    },
    {
      fen: '4k3/8/8/4N3/1q6/8/8/4R1K1 w - - 0 1',
      moves: ['Nc6+'],
      claim: 'discovered-attack e1 e8',
      holds: true,
      because: 'the rook on e1 attacks the king on e8 since the last move',
    },
    {
      fen: '4k3/8/8/4N3/1q6/8/8/4R1K1 w - - 0 1',
      moves: ['Kh1'],
      claim: 'discovered-attack e1 e8',
      holds: false,
      because: 'the knight on e5 stands between e1 and e8',
    },
    {
      fen: '4q1k1/8/8/8/8/8/4P3/4R1K1 w - - 0 1',
      moves: ['Kh1', 'Qxe2', 'Rxe2'],
      claim: 'discovered-attack e2 g8',
      holds: false,
    },
    {
      fen: 'r1bq1r2/pp2n3/4N2k/3pPppP/1b1n2Q1/2N5/PP3PP1/R1B1K2R w KQ g6 0 15',
      claim: 'after hxg6#: discovered-attack h1 h6 and discovered-attack c1 h6',
      holds: true,
      note: 'The pawn opens the h-file, and the pawn that it takes en passant the diagonal (Gundersen–Faul, Melbourne 1928).',
    },
    {
      fen: '4k3/8/8/8/8/8/8/4R1K1 b - - 0 1',
      claim: 'not discovered-attack e1 e8',
      holds: 'empty',
      because: 'the move that led here is not known',
    },
  ],
  parse: (words) => ({
    from: words.square('the square of a piece'),
    to: words.square('the square of an enemy piece'),
  }),
  judge: ({ position, before }: ClaimContext, { from, to }) =>
    judgePiece(position, from, ({ board, piece, color }) => {
      const target = board.get(to);
      if (!target) return empty(`${to} is empty`);
      if (!before) return empty('the move that led here is not known');
      const [name, aim] = [nameOf(board, from), nameOf(board, to)];
      if (target.color === color) return no(`${name} and ${aim} are of the same side`);
      if (!slides(piece)) return no(`a ${piece.kind} attacks along no line`);
      if (!reaches(board, from, to)) return no(whyNotReached(board, from, to));
      const earlier = readBoard(before);
      if (earlier.get(from) !== piece) return no(`${name} has just come there`);
      if (earlier.get(to) !== target) return no(`${aim} has just come there`);
      if (reaches(earlier, from, to)) return no(`${name} attacked ${to} before the last move too`);
      return yes(`${name} attacks ${aim} since the last move`);
    }),
});
