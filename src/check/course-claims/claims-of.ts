import type { PlayedMove } from '../../chess/index.ts';
import { type Place, withinLine } from '../../diagnostics/index.ts';
import {
  type Block,
  type Chapter,
  castledBefore,
  type MoveNode,
  type Statement,
  treesOf,
} from '../../model/index.ts';
import type { ClaimContext, SearchBudget } from '../claims/index.ts';
import { moveName } from '../shared/move-name.ts';
import type { CourseView } from '../view/index.ts';

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

/**
 * Every claim that an author wrote in a chapter: in comments, those of the lines of exercises too, in prose, in
 * diagrams and in patterns. A pattern's have no position here: they are judged wherever it stands.
 */
export function* claimsOf(
  chapter: Chapter,
  course: CourseView,
  search?: SearchBudget,
): Generator<ClaimInCourse> {
  for (const block of chapter.blocks) {
    for (const nodes of treesOf(block)) {
      const castled = castledTo(block, nodes);
      for (const node of nodes) {
        for (const statement of node.statements) {
          if (statement.name !== 'claim') continue;
          const { position } = node;
          const before = node.move && nodes[node.parent ?? -1]?.position;
          const castlings = () => castledBefore({ nodes, castled }, node.index);
          const where = whereOf(block, nodes, node);
          yield inCourse(statement, where, { position, before, castlings }, course, search);
        }
      }
    }
    if (block.kind === 'pattern') {
      for (const statement of block.claims) {
        yield { statement, where: 'in this pattern', placeOf: placesIn(statement) };
      }
    }
    if (block.kind !== 'diagram') continue;
    // A diagram of a name has no nodes; the way to it is that of the name.
    const last = block.at ? 0 : (block.shows?.node ?? 0);
    const castlings = () => castledBefore(block, last);
    const { position } = block;
    const before = block.at ? undefined : block.nodes[block.nodes[last]?.parent ?? -1]?.position;
    const around = { position, before, castlings };
    for (const statement of block.claims) {
      yield inCourse(statement, 'in this diagram', around, course, search);
    }
  }
}

function inCourse(
  statement: Statement,
  where: string,
  {
    position,
    before,
    castlings,
  }: Pick<ClaimContext, 'castlings'> & {
    readonly position: ClaimContext['position'] | undefined;
    readonly before: ClaimContext['position'] | undefined;
  },
  course: CourseView,
  search: SearchBudget | undefined,
): ClaimInCourse {
  const claim = { statement, where, placeOf: placesIn(statement) };
  if (!position) return claim;
  const context: ClaimContext = {
    position,
    ...(before && { before }),
    side: course.side,
    covered: course.ask('covered', position.key),
    coveredFrom: ({ key }) => course.ask('covered', key),
    castlings,
    labelled: (name) => course.ask('name', name) ?? undefined,
    ...(search && { search }),
  };
  return { ...claim, context };
}

/** The castlings that led to where a tree of a block starts. */
function castledTo(block: Block, nodes: readonly MoveNode[]): readonly PlayedMove[] {
  if (block.kind !== 'exercise' || nodes === block.nodes || block.nodes.length === 0) {
    return block.castled;
  }
  // The lines of an exercise go on from what it shows, which is the end of its own moves.
  return castledBefore(block, block.shows?.node ?? 0);
}

/** Where a node of one of a block's trees stands, as messages say it. */
export function whereOf(block: Block, nodes: readonly MoveNode[], node: MoveNode): string {
  const parent = node.parent === undefined ? undefined : nodes[node.parent];
  if (node.move || node.written) return `after ${moveName(node, parent)}`;
  if (block.kind === 'exercise') return 'in this exercise';
  return block.kind === 'diagram' ? 'in this diagram' : 'before the first move of the block';
}

/** What stands around the text of a claim: `:claim[` and `]`, nothing, or quotes in YAML. */
const opening = new Map([
  [':claim[]'.length, ':claim['.length],
  [0, 0],
  [2, 1],
]);

export function placesIn({ place, argument }: Statement): ClaimInCourse['placeOf'] {
  const span = place.end.offset - place.start.offset;
  const before = opening.get(span - argument.length);
  return (offset, length) => {
    // A claim over two lines, or with wide gaps, is read with single spaces.
    if (before === undefined || place.start.line !== place.end.line) return place;
    return withinLine(place, before + offset, before + offset + length);
  };
}
