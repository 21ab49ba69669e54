/** `after Nf3 Nc6: …`: what would be true if these moves were played. */
import {
  inCheck,
  initialPosition,
  isMoveFault,
  type PlayedMove,
  passMove,
  playMove,
  sideName,
  sideToMove,
} from '../../../chess/index.ts';
import { type ClaimContext, empty, type Judge, type Verdict } from '../define-claim.ts';
import { UnreadableClaim, type Word } from './argument-reader.ts';

export interface AfterMoves {
  /** Judges what the judge judges, in the position that the moves lead to. */
  readonly judgeThere: (judge: Judge) => Judge;
}

/** Moves of both sides behind `after`. More than that is a line, which belongs in a block of moves. */
const mostMoves = 40;

/** The word for a move that is not made, so that the other side comes to move. */
const pass = 'pass';

/** Reads the moves that a claim begins with, and what follows them; absent where it begins with none. */
export function afterMoves(
  words: readonly Word[],
  end: number,
): { readonly after: AfterMoves; readonly rest: readonly Word[] } | undefined {
  if (words[0]?.text !== 'after') return undefined;
  const moves: string[] = [];
  for (const [index, word] of words.entries()) {
    if (index === 0) continue;
    const text = word.text.replace(/:$/, '').replace(/^\d+\.+/, '');
    if (text !== '') {
      if (!isMove(text)) {
        throw new UnreadableClaim({
          reason: `\`${text}\` is not written as a move`,
          offset: word.offset,
          length: word.text.length,
          hint: 'Write it like `after Nf3: pinned f3`, with a colon behind the moves.',
        });
      }
      moves.push(text);
    }
    if (moves.length > mostMoves) {
      throw new UnreadableClaim({
        reason: `more than ${mostMoves} moves stand behind \`after\``,
        offset: word.offset,
        length: word.text.length,
        hint: 'Play the line in a block of moves and claim it there.',
      });
    }
    if (!word.text.endsWith(':')) continue;
    if (moves.length === 0) break;
    return { after: { judgeThere: judgeAfter(moves) }, rest: words.slice(index + 1) };
  }
  const [reason, offset] =
    moves.length === 0
      ? ['a move is missing behind `after`', (words[0]?.offset ?? 0) + 'after'.length]
      : ['the colon behind the moves of `after` is missing', end];
  const hint = 'Write it like `after Nf3: pinned f3`.';
  throw new UnreadableClaim({ reason, offset, length: 0, hint });
}

function isMove(text: string): boolean {
  if (text === pass) return true;
  const played = playMove(initialPosition, text);
  return !isMoveFault(played) || played.kind !== 'unreadable';
}

/** Several claims speak of what the same moves lead to, so these are played once. */
function judgeAfter(moves: readonly string[]): AfterMoves['judgeThere'] {
  const reached = new WeakMap<ClaimContext, ReturnType<typeof playAll>>();
  return (judge) => (context) => {
    const there = reached.get(context) ?? playAll(context, moves);
    reached.set(context, there);
    if ('holds' in there) return there;
    const { holds, because, instead } = judge(there.context);
    return {
      holds,
      because: `after ${there.played.join(' ')}, ${because}`,
      ...(instead !== undefined && { instead: `after ${moves.join(' ')}: ${instead}` }),
    };
  };
}

function playAll(context: ClaimContext, moves: readonly string[]) {
  let { position, before } = context;
  const played: string[] = [];
  const castlings: PlayedMove[] = [];
  for (const written of moves) {
    if (written === pass) {
      if (inCheck(position)) {
        return empty(`${sideName(sideToMove(position))} is in check and cannot pass`) as Verdict;
      }
      position = passMove(position);
      before = undefined;
      played.push(pass);
      continue;
    }
    const move = playMove(position, written);
    if (isMoveFault(move)) return empty(`${written} cannot be played: ${move.reason}`) as Verdict;
    if (move.san.startsWith('O-O')) castlings.push(move);
    before = position;
    position = move.after;
    played.push(move.san);
  }
  const { before: _, ...rest } = context;
  return {
    played,
    context: {
      ...rest,
      position,
      ...(before && { before }),
      covered: context.coveredFrom?.(position) ?? [],
      castlings: () => [...context.castlings(), ...castlings],
    } satisfies ClaimContext,
  };
}
