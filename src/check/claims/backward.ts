import { otherColor } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { filesNamed, pawnsOn, verb } from './shared/english.ts';
import { judgeKind } from './shared/judge-piece.ts';
import { filesBeside, isAhead, pawnAttackers, pawnsOnFiles, stopSquare } from './shared/pawns.ts';

export const backward = defineClaim({
  name: 'backward',
  usage: ['backward e6'],
  definition: `
The pawn has at least one pawn of its own colour on a file beside it, all of these stand further
on than it does, and an enemy pawn attacks the square in front of it. So no pawn can support its
advance, and the advance loses it to a pawn. A pawn without neighbours is \`isolated\`, not
backward; and where only pieces control the square in front, the claim is false.
`,
  source:
    'Wikipedia, “Backward pawn”: behind all friendly pawns on the adjacent files and unable to advance safely; “safely” is made precise as the attack of an enemy pawn, as in Chess Programming Wiki, “Backward Pawns (Bitboards)”',
  examples: [
    {
      fen: '4k3/5ppp/p2p4/1p2p3/4P3/2P5/PP3PPP/4K3 w - - 0 1',
      claim: 'backward d6',
      holds: true,
      because: 'the black pawn on e5 is ahead of it, and the white pawn on e4 attacks d5',
    },
    {
      fen: '4k3/2p2ppp/3p4/4p3/4P3/8/PPP2PPP/4K3 w - - 0 1',
      claim: 'backward d6',
      holds: false,
      because: 'the black pawn on c7 is not ahead of it',
    },
    {
      fen: '1k6/6p1/5p1p/5P1P/8/8/8/5K2 w - - 0 1',
      claim: 'backward g7',
      holds: true,
      because:
        'the black pawns on f6 and h6 are ahead of it, and the white pawns on f5 and h5 attack g6',
    },
    {
      fen: '1k6/6p1/5p1p/5P1P/8/8/8/5K2 w - - 0 1',
      claim: 'backward f5',
      holds: false,
      because: 'no white pawn stands on the e- or g-file: it is isolated',
      note: 'Some formulas count this pawn; ours asks for a neighbour.',
    },
    {
      fen: '3rk3/5ppp/p2p4/1p2p3/8/2P5/PP3PPP/3RK3 w - - 0 1',
      claim: 'backward d6',
      holds: false,
      because: 'no white pawn attacks d5, the square in front of it',
      note: 'The rook on d1 alone does not make the pawn backward.',
    },
  ],
  parse: (words) => ({ square: words.square('the square of a pawn') }),
  judge: ({ position }, { square }) =>
    judgeKind(position, square, 'pawn', ({ board, color }) => {
      const files = filesBeside(square);
      const friends = pawnsOnFiles(board, color, files);
      if (friends.length === 0) {
        return no(`no ${color} pawn stands on ${filesNamed(files)}: it is isolated`);
      }
      const helpers = friends.filter((friend) => !isAhead(friend, square, color));
      if (helpers.length > 0) {
        return no(
          `${pawnsOn(helpers, color)} ${verb(helpers.length, 'is', 'are')} not ahead of it`,
        );
      }
      const stop = stopSquare(square, color);
      const enemies = stop ? pawnAttackers(board, stop, otherColor(color)) : [];
      if (enemies.length === 0) {
        return no(`no ${otherColor(color)} pawn attacks ${stop}, the square in front of it`);
      }
      return yes(
        `${pawnsOn(friends, color)} ${verb(friends.length, 'is', 'are')} ahead of it, and ${pawnsOn(enemies, otherColor(color))} ${verb(enemies.length, 'attacks', 'attack')} ${stop}`,
      );
    }),
});
