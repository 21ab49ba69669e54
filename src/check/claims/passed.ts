import { fileOf, otherColor } from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { filesNamed, pawnsOn, verb } from './shared/english.ts';
import { judgeKind } from './shared/judge-piece.ts';
import { filesBeside, pawnsAhead } from './shared/pawns.ts';

export const passed = defineClaim({
  name: 'passed',
  usage: ['passed d5'],
  definition: `
No enemy pawn stands further on, as the pawn goes, on its own file or a file beside it. Enemy pawns
level with it or behind it do not count, nor do pieces, nor its own pawns in front of it: of two
doubled pawns both may be passed.
`,
  source: 'Wikipedia, “Passed pawn”',
  examples: [
    {
      fen: '4k3/p4ppp/8/3P4/8/8/5PPP/4K3 w - - 0 1',
      claim: 'passed d5',
      holds: true,
      because: 'no black pawn stands ahead of it on the c-, d- or e-file',
    },
    {
      fen: '4k3/p1p2ppp/8/3P4/8/8/5PPP/4K3 w - - 0 1',
      claim: 'passed d5',
      holds: false,
      because: 'the black pawn on c7 stands ahead of it',
    },
    {
      fen: '4k3/5ppp/8/3Pp3/4P3/8/5PPP/4K3 w - - 0 1',
      claim: 'passed d5',
      holds: true,
      note: 'The pawn on e5 is level with it. Some dictionaries ask for no enemy pawn anywhere on these files; by them this one would not be passed.',
    },
    {
      fen: '4k3/5ppp/8/3P4/3P4/8/5PPP/4K3 w - - 0 1',
      claim: 'passed d4',
      holds: true,
      note: 'The rear one of two doubled pawns.',
    },
    {
      fen: '4k3/6p1/8/7P/8/8/8/4K3 w - - 0 1',
      claim: 'passed h5',
      holds: false,
      because: 'the black pawn on g7 stands ahead of it',
      note: 'At the edge only one file lies beside.',
    },
  ],
  parse: (words) => ({ square: words.square('the square of a pawn') }),
  judge: ({ position }, { square }) =>
    judgeKind(position, square, 'pawn', ({ board, color }) => {
      const files = [fileOf(square), ...filesBeside(square)].sort();
      const enemy = otherColor(color);
      const stoppers = pawnsAhead(board, square, color);
      return verdict(
        stoppers.length === 0,
        `no ${enemy} pawn stands ahead of it on ${filesNamed(files)}`,
        `${pawnsOn(stoppers, enemy)} ${verb(stoppers.length, 'stands', 'stand')} ahead of it`,
      );
    }),
});
