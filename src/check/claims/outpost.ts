import { otherColor, readBoard } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { filesNamed, pawnsOn } from './shared/english.ts';
import { filesBeside, isAhead, pawnsOnFiles } from './shared/pawns.ts';
import {
  enemyPawnsAt,
  judgeSupportedSquare,
  type SupportedSquare,
} from './shared/supported-square.ts';

const kind: SupportedSquare = {
  name: 'an outpost',
  isForPiece: 'an outpost is a square for a piece',
  judge(square, color, position, defended) {
    const enemy = otherColor(color);
    const files = filesBeside(square);
    const attackers = pawnsOnFiles(readBoard(position), enemy, files).filter((pawn) =>
      isAhead(pawn, square, color),
    );
    if (attackers.length === 0) {
      return yes(`${defended}, and no ${enemy} pawn can attack it from ${filesNamed(files)}`);
    }
    const isStrong = enemyPawnsAt(position, square, color).length === 0;
    const instead = isStrong ? `strong-square ${square} ${color}` : undefined;
    return no(`${pawnsOn(attackers, enemy)} can attack it`, instead);
  },
};

export const outpost = defineClaim({
  name: 'outpost',
  usage: ['outpost e5', 'outpost e5 white'],
  definition: `
A square on a side's fourth to seventh rank (for Black the fifth to second, from White's side) that
a pawn of that side defends, and that no enemy pawn attacks or could come to attack by going
straight on: on the files beside it no enemy pawn stands further on, even one that is blocked now.
That an enemy pawn might change files by a capture is left out of account. A square that an enemy pawn
could still contest, at a price, is a \`strong-square\`. Whose square it is, the
side given says; else the piece that stands on it; else it may be either side's.
`,
  source:
    'Wikipedia, “Outpost (chess)”: fourth to seventh rank; The Oxford Companion to Chess asks for the fifth to seventh',
  examples: [
    {
      fen: 'r2q1rk1/pp3ppp/3p4/3Np3/4P3/8/PPP2PPP/R2Q1RK1 w - - 0 1',
      claim: 'outpost d5',
      holds: true,
      because:
        'the white pawn on e4 defends it, and no black pawn can attack it from the c- or e-file',
    },
    {
      fen: 'r2q1rk1/ppp2ppp/3p4/3Np3/4P3/8/PPP2PPP/R2Q1RK1 w - - 0 1',
      claim: 'outpost d5',
      holds: false,
      because: 'the black pawn on c7 can attack it',
    },
    {
      fen: 'r2q1rk1/pp3ppp/3p4/3Np3/8/8/PPP2PPP/R2Q1RK1 w - - 0 1',
      claim: 'outpost d5',
      holds: false,
      because: 'no white pawn defends it',
      note: 'A hole in the enemy camp, but no outpost without a pawn behind it.',
    },
    {
      fen: '3r2k1/pp3ppp/3p4/2pNp3/4P3/8/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'outpost d5',
      holds: true,
      note: 'The pawn on c5 has already passed the point from which it could attack d5.',
    },
    {
      fen: '6k1/8/8/8/2p5/8/8/6K1 w - - 0 1',
      claim: 'outpost d3',
      holds: true,
      because:
        'the black pawn on c4 defends it, and no white pawn can attack it from the c- or e-file',
      note: "An empty square: here it is Black's.",
    },
    {
      fen: '6k1/8/8/1P6/8/8/8/6K1 w - - 0 1',
      claim: 'outpost a6 white',
      holds: true,
      because: 'the white pawn on b5 defends it, and no black pawn can attack it from the b-file',
    },
    {
      fen: '6k1/8/8/8/8/8/1P6/6K1 w - - 0 1',
      claim: 'outpost c3 white',
      holds: false,
      because: "c3 lies on White's third rank, and an outpost on the fourth to seventh",
    },
    {
      fen: '6k1/8/8/4P3/3P4/8/8/6K1 w - - 0 1',
      claim: 'outpost e5',
      holds: 'empty',
      because: 'a pawn stands on e5, and an outpost is a square for a piece',
    },
  ],
  parse: (words) => ({ square: words.square(), color: words.optionalColor() }),
  judge: ({ position }, about) => judgeSupportedSquare(kind, position, about),
});
