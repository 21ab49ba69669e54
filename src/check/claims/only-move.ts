import {
  findMate,
  isMoveFault,
  legalMoves,
  listed,
  otherColor,
  type PlayedMove,
  playMove,
  sideName,
  sideToMove,
} from '../../chess/index.ts';
import { type ClaimContext, defineClaim, empty, no, type Verdict, yes } from './define-claim.ts';
import { searchLimit, whyNoSearch } from './search-limit.ts';

/** How quick the mate is that the other moves allow. */
const moves = 2;

export const onlyMove = defineClaim({
  name: 'only-move',
  usage: ['only-move', 'only-move Kf8'],
  definition: `
The side to move has exactly one legal move; or all its moves but one let the other side force mate
in two moves or fewer (searched). With a move named, it is that one. It speaks of the move to
come, not of the one just played; and it says nothing of material that other moves would lose.
`,
  source:
    'Common practice for “only move”; the bound of two moves is ours, so that it can be proved',
  examples: [
    {
      fen: 'k7/8/1K6/8/8/8/8/7R b - - 0 1',
      claim: 'only-move Kb8',
      holds: true,
      because: 'Kb8 is the only legal move',
    },
    {
      fen: 'r1bqkbnr/pppp1ppp/2n5/4p2Q/2B1P3/8/PPPP1PPP/RNB1K1NR b KQkq - 3 3',
      claim: 'only-move',
      holds: false,
      because: "of Black's moves Qe7, Qf6, Ke7, Nh6, d5 and 1 more do not allow mate in 2",
      note: 'Mate on f7 threatens, and there are several ways to meet it.',
    },
    {
      fen: '6k1/5ppp/8/8/8/8/5PPP/4R1K1 b - - 0 1',
      claim: 'only-move',
      holds: false,
    },
    {
      fen: '7k/5Q2/6K1/8/8/8/8/8 b - - 0 1',
      claim: 'only-move',
      holds: 'empty',
      because: 'Black has no legal move at all',
    },
  ],
  parse: (words) => (words.done ? undefined : words.move()),
  judge(context, named) {
    const { position } = context;
    const legal = legalMoves(position);
    const side = sideName(sideToMove(position));
    const [first] = legal;
    if (first === undefined) return empty(`${side} has no legal move at all`);
    const wanted = named === undefined ? undefined : playMove(position, named);
    if (wanted && isMoveFault(wanted)) return empty(`${named} cannot be played: ${wanted.reason}`);
    if (legal.length === 1) return agree(first, wanted, 'is the only legal move');
    const spent = whyNoSearch(context);
    if (spent !== undefined) return { holds: 'undecided', because: spent };
    const safe: string[] = [];
    for (const san of legal) {
      const search = searchAfter(context, san);
      if (search === 'undecided') {
        const because = `the search behind ${san} has seen ${searchLimit} without an end`;
        return { holds: 'undecided', because };
      }
      if (search === 'none') safe.push(san);
    }
    const [only, ...others] = safe;
    if (only === undefined) return no(`every move of ${side}'s allows mate in ${moves} or sooner`);
    if (others.length > 0) {
      const shown = safe.slice(0, 5);
      const more = safe.length - shown.length;
      const list = listed(more > 0 ? [...shown, `${more} more`] : shown);
      return no(`of ${side}'s moves ${list} do not allow mate in ${moves}`);
    }
    return agree(only, wanted, `alone does not allow mate in ${moves} or sooner`);
  },
});

function agree(only: string, wanted: PlayedMove | undefined, what: string): Verdict {
  const because = `${only} ${what}`;
  return !wanted || wanted.san === only ? yes(because) : no(because, `only-move ${only}`);
}

function searchAfter({ position, searchBudget, search }: ClaimContext, san: string) {
  const played = playMove(position, san);
  if (isMoveFault(played)) throw new Error(`${san} in ${position.fen}: ${played.reason}`);
  return findMate(played.after, otherColor(played.color), moves, searchBudget, search).result;
}
