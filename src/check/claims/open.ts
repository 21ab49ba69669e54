import { colors, readBoard } from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { fileName, pawnsOn, verb } from './shared/english.ts';
import { pawnsOnFiles } from './shared/pawns.ts';

export const open = defineClaim({
  name: 'open',
  usage: ['open e'],
  definition: 'No pawn of either colour stands on the file. Pieces never matter.',
  source: 'Wikipedia, “Open file”',
  examples: [
    {
      fen: '3r2k1/ppp2ppp/8/8/8/8/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'open d',
      holds: true,
      because: 'no pawn stands on the d-file',
    },
    {
      fen: '3r2k1/ppp2ppp/3p4/8/8/8/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'open d',
      holds: false,
      because: 'the pawn on d6 stands on the d-file',
    },
    {
      fen: '3r2k1/ppp2ppp/8/8/8/3N4/PPP2PPP/3R2K1 w - - 0 1',
      claim: 'open d',
      holds: true,
      note: 'The knight in the way of the rook does not close the file.',
    },
    { fen: '4k3/1pp5/8/8/8/8/1PP4P/4K3 w - - 0 1', claim: 'open a and not open h', holds: true },
  ],
  parse: (words) => words.file(),
  judge({ position }, file) {
    const board = readBoard(position);
    const pawns = colors.flatMap((color) => pawnsOnFiles(board, color, [file]));
    const name = `the ${fileName(file)}-file`;
    return verdict(
      pawns.length === 0,
      `no pawn stands on ${name}`,
      `${pawnsOn(pawns)} ${verb(pawns.length, 'stands', 'stand')} on ${name}`,
    );
  },
});
