import {
  exchangeOf,
  inCheck,
  isMate,
  isMoveFault,
  isStalemate,
  passMove,
  playMove,
  readBoard,
  sideName,
  sideToMove,
} from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { pawnsWorth } from './shared/english.ts';
import { isMisspelt } from './shared/legality.ts';

export const threatens = defineClaim({
  name: 'threatens',
  usage: ['threatens Qxb7'],
  definition: `
If the side to move passed, the other side could legally play the move, and it would be mate, or
win material by static exchange: what it takes, and what a pawn becomes, is worth more than what
the captures that may follow on its square lose. A quiet move that prepares something, such as a
fork, is no threat in this sense. An en-passant capture cannot be threatened.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: 'rn1qkbnr/ppp2ppp/8/3p1b2/3P4/1Q6/PP2PPPP/RNB1KBNR b KQkq - 1 4',
      claim: 'threatens Qxb7',
      holds: true,
      because: 'Qxb7 would win a pawn',
    },
    {
      fen: 'rn1qkbnr/1pp2ppp/p7/3p1b2/3P4/1Q6/PP2PPPP/RNB1KBNR b KQkq - 0 4',
      claim: 'threatens Qxd5',
      holds: false,
      because: "Qxd5 would lose 8 pawns' worth by the captures on d5",
    },
    {
      fen: 'r1bqkbnr/pppp1ppp/2n5/4p2Q/2B1P3/8/PPPP1PPP/RNB1K1NR b KQkq - 3 3',
      claim: 'threatens Qxf7#',
      holds: true,
      because: 'Qxf7# would be mate',
    },
    {
      fen: 'rnbqkbnr/pppp1ppp/8/4p3/4P3/8/PPPP1PPP/RNBQKBNR b KQkq - 0 2',
      claim: 'threatens Nf3',
      holds: false,
      because: 'Nf3 takes nothing and does not mate',
    },
    {
      fen: '6k1/P7/8/8/8/8/8/6K1 b - - 0 1',
      claim: 'threatens a8=Q',
      holds: true,
      because: "a8=Q+ would win 8 pawns' worth",
    },
    {
      fen: '4k3/8/8/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'threatens Rxe5',
      holds: false,
      note: "White is to move, so this would have to be a threat of Black's.",
    },
  ],
  parse: (words) => words.move(),
  judge({ position }, written) {
    const side = sideName(sideToMove(position));
    if (isMate(position)) return empty(`${side} is mated, and nothing more can be threatened`);
    if (isStalemate(position)) return empty(`${side} is stalemated, and the game is over`);
    const passed = passMove(position);
    const played = playMove(passed, written);
    if (isMoveFault(played)) {
      if (played.kind === 'ambiguous') {
        return empty(`${written} is not one move: ${played.reason}`);
      }
      if (isMisspelt(passed, written)) return empty(played.reason);
      return no(`if ${side} passed, ${written} could not be played: ${played.reason}`);
    }
    if (readBoard(position).get(played.to)?.kind === 'king') {
      return empty(`${side} is in check, which is more than a threat`);
    }
    if (isMate(played.after)) return yes(`${played.san} would be mate`);
    const exchange = exchangeOf(passed, played);
    // The search and chess.js know the same moves; see the perft tests.
    if (!exchange) throw new Error(`${played.san} in ${passed.fen}`);
    const { gain, taken, promotion } = exchange;
    if (gain > 0) return yes(`${played.san} would win ${pawnsWorth(gain)}`);
    if (!taken && !promotion) {
      return no(
        `${played.san} takes nothing and does not mate${inCheck(played.after) ? ', though it checks' : ''}`,
      );
    }
    if (gain === 0) return no(`the captures on ${played.to} would win nothing`);
    return no(`${played.san} would lose ${pawnsWorth(-gain)} by the captures on ${played.to}`);
  },
});
