import type { CheckedCourse } from '../../check/index.ts';
import {
  initialPosition,
  isFenFault,
  isMoveFault,
  type Position,
  parseFen,
  playMove,
} from '../../chess/index.ts';
import { nearestName } from '../../diagnostics/index.ts';
import type { LastMove } from '../../draw/index.ts';
import { parseMovetext } from '../../movetext/index.ts';
import { nodeAt } from '../../render/index.ts';
import { PublishError } from '../publish-error.ts';

/** A position to draw, and the move that led to it where one did. */
export interface FoundPosition {
  readonly position: Position;
  readonly lastMove?: LastMove;
}

/** The position that a course has given a name. @throws PublishError if there is none. */
export function positionOfLabel({ course }: CheckedCourse, name: string): FoundPosition {
  const label = Object.hasOwn(course.labels, name) ? course.labels[name] : undefined;
  const node = label && nodeAt(course, label.ref);
  if (node?.position === undefined) {
    const near = nearestName(name, Object.keys(course.labels));
    throw new PublishError(
      `no position of the course is named \`${name}\``,
      near === undefined ? 'chapters give names with `:here[name]`' : `did you mean \`${near}\`?`,
    );
  }
  return found(node.position, node.move);
}

/** @throws PublishError that quotes what is wrong. */
export function positionOfFen(text: string): FoundPosition {
  const position = parseFen(text);
  if (!isFenFault(position)) return { position };
  const { reason, offset } = position;
  const at = /^[^\s/]+/.exec(text.slice(offset))?.[0];
  throw new PublishError(
    `this FEN is no position: ${reason}${at === undefined ? '' : ` (at \`${at}\`)`}`,
    'copy the FEN again from where it was made, or set the piece right by hand',
  );
}

/** The position after moves from the start, such as `1. d4 d5`. @throws PublishError. */
export function positionAfter(text: string): FoundPosition {
  const { line, problems } = parseMovetext(text);
  const [problem] = problems;
  if (problem !== undefined) throw new PublishError(problem.message, problem.hint);
  if (line.moves.length === 0) {
    throw new PublishError('no moves are given', 'write them as in a chapter: "1. d4 d5"');
  }
  let at: FoundPosition = { position: initialPosition };
  for (const { san } of line.moves) {
    const played = playMove(at.position, san.text);
    if (isMoveFault(played)) {
      const meant = played.meant.map((move) => `\`${move}\``).join(' or ');
      throw new PublishError(
        `\`${san.text}\` cannot be played: ${played.reason}`,
        meant === '' ? 'give moves that can be played from the start' : `was ${meant} meant?`,
      );
    }
    at = found(played.after, played);
  }
  return at;
}

function found(position: Position, move: LastMove | undefined): FoundPosition {
  return move === undefined
    ? { position }
    : { position, lastMove: { from: move.from, to: move.to } };
}
