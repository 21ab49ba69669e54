import { fileOf, otherColor, readBoard } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { pawnsOn, verb } from './shared/english.ts';
import { judgeKind } from './shared/judge-piece.ts';
import { pawnsAhead } from './shared/pawns.ts';

const both = 'k7/8/7p/1P2Pp1P/2Pp1PP1/8/8/K7 w - - 0 1';

export const connectedPassed = defineClaim({
  name: 'connected-passed',
  usage: ['connected-passed b5 c4'],
  definition: `
Both pawns are of one colour and \`passed\`, and they stand on neighbouring files, on whatever ranks.
`,
  source:
    'Wikipedia, “Passed pawn”: passed pawns on adjacent files; others ask that they stand at most one rank apart',
  examples: [
    {
      fen: both,
      claim: 'connected-passed b5 c4',
      holds: true,
      because: 'both are passed, on files side by side',
    },
    {
      fen: both,
      claim: 'connected-passed e5 f4',
      holds: false,
      because: 'the black pawn on f5 stands ahead of the pawn on f4',
    },
    {
      fen: both,
      claim: 'connected-passed b5 e5',
      holds: false,
      because: 'b5 and e5 do not lie on files side by side',
    },
    {
      fen: '6k1/8/1P6/8/8/8/2P5/6K1 w - - 0 1',
      claim: 'connected-passed b6 c2',
      holds: true,
      note: 'Far apart, and by this definition connected all the same.',
    },
  ],
  parse: (words) => ({
    first: words.square('the square of a pawn'),
    second: words.square('the square of another pawn'),
  }),
  judge({ position }, { first, second }) {
    const board = readBoard(position);
    return judgeKind(position, first, 'pawn', ({ color }) =>
      judgeKind(position, second, 'pawn', (other) => {
        if (other.color !== color) return no(`the pawns on ${first} and ${second} are enemies`);
        if (Math.abs(fileOf(first) - fileOf(second)) !== 1) {
          return no(`${first} and ${second} do not lie on files side by side`);
        }
        for (const square of [first, second]) {
          const stoppers = pawnsAhead(board, square, color);
          if (stoppers.length === 0) continue;
          const enemy = otherColor(color);
          return no(
            `${pawnsOn(stoppers, enemy)} ${verb(stoppers.length, 'stands', 'stand')} ahead of the pawn on ${square}`,
          );
        }
        return yes('both are passed, on files side by side');
      }),
    );
  },
});
