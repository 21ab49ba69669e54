import { nameOf, readBoard, slides } from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { judgePiece } from './shared/judge-piece.ts';
import { reaches } from './shared/reach.ts';

export const battery = defineClaim({
  name: 'battery',
  usage: ['battery d1 d2'],
  definition: `
Two pieces of one side, bishops, rooks or queens, stand on one line with nothing between them, and
each \`defends\` the other: so both work along that line. Where it aims is not asked.
`,
  source: 'Wikipedia, “Battery (chess)”; others ask that it aims at the enemy king',
  examples: [
    {
      fen: '3r2k1/3q1ppp/8/8/8/8/3R1PPP/3R2K1 w - - 0 1',
      claim: 'battery d1 d2 and battery d7 d8',
      holds: true,
    },
    {
      fen: '4k3/8/8/8/4B3/8/8/4R1K1 w - - 0 1',
      claim: 'battery e1 e4',
      holds: false,
      because: 'the bishop on e4 does not defend the rook on e1',
    },
    {
      fen: '6k1/8/8/8/8/3Q4/8/1B4K1 w - - 0 1',
      claim: 'battery b1 d3',
      holds: true,
      because: 'the bishop on b1 and the queen on d3 defend each other along one line',
    },
    {
      fen: '6k1/8/8/8/8/3Q4/2P5/1B4K1 w - - 0 1',
      claim: 'battery b1 d3',
      holds: false,
      note: 'The pawn on c2 stands between them.',
    },
  ],
  parse: (words) => ({
    first: words.square('the square of a piece'),
    second: words.square('the square of another piece'),
  }),
  judge({ position }, { first, second }) {
    const board = readBoard(position);
    return judgePiece(position, first, (one) =>
      judgePiece(position, second, (other) => {
        for (const { piece, square } of [one, other]) {
          if (!slides(piece)) return empty(`a ${piece.kind} stands on ${square}`);
        }
        const [near, far] = [nameOf(board, first), nameOf(board, second)];
        if (one.color !== other.color) return no(`${near} and ${far} are of different sides`);
        if (!reaches(board, first, second)) return no(`${near} does not defend ${far}`);
        if (!reaches(board, second, first)) return no(`${far} does not defend ${near}`);
        return yes(`${near} and ${far} defend each other along one line`);
      }),
    );
  },
});
