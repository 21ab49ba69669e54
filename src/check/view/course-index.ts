import type { LinkTargets } from '../../addresses/index.ts';
import { type EngineFacts, noFacts } from '../../facts/index.ts';
import { firstNames, type NameInCourse } from '../../model/index.ts';
import type { CourseFiles } from '../../read/index.ts';
import type {
  BlockSummary,
  ChapterSummary,
  DatedJudgement,
  NodeSummary,
} from '../chapter-summary.ts';

/** A place of a position in the `moves` blocks of a course. */
export interface Occurrence {
  readonly chapter: string;
  readonly block: string;
  readonly node: NodeSummary;
  /** `key` of the position before; absent for a start position. */
  readonly before: string | undefined;
}

export type NodesOfBlock = readonly (Occurrence | undefined)[];

/** A position in the `moves` blocks of a course; both lists are in the order of the course. */
export interface PositionInCourse {
  readonly at: readonly Occurrence[];
  readonly from: readonly Occurrence[];
}

/** The summaries of a course as tables. */
export interface CourseIndex {
  /** Where each chapter stands in the course, by its file. */
  readonly order: ReadonlyMap<string, number>;
  readonly names: ReadonlyMap<string, NameInCourse>;
  /** What links into each chapter may name, by its file and by its page. */
  readonly targets: ReadonlyMap<string, LinkTargets & { readonly chapter: string }>;
  /** By `Position.key`, in the order in which they stand first. */
  readonly positions: ReadonlyMap<string, PositionInCourse>;
  readonly judgements: readonly DatedJudgement[];
  /** How many patterns the course has. */
  readonly patterns: number;
  /** The nodes of each block that have a position, by `file key` and their index. */
  readonly blocks: ReadonlyMap<string, NodesOfBlock>;
  /** What an engine said of positions. */
  readonly facts: EngineFacts;
  /** The other courses of its shelf; absent where nobody looked for a shelf. */
  readonly shelf?: CourseFiles['shelf'];
  /** The blocks that start from a name or that a text links below, by `file key`. */
  readonly joined: ReadonlyMap<string, Pick<BlockSummary, 'from' | 'below'>>;
}

interface PositionInWork {
  readonly at: Occurrence[];
  from: Occurrence[];
}

/** Replaced by the first move: pushed to an empty list, that would take the room of seventeen. */
const noMoves: Occurrence[] = [];

export function makeCourseIndex(
  summaries: readonly ChapterSummary[],
  facts: EngineFacts = noFacts,
  shelf?: CourseFiles['shelf'],
): CourseIndex {
  const order = new Map(summaries.map(({ file }, index) => [file, index]));
  const targets = new Map<string, LinkTargets & { readonly chapter: string }>();
  const positions = new Map<string, PositionInWork>();
  const blocks = new Map<string, NodesOfBlock>();
  const joined = new Map<string, Pick<BlockSummary, 'from' | 'below'>>();
  for (const { file, id, targets: own, blocks: all } of summaries) {
    targets.set(file, { ...own, chapter: file });
    targets.set(`${id}.html`, { ...own, chapter: file });
    for (const summary of all) {
      const { key: block, nodes } = summary;
      if (summary.from ?? summary.below) joined.set(`${file} ${block}`, summary);
      const byNode: Occurrence[] = [];
      blocks.set(`${file} ${block}`, byNode);
      // Looked up once a node: keys are long, and a course has a hundred thousand of them.
      const shown: PositionInWork[] = [];
      for (const node of nodes) {
        const { index, parent = -1, key } = node;
        const here: Occurrence = { chapter: file, block, node, before: byNode[parent]?.node.key };
        byNode[index] = here;
        const position = positions.get(key);
        if (position) position.at.push(here);
        const there = position ?? { at: [here], from: noMoves };
        if (!position) positions.set(key, there);
        shown[index] = there;
        const before = shown[parent];
        if (before?.from === noMoves) before.from = [here];
        else before?.from.push(here);
      }
    }
  }
  const patterns = summaries.reduce((sum, summary) => sum + summary.patterns.length, 0);
  const judgements = summaries.flatMap((summary) => summary.judgements);
  const names = firstNames(summaries);
  return {
    order,
    names,
    targets,
    positions,
    patterns,
    judgements,
    blocks,
    joined,
    facts,
    ...(shelf && { shelf }),
  };
}
