import { sideName } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { castledSide } from './shared/castled-side.ts';
import { wingName, wings } from './shared/castling.ts';

export const castled = defineClaim({
  name: 'castled',
  usage: ['castled white', 'castled black queen'],
  definition: `
The king stands as one that has castled (to the wing named): on the g- or h-file, or on the a-, b- or
c-file, of its first rank, with no right to castle left and no rook of its side between it and the
corner or in it. How it came there is not asked: a king that walked counts too.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: 'r4rk1/ppp2ppp/8/8/8/8/PPP2PPP/R4RK1 w - - 0 1',
      claim: 'castled white and castled black king',
      holds: true,
    },
    {
      fen: 'r4r1k/ppp2ppp/8/8/8/8/PPP2PPP/R4K1R w - - 0 1',
      claim: 'castled white',
      holds: false,
      because: 'the king of White stands on f1',
    },
    {
      fen: 'r5kr/ppp2ppp/8/8/8/8/PPP2PPP/2KR3R w - - 0 1',
      claim: 'castled black',
      holds: false,
      because: 'the rook on h8 is shut in on the kingside',
    },
    {
      fen: 'r4r1k/ppp2ppp/8/8/8/8/PPP2PPP/2KR3R w - - 0 1',
      claim: 'castled white queen and castled black king',
      holds: true,
    },
    {
      fen: 'r3k2r/ppp2ppp/8/8/8/8/PPP2PPP/R3K2R w KQkq - 0 1',
      claim: 'castled white',
      holds: false,
    },
    {
      fen: 'r4rk1/ppp2ppp/8/8/8/8/PPP2PPP/R4RK1 w - - 0 1',
      claim: 'castled white queen',
      holds: false,
      because: 'the king of White stands on g1, castled kingside',
    },
  ],
  parse(words) {
    const color = words.color();
    return { color, wing: words.done ? undefined : words.oneOf(wings) };
  },
  judge({ position }, { color, wing }) {
    const found = castledSide(position, color);
    if ('not' in found) return no(found.not);
    const because = `the king of ${sideName(color)} stands on ${found.king}, castled ${wingName(found.wing)}`;
    return wing && wing !== found.wing
      ? no(because, `castled ${color} ${found.wing}`)
      : yes(because);
  },
});
