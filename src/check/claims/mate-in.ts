import {
  type Color,
  findMate,
  isMate,
  isStalemate,
  type MateSearch,
  otherColor,
  type Position,
  sideName,
  sideToMove,
} from '../../chess/index.ts';
import { defineClaim, empty, no, type Verdict, yes } from './define-claim.ts';
import { searchLimit, whyNoSearch } from './shared/search-limit.ts';

export const mateIn = defineClaim({
  name: 'mate in',
  usage: ['mate in 2', 'mate in 2 white'],
  definition: `
A side can mate with its second move from here (or third, and so on), whatever the other side
plays, and cannot force it sooner. It is the side to move that mates, or the other one, where every
move of the side to move is answered so; a side may be named. All moves of both sides are tried.
Where a quicker mate can be forced, both the claim and its denial are false. Draws by repetition
and by the fifty-move rule are not looked at. A search that has seen ${searchLimit} gives up, and
the claim is reported as undecided.
`,
  source: 'The problem stipulation “mate in n”; FIDE Laws of Chess, 5.1.1, on mate',
  examples: [
    {
      fen: '5r1k/6pp/7N/8/2Q5/8/8/6K1 w - - 0 1',
      claim: 'mate in 2',
      holds: true,
      because: 'White mates in 2, beginning with Qg8+',
    },
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p2Q/2B1P3/8/PPPP1PPP/RNB1K1NR w KQkq - 4 4',
      claim: 'mate in 1',
      holds: true,
      because: 'White mates in 1, beginning with Qxf7#',
    },
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p2Q/2B1P3/8/PPPP1PPP/RNB1K1NR w KQkq - 4 4',
      claim: 'mate in 2',
      holds: 'empty',
      because: 'White mates in 1 already, with Qxf7#',
    },
    {
      fen: 'r1bq1rk1/pp3ppp/2n2n2/3p4/3P4/2N2N2/PP3PPP/R1BQ1RK1 w - - 0 1',
      claim: 'mate in 2',
      holds: false,
      because: 'neither side can force mate in 2 or fewer moves',
    },
    {
      fen: '5r1k/6pp/7N/8/2Q5/8/8/6K1 b - - 0 1',
      claim: 'mate in 1 white',
      holds: false,
      because: 'White cannot force mate in 1 move',
      note: 'Black is to move and takes the knight.',
    },
    {
      fen: '8/8/8/8/8/2k5/8/K1q5 w - - 0 1',
      claim: 'mate in 1',
      holds: true,
      because: 'Black mates in 1 whatever White plays',
      note: 'White is to move, and it is Black who mates.',
    },
    {
      fen: '8/8/8/3k4/8/8/8/KQ6 w - - 0 1',
      claim: 'mate in 9',
      holds: 'undecided',
    },
  ],
  parse: (words) => ({ moves: words.count(1), color: words.optionalColor() }),
  judge(context, { moves, color }) {
    const { position, searchBudget, search } = context;
    if (isMate(position)) return empty('it is mate already', 'mate');
    if (isStalemate(position)) return empty('it is stalemate');
    const because = whyNoSearch(context);
    if (because !== undefined) return { holds: 'undecided', because };
    const turn = sideToMove(position);
    const sides = color ? [color] : [turn, otherColor(turn)];
    const searches: MateSearch[] = [];
    for (const side of sides) {
      const found = findMate(position, side, moves, searchBudget, search);
      if (found.result === 'mate') return judgeFound(position, side, moves, found);
      searches.push(found);
    }
    const stopped = searches.find((found) => found.result === 'undecided');
    if (stopped) {
      return {
        holds: 'undecided',
        because: `the search has seen ${searchLimit} and found no mate in ${countOfMoves(stopped.moves)} or fewer`,
      };
    }
    const who = color ? `${sideName(color)} cannot` : 'neither side can';
    return no(`${who} force mate in ${moves === 1 ? '1 move' : `${moves} or fewer moves`}`);
  },
});

function judgeFound(
  position: Position,
  side: Color,
  moves: number,
  found: MateSearch & { result: 'mate' },
): Verdict {
  const name = sideName(side);
  const count = found.moves;
  if (count === moves) {
    return yes(
      found.first
        ? `${name} mates in ${count}, beginning with ${found.first}`
        : `${name} mates in ${count} whatever ${sideName(sideToMove(position))} plays`,
    );
  }
  const quicker = `${name} mates in ${count} already${found.first ? `, with ${found.first}` : ''}`;
  return empty(quicker, `mate in ${count}`);
}

function countOfMoves(moves: number): string {
  return moves === 1 ? '1 move' : `${moves} moves`;
}
