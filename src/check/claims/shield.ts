import { fileOf, readBoard, relativeRank, sideName } from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { castledSide } from './shared/castled-side.ts';
import { pawnsOn } from './shared/english.ts';
import { filesBeside, pawnsOnFiles } from './shared/pawns.ts';

export const shield = defineClaim({
  name: 'shield',
  usage: ['shield white 3'],
  definition: `
The king is \`castled\`, and on exactly so many of its file and the files beside it a pawn of its side
stands on the second or third rank: unmoved, or moved by one step. A king on the a- or h-file has two
such files. Where the king is not castled, the claim and its denial are false.
`,
  source: 'Chess Programming Wiki, “King Safety”, “Pawn Shield”; the count by files is ours',
  examples: [
    {
      fen: 'r4rk1/ppp2ppp/8/8/8/8/PPP2PPP/R4RK1 w - - 0 1',
      claim: 'shield white 3',
      holds: true,
      because: 'the pawns on f2, g2 and h2 stand before the king on g1',
    },
    {
      fen: 'r4rk1/ppp2pp1/7p/8/6P1/8/PPP2P1P/R4RK1 w - - 0 1',
      claim: 'shield white 2 and shield black 3',
      holds: true,
      note: 'The pawn on g4 has gone too far, the one on h6 has not.',
    },
    {
      fen: 'r4rk1/ppp2pp1/7p/8/6P1/8/PPP2P1P/R4RK1 w - - 0 1',
      claim: 'shield white 3',
      holds: false,
      because: 'the pawns on f2 and h2 stand before the king on g1',
    },
    {
      fen: 'r3k2r/ppp2ppp/8/8/8/8/PPP2PPP/R3K2R w KQkq - 0 1',
      claim: 'not shield white 3',
      holds: 'empty',
      because: 'the king of White stands on e1',
    },
  ],
  parse: (words) => ({ color: words.color(), count: words.count(0) }),
  judge({ position }, { color, count }) {
    const found = castledSide(position, color);
    if ('not' in found) return empty(found.not);
    const { king } = found;
    const files = [fileOf(king), ...filesBeside(king)];
    const pawns = pawnsOnFiles(readBoard(position), color, files).filter(
      (pawn) => relativeRank(pawn, color) <= 3,
    );
    const held = new Set(pawns.map(fileOf)).size;
    const because =
      pawns.length === 0
        ? `no pawn is left before the king of ${sideName(color)} on ${king}`
        : `${pawnsOn(pawns)} ${pawns.length === 1 ? 'stands' : 'stand'} before the king on ${king}`;
    return held === count ? yes(because) : no(because, `shield ${color} ${held}`);
  },
});
