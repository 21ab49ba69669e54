import { sideName } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { countSpace } from './shared/count-space.ts';

export const space = defineClaim({
  name: 'space',
  usage: ['space white 11'],
  definition: `
The side's space is exactly so much by this count: of the squares on the c- to f-file and the side's
second to fourth rank, those that hold no pawn of its own and that no enemy pawn attacks; each counts
twice that lies at most three squares behind a pawn of its own on the same file.
`,
  source:
    'Chess Programming Wiki, “Space”, after an evaluation of open source; others count otherwise',
  examples: [
    {
      fen: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1',
      claim: 'space white 8 and space black 8',
      holds: true,
    },
    {
      fen: 'rnbqkbnr/pppp1ppp/8/4p3/4P3/8/PPPP1PPP/RNBQKBNR w KQkq - 0 2',
      claim: 'space white 8 and space black 8',
      holds: true,
    },
    {
      fen: 'rnbqkbnr/ppp2ppp/4p3/3pP3/3P4/8/PPP2PPP/RNBQKBNR b KQkq - 0 3',
      claim: 'space white 11 and space black 6',
      holds: true,
      note: 'After 1.e4 e6 2.d4 d5 3.e5.',
    },
    {
      fen: 'rnbqk1nr/ppp1ppbp/3p2p1/8/2PPP3/2N5/PP3PPP/R1BQKBNR b KQkq - 2 4',
      claim: 'space white 14 and space black 5',
      holds: true,
      note: 'After 1.d4 d6 2.e4 g6 3.c4 Bg7 4.Nc3.',
    },
    {
      fen: 'rnbqkbnr/ppp2ppp/4p3/3pP3/3P4/8/PPP2PPP/RNBQKBNR b KQkq - 0 3',
      claim: 'space white 10',
      holds: false,
      because: 'White has 11 by this count',
    },
  ],
  parse: (words) => ({ color: words.color(), count: words.count(0) }),
  judge({ position }, { color, count }) {
    const found = countSpace(position, color);
    const because = `${sideName(color)} has ${found} by this count`;
    return found === count ? yes(because) : no(because, `space ${color} ${found}`);
  },
});
