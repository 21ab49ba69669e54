import { fileOf, readBoard, sideName, squaresOf } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { counted, pawnsOn } from './shared/english.ts';

export const islands = defineClaim({
  name: 'islands',
  usage: ['islands white 2'],
  definition: `
The side's pawns form exactly so many groups, set apart by files without a pawn of that side.
`,
  source: 'Chess Programming Wiki, “Pawn Islands (Bitboards)”; Wikipedia, “Glossary of chess”',
  examples: [
    {
      fen: '4k3/p6p/1p1pp1p1/8/8/1P3P2/P1P3PP/4K3 w - - 0 1',
      claim: 'islands white 2 and islands black 3',
      holds: true,
    },
    {
      fen: '4k3/p6p/1p1pp1p1/8/8/1P3P2/P1P3PP/4K3 w - - 0 1',
      claim: 'islands white 3',
      holds: false,
      because: 'White has 2 groups: the pawns on a2, b3 and c2; the pawns on f3, g2 and h2',
    },
    {
      fen: '4k3/8/8/8/8/8/P1P1P1P1/4K3 w - - 0 1',
      claim: 'islands white 4 and islands black 0',
      holds: true,
      note: 'A side without pawns has no island.',
    },
    {
      fen: '4k3/8/8/2P5/8/2P5/8/4K3 w - - 0 1',
      claim: 'islands white 1',
      holds: true,
      because: 'White has one group: the pawns on c3 and c5',
      note: 'Doubled pawns are one island.',
    },
  ],
  parse: (words) => ({ color: words.color(), count: words.count(0) }),
  judge({ position }, { color, count }) {
    const pawns = squaresOf(readBoard(position), color, 'pawn').sort();
    const groups: string[][] = [];
    for (const pawn of pawns) {
      const last = groups.at(-1)?.at(-1);
      if (last !== undefined && fileOf(pawn) - fileOf(last) <= 1) groups.at(-1)?.push(pawn);
      else groups.push([pawn]);
    }
    const side = sideName(color);
    const because =
      groups.length === 0
        ? `${side} has no pawns`
        : `${side} has ${counted(groups.length, 'group')}: ${groups.map((group) => pawnsOn(group)).join('; ')}`;
    return groups.length === count
      ? yes(because)
      : no(because, `islands ${color} ${groups.length}`);
  },
});
