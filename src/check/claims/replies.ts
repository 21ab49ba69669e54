import { listed, sideName, sideToMove } from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';

export const replies = defineClaim({
  name: 'replies',
  usage: ['replies 3'],
  definition: `
So many different moves of the other side are played from this position in blocks of moves, in all
chapters together, whatever the move order was. Where the side of the course is to move it says
nothing, and the claim and its denial are false; in a course for both sides it counts the moves of
whoever is to move.
`,
  source: 'The course itself',
  examples: [
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      side: 'black',
      covered: ['cxd5', 'e3', 'Nf3'],
      claim: 'replies 3',
      holds: true,
      because: 'the course has cxd5, e3 and Nf3',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      side: 'black',
      covered: ['cxd5'],
      claim: 'replies 3',
      holds: false,
      because: 'the course has cxd5',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      side: 'white',
      covered: ['cxd5'],
      claim: 'replies 1',
      holds: 'empty',
      because:
        "it is White's move, the side of the course, and replies are moves of the other side",
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      side: 'both',
      claim: 'replies 0',
      holds: true,
      because: 'the course has no move here',
    },
  ],
  parse: (words) => words.count(0),
  judge({ position, side, covered }, count) {
    const turn = sideToMove(position);
    if (side === turn) {
      return empty(
        `it is ${sideName(turn)}'s move, the side of the course, and replies are moves of the other side`,
      );
    }
    const found = covered.length;
    const because =
      found === 0 ? 'the course has no move here' : `the course has ${listed(covered)}`;
    return found === count ? yes(because) : no(because, `replies ${found}`);
  },
});
