import { fileOf, rankOf, relativeRank, squareAt } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { fileName } from './shared/english.ts';
import { judgeKind } from './shared/judge-piece.ts';

export const fianchetto = defineClaim({
  name: 'fianchetto',
  usage: ['fianchetto g2'],
  definition: `
The bishop stands on its side's second rank, on the b- or g-file, and a pawn of its side on the third
or fourth rank of that file.
`,
  source:
    'Wikipedia, “Fianchetto”; the bishop on a3 behind a pawn on b3, which that article shows too, is left out',
  examples: [
    {
      fen: 'rn1qkbnr/pbpppppp/8/1p6/8/BP4P1/P1PPPPBP/RN1QK1NR w KQkq - 0 1',
      claim: 'fianchetto g2 and fianchetto b7',
      holds: true,
      note: 'With the pawn two steps forward it is a long fianchetto.',
    },
    {
      fen: 'rn1qkbnr/pbpppppp/8/1p6/8/BP4P1/P1PPPPBP/RN1QK1NR w KQkq - 0 1',
      claim: 'fianchetto a3',
      holds: false,
      because: 'a3 is neither b2 nor g2',
    },
    {
      fen: '4k3/8/8/8/8/8/5PBP/4K3 w - - 0 1',
      claim: 'fianchetto g2',
      holds: false,
      because: 'no pawn of its side stands on g3 or g4',
    },
    { fen: '4k3/8/8/8/6P1/8/5PBP/4K3 w - - 0 1', claim: 'fianchetto g2', holds: true },
  ],
  parse: (words) => words.square('the square of a bishop'),
  judge: ({ position }, square) =>
    judgeKind(position, square, 'bishop', ({ board, color }) => {
      const file = fileOf(square);
      const rank = color === 'white' ? 2 : 7;
      if (relativeRank(square, color) !== 2 || (file !== 2 && file !== 7)) {
        return no(`${square} is neither b${rank} nor g${rank}`);
      }
      const up = color === 'white' ? 1 : -1;
      const places = [1, 2].map((far) => squareAt(file, rankOf(square) + far * up) ?? '');
      const pawn = places.find((place) => {
        const piece = board.get(place);
        return piece?.kind === 'pawn' && piece.color === color;
      });
      return pawn
        ? yes(`the pawn on ${pawn} has made room for it on the ${fileName(file)}-file`)
        : no(`no pawn of its side stands on ${places.join(' or ')}`);
    }),
});
