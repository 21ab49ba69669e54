import {
  findMate,
  gainfulCaptures,
  isMoveFault,
  legalMoves,
  listed,
  listMoves,
  otherColor,
  type PlayedMove,
  type Position,
  pieceAt,
  pieceValues,
  playMove,
  sideName,
  sideToMove,
} from '../../chess/index.ts';
import { type ClaimContext, defineClaim, empty, no, type Verdict, yes } from './define-claim.ts';
import { signed } from './shared/english.ts';
import { searchLimit, whyNoSearch } from './shared/search-limit.ts';

/** How quick the mate is that the other moves allow. */
const moves = 2;

export const onlyMove = defineClaim({
  name: 'only-move',
  usage: ['only-move', 'only-move Kf8', 'only-move Kf8 else -3'],
  definition: `
The side to move has exactly one legal move; or all its moves but one let the other side force mate
in two moves or fewer (searched). With a move named, it is that one. It speaks of the move to
come, not of the one just played; and it says nothing of material that other moves would lose.

With \`else -3\` it does: a move that comes out at least three pawns' worth below the one is as good as
out, and so is one that allows mate in two. What a move comes out at is what it takes, a promotion
counted, less the most that the other side then wins by one capture or promotion and what follows on
that square, by static exchange. Quiet answers, such as forks, are not looked at.
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
      fen: 'r1bqkbnr/pppp1ppp/8/8/3nP3/8/PPP2PPP/RNBQKB1R w KQkq - 0 5',
      claim: 'only-move Qxd4 else -3',
      holds: true,
      because: 'Qxd4 comes out at +3, and every other move at 0 or less',
      note: 'The knight must be taken back. Without `else` the claim is false.',
    },
    {
      fen: 'rnbqkbnr/ppp1pppp/8/3P4/8/8/PPPP1PPP/RNBQKBNR b KQkq - 0 2',
      claim: 'only-move else -2',
      holds: false,
      because: 'Qxd5 comes out at +1, and Nd7 at 0',
      note: 'A pawn less is not two.',
    },
    {
      fen: '7k/5Q2/6K1/8/8/8/8/8 b - - 0 1',
      claim: 'only-move',
      holds: 'empty',
      because: 'Black has no legal move at all',
    },
  ],
  parse(words) {
    const named = words.done || words.next === 'else' ? undefined : words.move();
    return { named, margin: words.keyword('else') ? words.loss() : undefined };
  },
  judge(context, { named, margin }) {
    const { position } = context;
    const legal = legalMoves(position);
    const side = sideName(sideToMove(position));
    const [first] = legal;
    if (first === undefined) return empty(`${side} has no legal move at all`);
    const wanted = named === undefined ? undefined : playMove(position, named);
    if (wanted && isMoveFault(wanted)) return empty(`${named} cannot be played: ${wanted.reason}`);
    if (legal.length === 1) return agree(first, wanted, margin, 'is the only legal move');
    const spent = whyNoSearch(context);
    if (spent !== undefined) return { holds: 'undecided', because: spent };
    if (margin !== undefined) return judgeOutcomes(context, legal, wanted, margin);
    const safe: string[] = [];
    for (const san of legal) {
      const search = searchAfter(context, san);
      if (search === 'undecided') return undecided(san);
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
    return agree(only, wanted, undefined, `alone does not allow mate in ${moves} or sooner`);
  },
});

/** Judges by what the moves come out at; only those that could spoil the claim are searched for a mate. */
function judgeOutcomes(
  context: ClaimContext,
  legal: readonly string[],
  wanted: PlayedMove | undefined,
  margin: number,
): Verdict {
  const outcomes = legal
    .map((san) => ({ san, outcome: outcomeOf(context.position, san) }))
    .sort((one, other) => other.outcome - one.outcome);
  let best: (typeof outcomes)[number] | undefined;
  for (const each of outcomes) {
    const { san, outcome } = each;
    if (best && outcome <= best.outcome - margin) {
      const rest = `comes out at ${signed(best.outcome)}, and every other move at ${signed(outcome)} or less`;
      return agree(best.san, wanted, margin, rest);
    }
    const search = searchAfter(context, san);
    if (search === 'undecided') return undecided(san);
    if (search === 'mate') continue;
    if (best) {
      return no(
        `${best.san} comes out at ${signed(best.outcome)}, and ${san} at ${signed(outcome)}`,
      );
    }
    best = each;
  }
  if (!best) return no(`every move allows mate in ${moves} or sooner`);
  return agree(best.san, wanted, margin, `alone does not allow mate in ${moves} or sooner`);
}

/** What a move takes, less the most that the other side then wins by captures on one square. */
function outcomeOf(position: Position, san: string): number {
  const move = listMoves(position).find((each) => each.san === san);
  const played = playMove(position, san);
  if (!move || isMoveFault(played)) throw new Error(`${san} in ${position.fen}`);
  const enPassant = move.kind === 'pawn' && move.capture;
  const taken = pieceAt(position, move.to)?.kind ?? (enPassant ? 'pawn' : undefined);
  const won = taken ? pieceValues[taken] : 0;
  const promoted = move.promotion ? pieceValues[move.promotion] - pieceValues.pawn : 0;
  return won + promoted - (gainfulCaptures(played.after)[0]?.gain ?? 0);
}

function agree(
  only: string,
  wanted: PlayedMove | undefined,
  margin: number | undefined,
  what: string,
): Verdict {
  const because = `${only} ${what}`;
  if (!wanted || wanted.san === only) return yes(because);
  return no(because, `only-move ${only}${margin === undefined ? '' : ` else -${margin}`}`);
}

function undecided(san: string): Verdict {
  const because = `the search behind ${san} has seen ${searchLimit} without an end`;
  return { holds: 'undecided', because };
}

function searchAfter({ position, searchBudget, search }: ClaimContext, san: string) {
  const played = playMove(position, san);
  if (isMoveFault(played)) throw new Error(`${san} in ${position.fen}: ${played.reason}`);
  return findMate(played.after, otherColor(played.color), moves, searchBudget, search).result;
}
