import { otherColor } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { pawnsOn, verb } from './shared/english.ts';
import { judgeKind } from './shared/judge-piece.ts';
import { pawnAttackers, pawnsAhead } from './shared/pawns.ts';

const connected = 'k7/8/7p/1P2Pp1P/2Pp1PP1/8/8/K7 w - - 0 1';

export const protectedPassed = defineClaim({
  name: 'protected-passed',
  usage: ['protected-passed e5'],
  definition: `
The pawn is \`passed\`, and a pawn of its own colour defends it.
`,
  source: 'Wikipedia, “Passed pawn”',
  examples: [
    {
      fen: connected,
      claim: 'protected-passed e5',
      holds: true,
      because: 'the pawn on f4 defends it, and no black pawn stands ahead of it',
    },
    {
      fen: connected,
      claim: 'protected-passed b5',
      holds: true,
    },
    {
      fen: connected,
      claim: 'protected-passed c4',
      holds: false,
      because: 'no pawn defends it',
    },
    {
      fen: connected,
      claim: 'protected-passed f5',
      holds: false,
      because: 'the white pawns on f4 and g4 stand ahead of it',
    },
    {
      fen: '4k3/8/8/3P4/8/4K3/8/8 w - - 0 1',
      claim: 'protected-passed d5',
      holds: false,
      because: 'no pawn defends it',
      note: 'A king that defends it does not make it protected in this sense.',
    },
  ],
  parse: (words) => ({ square: words.square('the square of a pawn') }),
  judge: ({ position }, { square }) =>
    judgeKind(position, square, 'pawn', ({ board, color }) => {
      const enemy = otherColor(color);
      const stoppers = pawnsAhead(board, square, color);
      if (stoppers.length > 0) {
        return no(
          `${pawnsOn(stoppers, enemy)} ${verb(stoppers.length, 'stands', 'stand')} ahead of it`,
        );
      }
      const defenders = pawnAttackers(board, square, color);
      if (defenders.length === 0) return no('no pawn defends it', `passed ${square}`);
      return yes(
        `${pawnsOn(defenders)} ${verb(defenders.length, 'defends', 'defend')} it, and no ${enemy} pawn stands ahead of it`,
      );
    }),
});
