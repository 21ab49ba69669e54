import {
  attackersOn,
  kingOf,
  nameSquares,
  otherColor,
  readBoard,
  sideName,
  sideToMove,
} from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { verb } from './shared/english.ts';

export const check = defineClaim({
  name: 'check',
  usage: ['check'],
  definition: `
The king of the side to move is attacked, by one piece or by two. Mate is check too.
`,
  source: 'FIDE Laws of Chess, 3.9',
  examples: [
    {
      fen: 'rnbqk1nr/pppp1ppp/8/4p3/1bPP4/8/PP2PPPP/RNBQKBNR w KQkq - 1 3',
      claim: 'check',
      holds: true,
      because: 'the bishop on b4 attacks the king on e1',
    },
    {
      fen: 'rnbqk1nr/pppp1ppp/8/4p3/1bPP4/2N5/PP2PPPP/R1BQKBNR b KQkq - 2 3',
      claim: 'check',
      holds: false,
      because: "nothing attacks Black's king on e8",
    },
    {
      fen: '3rk3/8/8/8/7b/8/8/3K4 w - - 0 1',
      claim: 'check',
      holds: true,
      because: 'the rook on d8 attacks the king on d1',
    },
  ],
  parse: () => undefined,
  judge({ position }) {
    const board = readBoard(position);
    const color = sideToMove(position);
    const king = kingOf(board, color) ?? '';
    const attackers = attackersOn(board, king, otherColor(color)).sort();
    return verdict(
      attackers.length > 0,
      `${nameSquares(board, attackers)} ${verb(attackers.length, 'attacks', 'attack')} the king on ${king}`,
      `nothing attacks ${sideName(color)}'s king on ${king}`,
    );
  },
});
