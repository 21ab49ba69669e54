import { fileOf, otherColor, rankOf } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { filesNamed, pawnsOn, verb } from './shared/english.ts';
import { judgeKind } from './shared/judge-piece.ts';
import { pawnsOnFiles } from './shared/pawns.ts';

export const hangingPawns = defineClaim({
  name: 'hanging-pawns',
  usage: ['hanging-pawns c5 d5'],
  definition: `
The two pawns are of one colour and stand beside each other on the c- and d-, the d- and e- or the
e- and f-file, level or one rank apart; no enemy pawn stands on their two files, and no other
pawn of their colour on the files beside the pair. That something attacks them is not asked for.
`,
  source:
    'A. Collins as quoted by dictionary.com: adjacent pawns on half-open central files without friends on the outer files; that they are usually on c and d and level, glossaria.net',
  examples: [
    {
      fen: 'r2q1rk1/pb1nbppp/8/2pp4/8/4PN2/PB2BPPP/R2Q1RK1 w - - 0 1',
      claim: 'hanging-pawns c5 d5',
      holds: true,
      because: 'no white pawn stands on the c- or d-file and no black one on the b- or e-file',
    },
    {
      fen: 'r2q1rk1/p2nbppp/4p3/2pp4/8/4PN2/PB2BPPP/R2Q1RK1 w - - 0 1',
      claim: 'hanging-pawns c5 d5',
      holds: false,
      because: 'the black pawn on e6 stands beside the pair',
    },
    {
      fen: 'r2q1rk1/pb1nbppp/8/3p4/2p5/4PN2/PB2BPPP/R2Q1RK1 w - - 0 1',
      claim: 'hanging-pawns d5 c4',
      holds: true,
      note: 'One has stepped forward: they may be one rank apart.',
    },
    {
      fen: 'r2q1rk1/pb1nbppp/8/2pp4/3P4/5N2/PB2BPPP/R2Q1RK1 w - - 0 1',
      claim: 'hanging-pawns c5 d5',
      holds: false,
      because: 'the white pawn on d4 stands on one of their files',
    },
    {
      fen: '4k3/8/8/PP6/8/8/8/4K3 w - - 0 1',
      claim: 'hanging-pawns a5 b5',
      holds: false,
      because: 'the a- and b-file are not central files',
      note: 'A pair at the edge is not called so.',
    },
  ],
  parse: (words) => {
    const pair = [words.square('the square of a pawn'), words.square('the square of a pawn')];
    return pair.sort() as [string, string];
  },
  judge: ({ position }, [left, right]) =>
    judgeKind(position, left, 'pawn', ({ board, color }) =>
      judgeKind(position, right, 'pawn', (other) => {
        if (other.color !== color) return no('the two pawns are not of one colour');
        const files = [fileOf(left), fileOf(right)];
        const [first = 0, second = 0] = files;
        if (second !== first + 1) return no('the two pawns do not stand on neighbouring files');
        if (first < 3 || second > 6) return no(`${filesNamed(files, 'and')} are not central files`);
        if (Math.abs(rankOf(left) - rankOf(right)) > 1) {
          return no('the two pawns stand more than one rank apart');
        }
        const enemy = otherColor(color);
        const opposing = pawnsOnFiles(board, enemy, files);
        if (opposing.length > 0) {
          return no(
            `${pawnsOn(opposing, enemy)} ${verb(opposing.length, 'stands', 'stand')} on one of their files`,
          );
        }
        const outer = [first - 1, second + 1];
        const friends = pawnsOnFiles(board, color, outer);
        if (friends.length > 0) {
          return no(
            `${pawnsOn(friends, color)} ${verb(friends.length, 'stands', 'stand')} beside the pair`,
          );
        }
        return yes(
          `no ${enemy} pawn stands on ${filesNamed(files)} and no ${color} one on ${filesNamed(outer)}`,
        );
      }),
    ),
});
