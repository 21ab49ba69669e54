import { otherColor, readBoard, sideName } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { fileName, pawnsOn, verb } from './shared/english.ts';
import { pawnsOnFiles } from './shared/pawns.ts';

export const halfOpen = defineClaim({
  name: 'half-open',
  usage: ['half-open e white'],
  definition: `
The side has no pawn on the file, and the other side has at least one. A file without any pawn is
\`open\`, and not half-open for anybody. Pieces never matter.
`,
  source: 'Wikipedia, “Half-open file”',
  examples: [
    {
      fen: '3r2k1/ppp2ppp/3p4/8/8/8/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'half-open d white',
      holds: true,
      because: 'White has no pawn on the d-file, and the black pawn on d6 stands there',
    },
    {
      fen: '3r2k1/ppp2ppp/3p4/8/8/8/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'half-open d black',
      holds: false,
      because: 'the black pawn on d6 stands on the d-file',
    },
    {
      fen: '3r2k1/ppp2ppp/8/8/3p4/3N4/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'half-open d white',
      holds: true,
      note: "The own knight in the rook's way does not matter.",
    },
    {
      fen: '3r2k1/ppp2ppp/8/8/8/8/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'half-open d white',
      holds: false,
      because: 'no pawn stands on the d-file: it is open',
    },
    { fen: '4k3/p7/8/8/8/8/7P/4K3 w - - 0 1', claim: 'half-open a white', holds: true },
  ],
  parse: (words) => ({ file: words.file(), color: words.color() }),
  judge({ position }, { file, color }) {
    const board = readBoard(position);
    const enemy = otherColor(color);
    const own = pawnsOnFiles(board, color, [file]);
    const theirs = pawnsOnFiles(board, enemy, [file]);
    const name = `the ${fileName(file)}-file`;
    if (own.length > 0) {
      return no(`${pawnsOn(own, color)} ${verb(own.length, 'stands', 'stand')} on ${name}`);
    }
    if (theirs.length === 0) return no(`no pawn stands on ${name}: it is open`);
    const side = sideName(color);
    return yes(
      `${side} has no pawn on ${name}, and ${pawnsOn(theirs, enemy)} ${verb(theirs.length, 'stands', 'stand')} there`,
    );
  },
});
