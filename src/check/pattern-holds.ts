import {
  exchangeColors,
  exchangeRanks,
  initialPosition,
  isMoveFault,
  otherColor,
  type PlayedMove,
  type Position,
  playMove,
  sideToMove,
} from '../chess/index.ts';
import type { PatternBlock, PatternMove, Statement } from '../model/index.ts';
import {
  type ClaimContext,
  type ClaimPart,
  isClaimFault,
  judgeClaim,
  parseClaim,
  type SearchBudget,
} from './claims/index.ts';
import type { CourseView, PatternPlace } from './view/index.ts';

/** What a pattern says that is not so in a position that has it. */
export type PatternFailure =
  | {
      readonly says: 'advice';
      readonly advice: PatternMove;
      /** The course's own advice there; absent where it has none and the moves cannot be played. */
      readonly instead?: { readonly san: string; readonly name: string };
      /** One English clause about the board. */
      readonly because?: string;
    }
  | {
      readonly says: 'claim';
      readonly claim: Statement;
      readonly part: ClaimPart;
      readonly undecided: boolean;
      readonly because: string;
    };

/** Whether a text can be read as a move at all. */
export function isMove(san: string): boolean {
  const move = playMove(initialPosition, san);
  return !isMoveFault(move) || move.kind !== 'unreadable';
}

/** A position of a pattern; its counters are not known, and no claim speaks of them. */
export function positionOfPlace({ key }: Pick<PatternPlace, 'key'>): Position {
  return { key, fen: `${key} 0 1` };
}

/**
 * What a pattern's advice and claims get wrong in a position that has it. Advice is for the course's side, in a
 * course for both for the side at the bottom of the pattern's board; where that side is not to move, and where
 * the pattern has its colours exchanged, nothing is advised. Claims are judged as they are written: a position
 * with the colours exchanged is turned round for them.
 */
export function failuresAt(
  block: PatternBlock,
  place: PatternPlace,
  course: CourseView,
  search: SearchBudget,
): PatternFailure[] {
  return [...adviceAt(block, place, course), ...claimsAt(block, place, course, search)];
}

function adviceAt(
  { advice, view }: PatternBlock,
  place: PatternPlace,
  course: CourseView,
): PatternFailure[] {
  // What is no move has a finding of its own.
  const [first] = advice.every(({ san }) => isMove(san)) ? advice : [];
  const position = positionOfPlace(place);
  const adviser = course.side === 'both' ? view : course.side;
  if (!first || place.reversed || sideToMove(position) !== adviser) return [];
  const tried = advice.map(({ san }) => playMove(position, san));
  const meant = tried.flatMap((move) => {
    if (!isMoveFault(move)) return [move.san];
    // `Rd8` is advice wherever one of the rooks goes there.
    return move.kind === 'ambiguous' ? move.meant : [];
  });
  const advised = course.ask('advice', place.key);
  if (advised ? meant.includes(advised.san) : meant.length > 0) return [];
  const fault = tried.find(isMoveFault);
  return [
    {
      says: 'advice',
      advice: first,
      ...(advised ? { instead: advised } : fault && { because: fault.reason }),
    },
  ];
}

function claimsAt(
  { claims }: PatternBlock,
  place: PatternPlace,
  course: CourseView,
  search: SearchBudget,
): PatternFailure[] {
  const context = contextOf(place, course, search);
  return claims.flatMap((claim) => {
    const parsed = parseClaim(claim.argument);
    // What cannot be read, and a name that nobody gives, have findings of their own.
    if (isClaimFault(parsed)) return [];
    const names = parsed.parts.flatMap(({ labels }) => labels);
    if (names.some(({ text }) => !course.ask('name', text))) return [];
    return judgeClaim(parsed, context).map(({ part, undecided, because }) => ({
      says: 'claim' as const,
      claim,
      part,
      undecided,
      because,
    }));
  });
}

function contextOf(place: PatternPlace, course: CourseView, search: SearchBudget): ClaimContext {
  const turned = place.reversed ? exchangeColors : (position: Position) => position;
  const covered = course.ask('covered', place.key);
  return {
    position: turned(positionOfPlace(place)),
    side: course.side,
    covered: place.reversed ? covered.map(exchangeRanks) : covered,
    castlings: () => {
      const castled = course.ask('castled', place.key);
      return place.reversed ? castled.map(exchangeMove) : castled;
    },
    labelled: (name) => {
      const position = course.ask('name', name);
      return position ? turned(position) : undefined;
    },
    search,
  };
}

function exchangeMove(move: PlayedMove): PlayedMove {
  return {
    ...move,
    color: otherColor(move.color),
    from: exchangeRanks(move.from),
    to: exchangeRanks(move.to),
    after: exchangeColors(move.after),
  };
}
