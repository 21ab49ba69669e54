import { colors, listed, readBoard } from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { fileName, pawnsOn } from './shared/english.ts';
import { pawnsOnFiles } from './shared/pawns.ts';

export const doubled = defineClaim({
  name: 'doubled',
  usage: ['doubled c', 'doubled c white'],
  definition: `
At least two pawns of one colour stand on the file; three are doubled too. Without a side, it is
true where either side has them.
`,
  source: 'Wikipedia, “Doubled pawns”',
  examples: [
    {
      fen: '4k3/ppp2ppp/8/8/8/2P5/P1P2PPP/4K3 w - - 0 1',
      claim: 'doubled c',
      holds: true,
      because: 'the white pawns on c2 and c3 share the c-file',
    },
    {
      fen: '4k3/ppp2ppp/8/8/2p5/2P5/PP3PPP/4K3 w - - 0 1',
      claim: 'doubled c white',
      holds: false,
      because: 'the c-file has one white pawn, on c3',
    },
    {
      fen: '4k3/ppp2ppp/8/8/2p5/2P5/PP3PPP/4K3 w - - 0 1',
      claim: 'doubled c black and doubled c',
      holds: true,
    },
    {
      fen: '4k3/pp3ppp/8/2P5/2P5/2P5/P4PPP/4K3 w - - 0 1',
      claim: 'doubled c',
      holds: true,
      note: 'Tripled pawns are doubled too.',
    },
    {
      fen: '4k3/pp3ppp/8/2P5/2P5/2P5/P4PPP/4K3 w - - 0 1',
      claim: 'doubled h',
      holds: false,
      because: 'the h-file has one white pawn, on h2, and one black pawn, on h7',
      note: 'Two pawns on a file must be of one colour.',
    },
  ],
  parse: (words) => ({ file: words.file(), color: words.optionalColor() }),
  judge({ position }, { file, color }) {
    const board = readBoard(position);
    const sides = (color ? [color] : colors).map((side) => ({
      side,
      pawns: pawnsOnFiles(board, side, [file]),
    }));
    const found = sides.filter(({ pawns }) => pawns.length > 1);
    const name = `the ${fileName(file)}-file`;
    const count = ({ side, pawns }: (typeof sides)[number]) =>
      pawns.length === 0 ? `no ${side} pawn` : `one ${side} pawn, on ${pawns[0]}`;
    return verdict(
      found.length > 0,
      `${listed(found.map(({ side, pawns }) => pawnsOn(pawns, side)))} share ${name}`,
      `${name} has ${sides.map(count).join(', and ')}`,
    );
  },
});
