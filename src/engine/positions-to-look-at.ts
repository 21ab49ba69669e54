import { isMate, isStalemate, numberedSan, type Position } from '../chess/index.ts';
import {
  type Block,
  type Course,
  type ExerciseBlock,
  isAdvice,
  type MoveNode,
  type MovesBlock,
  taughtInCourse,
} from '../model/index.ts';
import { isAssessment } from '../movetext/index.ts';

/** A position that the course says something of. */
export interface PositionToLookAt {
  readonly position: Position;
  /** Where it stands first: `chapters/1.md:12`. */
  readonly place: string;
  /** The move that leads to it, such as `7...Be7`; empty where a block starts there. */
  readonly after: string;
}

/**
 * The positions of a course that an engine can judge something in, each once, in the order of the course: before and
 * after advice and replies, behind an assessment sign, those of exercises and behind the moves that these name. Where
 * the game has ended there is nothing to search.
 */
export function positionsToLookAt(course: Course): PositionToLookAt[] {
  const found = new Map<string, PositionToLookAt>();
  const add = (node: MoveNode | undefined, block: Block): void => {
    const position = node?.position;
    if (!position || found.has(position.key) || isMate(position) || isStalemate(position)) return;
    const { file, start } = node.written?.place ?? block.place;
    const after = node.move ? numberedSan(node.move) : '';
    found.set(position.key, { position, place: `${file}:${start.line}`, after });
  };
  const taught = taughtInCourse(course);
  for (const { blocks } of course.chapters) {
    for (const block of blocks) {
      if (block.kind === 'moves') addMoves(block, course, { taught, add });
      if (block.kind === 'exercise') addExercise(block, add);
    }
  }
  return [...found.values()];
}

type Add = (node: MoveNode | undefined, block: Block) => void;

function addMoves(
  block: MovesBlock,
  { settings: { side } }: Course,
  { taught, add }: { readonly taught: ReadonlySet<MoveNode>; readonly add: Add },
): void {
  for (const node of block.nodes) {
    const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
    const isReply = side !== 'both' && node.move !== undefined && node.move.color !== side;
    const isAdvised = parent !== undefined && isAdvice(node, parent, side);
    if (taught.has(node) && (isReply || isAdvised)) {
      add(parent, block);
      add(node, block);
    }
    if (node.glyphs.some(isAssessment)) add(node, block);
  }
}

function addExercise(block: ExerciseBlock, add: Add): void {
  const lines = [...block.answer, ...block.also, ...block.wrong];
  for (const line of lines) {
    const [start] = line;
    add(start, block);
    add(line[start?.children[0] ?? -1], block);
  }
}
