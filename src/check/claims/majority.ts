import { otherColor, readBoard, sideName } from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { counted, fileName } from './shared/english.ts';
import { pawnsOnFiles } from './shared/pawns.ts';

export const majority = defineClaim({
  name: 'majority',
  usage: ['majority white queenside', 'majority black kingside', 'majority white a-c'],
  definition: `
The side has more pawns than the other on these files: the a- to d-file are the queenside, the e- to
h-file the kingside, or the files are named. Doubled pawns count as two: whether they cripple the
majority is not asked.
`,
  source:
    'Common practice; Wikibooks, “Chess Strategy”, has no files. Where the d- and e-file belong is ours',
  examples: [
    {
      fen: '6k1/pp3ppp/8/8/8/8/PPP2PP1/6K1 w - - 0 1',
      claim: 'majority white queenside and majority black kingside',
      holds: true,
    },
    {
      fen: 'r1b1kbnr/1pp2ppp/p1p5/8/3NP3/8/PPP2PPP/RNB1K2R b KQkq - 0 7',
      claim: 'majority white kingside and majority black queenside',
      holds: true,
      note: "Black's four include the doubled c-pawns: a majority all the same.",
    },
    {
      fen: '6k1/pp1p1ppp/8/8/8/8/PPP2PPP/6K1 w - - 0 1',
      claim: 'majority white a-c',
      holds: true,
      because: 'White has 3 pawns on the a- to c-file, and Black has 2',
    },
    {
      fen: '6k1/pp1p1ppp/8/8/8/8/PPP2PPP/6K1 w - - 0 1',
      claim: 'majority white queenside',
      holds: false,
      because: 'White has 3 pawns on the a- to d-file, and Black has 3',
      note: 'With the d-file it is three against three.',
    },
  ],
  parse: (words) => ({ color: words.color(), files: words.files() }),
  judge({ position }, { color, files }) {
    const board = readBoard(position);
    const [own, other] = [color, otherColor(color)].map(
      (side) => pawnsOnFiles(board, side, files).length,
    ) as [number, number];
    const [first, last] = [fileName(files[0] ?? 0), fileName(files.at(-1) ?? 0)];
    const where = first === last ? `the ${first}-file` : `the ${first}- to ${last}-file`;
    const because = `${sideName(color)} has ${counted(own, 'pawn')} on ${where}, and ${sideName(otherColor(color))} has ${other === 0 ? 'none' : other}`;
    return verdict(own > other, because, because);
  },
});
