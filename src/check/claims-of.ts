import type { Position } from '../chess/index.ts';
import type { Place } from '../diagnostics/index.ts';
import type { Block, Course, MoveNode, NodeRef, Statement } from '../model/index.ts';
import { castlingsTo } from './castlings.ts';
import type { ClaimContext, SearchBudget } from './claims/index.ts';
import { moveName } from './move-name.ts';
import { positionOfLabel } from './occurrences.ts';

/** A claim of the course, where it stands and what it is judged by. */
export interface ClaimInCourse {
  readonly statement: Statement;
  /** `after 7...Be7`, `in this diagram`, `before the first move`. */
  readonly where: string;
  /** Absent where the position could not be reached; that has a finding of its own. */
  readonly context?: ClaimContext;
  /** The place of a stretch of the claim's text; of all of it where it does not stand as read. */
  readonly placeOf: (offset: number, length: number) => Place;
}

/** Every claim that an author wrote: in comments, in prose and in diagrams. */
export function* claimsOf(course: Course, search?: SearchBudget): Generator<ClaimInCourse> {
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      for (const node of block.nodes) {
        for (const statement of node.statements) {
          if (statement.name !== 'claim') continue;
          const ref = { chapter: chapter.index, block: block.index, node: node.index };
          yield inCourse({ course, search }, statement, whereOf(block, node), node.position, ref);
        }
      }
      if (block.kind !== 'diagram') continue;
      for (const statement of block.claims) {
        yield inCourse(
          { course, search },
          statement,
          'in this diagram',
          block.position,
          block.shows,
        );
      }
    }
  }
}

function inCourse(
  { course, search }: { readonly course: Course; readonly search: SearchBudget | undefined },
  statement: Statement,
  where: string,
  position: Position | undefined,
  ref: NodeRef | undefined,
): ClaimInCourse {
  const claim = { statement, where, placeOf: placesIn(statement) };
  if (!position) return claim;
  const context: ClaimContext = {
    position,
    side: course.settings.side,
    covered: course.graph[position.key]?.moves.map(({ san }) => san) ?? [],
    castlings: () => (ref ? castlingsTo(course, ref) : []),
    labelled: (name) => positionOfLabel(course, name),
    ...(search && { search }),
  };
  return { ...claim, context };
}

function whereOf(block: Block, node: MoveNode): string {
  const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
  if (node.move || node.written) return `after ${moveName(node, parent)}`;
  return block.kind === 'diagram' ? 'in this diagram' : 'before the first move of the block';
}

/** What stands around the text of a claim: `:claim[` and `]`, nothing, or quotes in YAML. */
const opening = new Map([
  [':claim[]'.length, ':claim['.length],
  [0, 0],
  [2, 1],
]);

function placesIn({ place, argument }: Statement): ClaimInCourse['placeOf'] {
  const span = place.end.offset - place.start.offset;
  const before = opening.get(span - argument.length);
  return (offset, length) => {
    // A claim over two lines, or with wide gaps, is read with single spaces.
    if (before === undefined || place.start.line !== place.end.line) return place;
    const point = (at: number) => ({
      line: place.start.line,
      column: place.start.column + before + at,
      offset: place.start.offset + before + at,
    });
    return { file: place.file, start: point(offset), end: point(offset + length) };
  };
}
