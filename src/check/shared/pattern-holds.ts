import {
  exchangeColors,
  exchangeRanks,
  initialPosition,
  isMoveFault,
  legalMoves,
  otherColor,
  type PlayedMove,
  type Position,
  playMove,
  sideToMove,
} from '../../chess/index.ts';
import type { PatternBlock, PatternMove, Side, Statement } from '../../model/index.ts';
import {
  type ClaimContext,
  isClaimFault,
  judgeClaim,
  parseClaim,
  type Refutation,
  type SearchBudget,
} from '../claims/index.ts';
import type { CourseView, PatternPlace } from '../view/index.ts';

/** What a pattern says that is not so in a position that has it. */
export type PatternFailure =
  | {
      readonly says: 'advice';
      readonly advice: PatternMove;
      /** The course's own advice there; absent where it has none and the moves cannot be played. */
      readonly instead?: { readonly san: string; readonly name: string };
      /** Why it cannot be played, in one English clause about the board. */
      readonly because: () => string;
    }
  | {
      readonly says: 'claim';
      readonly claim: Statement;
      readonly part: Refutation['part'];
      readonly undecided: boolean;
      readonly because: string;
    };

/** Whether a text can be read as a move at all. */
export function isMove(san: string): boolean {
  const move = playMove(initialPosition, san);
  return !isMoveFault(move) || move.kind !== 'unreadable';
}

/** A position of a pattern; its counters are not known, and no claim speaks of them. */
function positionOfPlace({ key }: Pick<PatternPlace, 'key'>): Position {
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
  return [...adviceAt(block, place, course.side), ...claimsAt(block, place, course, search)];
}

function adviceAt(
  { advice, view }: PatternBlock,
  place: PatternPlace,
  side: Side,
): PatternFailure[] {
  // What is no move has a finding of its own.
  const [first] = advice.every(({ san }) => isMove(san)) ? advice : [];
  const position = positionOfPlace(place);
  const adviser = side === 'both' ? view : side;
  if (!first || place.reversed || sideToMove(position) !== adviser) return [];
  const { advised } = place;
  const meant = advice.map(({ san }) => plain(san));
  const isMeant = (san: string) => meant.some((move) => isOneOf(plain(san), move));
  if (advised ? isMeant(advised.san) : legalMoves(position).some(isMeant)) return [];
  return [
    {
      says: 'advice',
      advice: first,
      ...(advised && { instead: advised }),
      because() {
        const fault = playMove(position, first.san);
        return isMoveFault(fault) ? fault.reason : '';
      },
    },
  ];
}

/** Whether a move in canonical SAN is what advice says: `Rd8` is meant wherever one of the rooks goes there. */
function isOneOf(san: string, advice: string): boolean {
  if (san === advice || san.length <= advice.length) return san === advice;
  const [, kind, to] = /^([KQRBN])(?:[a-h][1-8]?|[1-8])([a-h][1-8])$/.exec(san) ?? [];
  return kind !== undefined && advice === `${kind}${to}`;
}

function plain(san: string): string {
  return san.replace(/[x+#=!?]/g, '').replace(/0/g, 'O');
}

function claimsAt(
  { claims }: PatternBlock,
  place: PatternPlace,
  course: CourseView,
  search: SearchBudget,
): PatternFailure[] {
  const context = contextOf(place, course, search);
  return claims.flatMap((claim) => {
    const parsed = parsedOnce(claim, course.own.claims);
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

const parsed = new WeakMap<
  CourseView['own']['claims'],
  WeakMap<Statement, ReturnType<typeof parseClaim>>
>();

/** A claim as it is read, once for all positions of its pattern. */
function parsedOnce(
  claim: Statement,
  own: CourseView['own']['claims'],
): ReturnType<typeof parseClaim> {
  const known = parsed.get(own) ?? new WeakMap<Statement, ReturnType<typeof parseClaim>>();
  parsed.set(own, known);
  const made = known.get(claim) ?? parseClaim(claim.argument, own);
  known.set(claim, made);
  return made;
}

function contextOf(place: PatternPlace, course: CourseView, search: SearchBudget): ClaimContext {
  const turned = place.reversed ? exchangeColors : (position: Position) => position;
  return {
    position: turned(positionOfPlace(place)),
    side: course.side,
    // Asked by few claims: an answer for each position would be kept.
    get covered() {
      const covered = course.ask('covered', place.key);
      return place.reversed ? covered.map(exchangeRanks) : covered;
    },
    coveredFrom: (position) => {
      const covered = course.ask('covered', turned(position).key);
      return place.reversed ? covered.map(exchangeRanks) : covered;
    },
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
