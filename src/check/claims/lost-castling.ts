import { numberedSan, sideName } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { castlingRights, wingName, wings } from './shared/castling.ts';

export const lostCastling = defineClaim({
  name: 'lost-castling',
  usage: ['lost-castling black', 'lost-castling black king'],
  definition: `
The side has no right to castle any more (to the wing named), and has not castled. Whether it has
castled is known from the moves that lead to the position; of a block that starts from a FEN only
the rights are known. Castling that is only prevented for the moment is not lost.
`,
  source: 'FIDE Laws of Chess, 3.8.2.1',
  examples: [
    {
      fen: 'rnbq1k1r/ppp2ppp/5n2/8/8/8/PPP2PPP/RNB1K1NR w KQ - 0 8',
      claim: 'lost-castling black',
      holds: true,
      because: 'Black has no right to castle left',
    },
    {
      fen: 'rnbqk1nr/ppp2ppp/8/8/8/8/PPP2PPP/RNB1K1NR w KQq - 0 8',
      claim: 'lost-castling black king and not lost-castling black',
      holds: true,
      note: 'Only the right to castle kingside is lost.',
    },
    {
      fen: '4k3/8/8/8/8/8/5r2/R3K2R w KQ - 0 1',
      claim: 'lost-castling white',
      holds: false,
      because: 'White still has the right to castle kingside and queenside',
    },
    {
      fen: 'r1bqk2r/pppp1ppp/2n2n2/2b1p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      moves: ['O-O'],
      claim: 'lost-castling white',
      holds: false,
      because: 'White has castled, with 4.O-O',
    },
    {
      fen: 'r1bqk2r/pppp1ppp/2n2n2/2b1p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      moves: ['Rf1', 'd6', 'Rh1'],
      claim: 'lost-castling white king',
      holds: true,
      note: 'The rook is back, but it has moved.',
    },
  ],
  parse(words) {
    const color = words.color();
    return { color, wing: words.done ? undefined : words.oneOf(wings) };
  },
  judge({ position, castlings }, { color, wing }) {
    const side = sideName(color);
    const left = castlingRights(position, color).filter((each) => !wing || each === wing);
    if (left.length > 0) {
      return no(`${side} still has the right to castle ${left.map(wingName).join(' and ')}`);
    }
    const castled = castlings().find((move) => move.color === color);
    if (castled) {
      return no(`${side} has castled, with ${numberedSan(castled)}`);
    }
    return yes(
      `${side} has no right to castle ${wing ? wingName(wing) : 'left'}${wing ? ' any more' : ''}`,
    );
  },
});
