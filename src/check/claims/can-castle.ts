import { isMoveFault, passMove, playMove, sideName, sideToMove } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { castlingRights, sanOf, wingName, wings } from './shared/castling.ts';

export const canCastle = defineClaim({
  name: 'can-castle',
  usage: ['can-castle white king', 'can-castle black queen'],
  definition: `
The side may castle to that wing at once, or could if it were its move: it still has the right,
nothing stands between king and rook, the king is not in check and neither crosses nor reaches an
attacked square. Where castling is only prevented for the moment, the claim is false; that the side
keeps the right is \`not lost-castling\`.
`,
  source: 'FIDE Laws of Chess, 3.8',
  examples: [
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'can-castle white king',
      holds: true,
      because: 'White may play O-O',
    },
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'can-castle white queen',
      holds: false,
    },
    {
      fen: 'r1bqk2r/pppp1ppp/2n2n2/2b1p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'can-castle black king',
      holds: true,
      note: "It is White's move; Black could castle if it were his.",
    },
    {
      fen: '4k3/8/8/8/8/8/5r2/R3K2R w KQ - 0 1',
      claim: 'can-castle white king',
      holds: false,
      note: 'For the moment only: the king would cross f1.',
    },
    {
      fen: '4k2r/8/8/8/8/8/8/4K2R w k - 0 1',
      claim: 'can-castle white king',
      holds: false,
      because: 'White has lost the right to castle kingside',
    },
  ],
  parse: (words) => ({ color: words.color(), wing: words.oneOf(wings) }),
  judge({ position }, { color, wing }) {
    const side = sideName(color);
    if (!castlingRights(position, color).includes(wing)) {
      return no(`${side} has lost the right to castle ${wingName(wing)}`);
    }
    const turn = sideToMove(position) === color ? position : passMove(position);
    const played = playMove(turn, sanOf(wing));
    return isMoveFault(played)
      ? no(played.reason, `not lost-castling ${color} ${wing}`)
      : yes(`${side} may play ${played.san}`);
  },
});
