import { otherColor } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { pawnsOn, verb } from './shared/english.ts';
import {
  enemyPawnsAt,
  judgeSupportedSquare,
  type SupportedSquare,
} from './shared/supported-square.ts';

const kind: SupportedSquare = {
  name: 'a strong square',
  isForPiece: 'a strong square is one for a piece',
  judge(square, color, position, defended) {
    const enemy = otherColor(color);
    const attackers = enemyPawnsAt(position, square, color);
    return attackers.length > 0
      ? no(`${pawnsOn(attackers, enemy)} ${verb(attackers.length, 'attacks', 'attack')} it`)
      : yes(`${defended}, and no ${enemy} pawn attacks it`);
  },
};

export const strongSquare = defineClaim({
  name: 'strong-square',
  usage: ['strong-square e5', 'strong-square e5 white'],
  definition: `
A square on a side's fourth to seventh rank that a pawn of that side defends and that no enemy pawn
attacks now. An enemy pawn may still come to attack it, at a price that the text names: that is the
difference to \`outpost\`, which no enemy pawn can ever attack by going straight on. So every outpost
is a strong square too. Whose square it is, the side given says; else the piece that stands on it;
else it may be either side's.
`,
  source:
    'Common practice, no source; ranks and the pawn as in Wikipedia, “Outpost (chess)”, which knows no such grade',
  examples: [
    {
      fen: 'r2q1rk1/ppp2ppp/3p4/3Np3/4P3/8/PPP2PPP/R2Q1RK1 w - - 0 1',
      claim: 'strong-square d5 and not outpost d5',
      holds: true,
      note: 'The pawn on c7 can attack d5, and leaves d6 behind.',
    },
    {
      fen: 'r2q1rk1/pp3ppp/2pp4/3Np3/4P3/8/PPP2PPP/R2Q1RK1 w - - 0 1',
      claim: 'strong-square d5',
      holds: false,
      because: 'the black pawn on c6 attacks it',
    },
    {
      fen: 'r3r1k1/pp3ppp/3p1b2/3NpP2/2q1P3/8/PPP3PP/R3QRK1 b - - 0 1',
      claim: 'strong-square d5 and outpost d5',
      holds: true,
      note: 'A full outpost is a strong square too (Smyslov–Rudakovsky, Moscow 1945, after 17.Nd5).',
    },
    {
      fen: 'r2q1rk1/p1p2ppp/2Pp4/3Np3/4P3/8/PP3PPP/R2Q1RK1 w - - 0 1',
      claim: 'strong-square d5',
      holds: true,
      because: 'the white pawn on e4 defends it, and no black pawn attacks it',
      note: 'The pawn on c7 is blocked now.',
    },
    {
      fen: 'r2q1rk1/pp3ppp/3p4/3Np3/8/8/PPP2PPP/R2Q1RK1 w - - 0 1',
      claim: 'strong-square d5',
      holds: false,
      because: 'no white pawn defends it',
    },
    {
      fen: '6k1/8/8/4P3/3P4/8/8/6K1 w - - 0 1',
      claim: 'strong-square e5',
      holds: 'empty',
      because: 'a pawn stands on e5, and a strong square is one for a piece',
    },
  ],
  parse: (words) => ({ square: words.square(), color: words.optionalColor() }),
  judge: ({ position }, about) => judgeSupportedSquare(kind, position, about),
});
