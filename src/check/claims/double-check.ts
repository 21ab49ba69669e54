import {
  attackersOn,
  kingOf,
  nameSquares,
  otherColor,
  readBoard,
  sideToMove,
} from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { possessive } from './shared/english.ts';

export const doubleCheck = defineClaim({
  name: 'double-check',
  usage: ['double-check', 'after Bd8: double-check'],
  definition: `
Two pieces attack the king of the side to move.
`,
  source: 'Wikipedia, “Double check”',
  examples: [
    {
      fen: 'rnbk1b1r/pp3ppp/2p5/4q1B1/4n3/8/PPP2PPP/2KR1BNR b - - 0 10',
      claim: 'double-check',
      holds: true,
      because: "the rook on d1 and the bishop on g5 attack Black's king on d8",
      note: 'Réti–Tartakower, Vienna 1910.',
    },
    {
      fen: 'r1bq1r2/pp2n3/4N2k/3pPppP/1b1n2Q1/2N5/PP3PP1/R1B1K2R w KQ g6 0 15',
      claim: 'after hxg6: double-check and mate',
      holds: true,
      note: 'Neither of the two has moved: the pawn took en passant.',
    },
    {
      fen: '4k3/8/8/8/8/8/8/4R1K1 b - - 0 1',
      claim: 'double-check',
      holds: false,
      because: "only the rook on e1 attacks Black's king on e8",
    },
    {
      fen: '4k3/8/8/8/8/8/8/3R2K1 b - - 0 1',
      claim: 'double-check',
      holds: false,
      because: "nothing attacks Black's king on e8",
    },
  ],
  parse: () => undefined,
  judge({ position }) {
    const board = readBoard(position);
    const turn = sideToMove(position);
    const king = kingOf(board, turn) ?? '';
    const checkers = attackersOn(board, king, otherColor(turn)).sort();
    const target = `${possessive(turn)} king on ${king}`;
    if (checkers.length > 1) return yes(`${nameSquares(board, checkers)} attack ${target}`);
    return no(
      checkers.length === 0
        ? `nothing attacks ${target}`
        : `only ${nameSquares(board, checkers)} attacks ${target}`,
    );
  },
});
