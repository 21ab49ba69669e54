import {
  type Board,
  type Color,
  listed,
  otherColor,
  type Position,
  pieceKinds,
  pieceValues,
  readBoard,
  sideName,
  squaresOf,
} from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { counted, signed } from './shared/english.ts';

export const material = defineClaim({
  name: 'material',
  usage: ['material +1', 'material +1 since quiet-exchange'],
  definition: `
The balance of material, in pawns, as the side of the course sees it: pawn 1, knight and bishop 3,
rook 5, queen 9. \`+1\` is a pawn more for that side, \`-3\` a piece less, \`0\` is even. In a course
for both sides it is White's balance. With \`since\` and the name of a position it is how the
balance has changed from there to here.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: '4k3/pp6/8/8/8/8/PPP5/4K3 w - - 0 1',
      claim: 'material +1',
      holds: true,
      because: 'White has one pawn more',
    },
    {
      fen: '4k3/pp6/8/8/8/8/PPP5/4K3 w - - 0 1',
      claim: 'material +1',
      side: 'black',
      holds: false,
      because: 'White has one pawn more, which is -1 for Black',
    },
    {
      fen: '3nk3/pp6/8/8/8/8/PP6/2B1K3 w - - 0 1',
      claim: 'material 0',
      holds: true,
      because: 'White has one bishop more, and Black one knight, which is 0 for White',
      note: 'A bishop for a knight is even by this count.',
    },
    {
      fen: '4k3/pp6/8/8/8/8/P7/R3K3 w - - 0 1',
      claim: 'material +4',
      side: 'both',
      holds: true,
      because: 'White has one rook more, and Black one pawn, which is +4 for White',
    },
    {
      fen: '4k3/ppp5/8/8/8/8/PPP5/4K3 w - - 0 1',
      claim: 'material +1 since before',
      labels: { before: '4k3/ppp5/8/8/8/8/PP6/4K3 w - - 0 1' },
      holds: true,
      because: 'the balance for White was -1 at `before` and is 0 here',
    },
  ],
  parse(words) {
    const pawns = words.signed();
    if (words.done) return { pawns, since: undefined };
    words.oneOf(['since']);
    return { pawns, since: words.label() };
  },
  judge({ position, side, labelled }, { pawns, since }) {
    const color = side === 'black' ? 'black' : 'white';
    const here = balance(position, color);
    if (since === undefined) {
      const because = describe(readBoard(position), here, color);
      return here === pawns ? yes(because) : no(because, `material ${signed(here)}`);
    }
    const before = labelled(since);
    if (!before) return empty(`the moves to \`${since}\` cannot be played`);
    const then = balance(before, color);
    const because = `the balance for ${sideName(color)} was ${signed(then)} at \`${since}\` and is ${signed(here)} here`;
    const change = here - then;
    return change === pawns
      ? yes(because)
      : no(because, `material ${signed(change)} since ${since}`);
  },
});

function balance(position: Position, color: Color): number {
  const sum = (of: Color) =>
    pieceKinds.reduce(
      (total, kind) => total + pieceValues[kind] * squaresOf(readBoard(position), of, kind).length,
      0,
    );
  return sum(color) - sum(otherColor(color));
}

/** The difference in pieces: who has which more. */
function describe(board: Board, pawns: number, color: Color): string {
  const more: Record<Color, string[]> = { white: [], black: [] };
  for (const kind of pieceKinds) {
    const difference =
      squaresOf(board, 'white', kind).length - squaresOf(board, 'black', kind).length;
    if (difference === 0) continue;
    more[difference > 0 ? 'white' : 'black'].push(counted(Math.abs(difference), kind));
  }
  if (more.white.length + more.black.length === 0) return 'both sides have the same pieces';
  const ahead = more.white.length > 0 ? 'white' : 'black';
  const behind = otherColor(ahead);
  const first = `${sideName(ahead)} has ${listed(more[ahead])} more`;
  const second = more[behind].length > 0 ? `, and ${sideName(behind)} ${listed(more[behind])}` : '';
  const sum =
    color === ahead && pawns > 0 && !second
      ? ''
      : `, which is ${signed(pawns)} for ${sideName(color)}`;
  return `${first}${second}${sum}`;
}
