import { otherColor, sideName } from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { countSpace } from './shared/count-space.ts';

export const moreSpace = defineClaim({
  name: 'more-space',
  usage: ['more-space white'],
  definition: `
The side has more space than the other by the count of \`space\`.
`,
  source: 'Chess Programming Wiki, “Space”; others count otherwise',
  examples: [
    {
      fen: 'rnbqkbnr/ppp2ppp/4p3/3pP3/3P4/8/PPP2PPP/RNBQKBNR b KQkq - 0 3',
      claim: 'more-space white',
      holds: true,
      because: 'White has 11 by the count of `space`, and Black 6',
    },
    {
      fen: 'rnbqkbnr/pppp1ppp/8/4p3/4P3/8/PPPP1PPP/RNBQKBNR w KQkq - 0 2',
      claim: 'more-space white',
      holds: false,
      because: 'White has 8 by the count of `space`, and Black 8',
    },
    {
      fen: 'rnbqk1nr/ppp1ppbp/3p2p1/8/2PPP3/2N5/PP3PPP/R1BQKBNR b KQkq - 2 4',
      claim: 'not more-space black',
      holds: true,
    },
  ],
  parse: (words) => words.color(),
  judge({ position }, color) {
    const other = otherColor(color);
    const [own, theirs] = [countSpace(position, color), countSpace(position, other)];
    const because = `${sideName(color)} has ${own} by the count of \`space\`, and ${sideName(other)} ${theirs}`;
    return verdict(own > theirs, because, because);
  },
});
