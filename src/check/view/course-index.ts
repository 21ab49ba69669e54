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
  /** The chapter's file. */
  readonly chapter: string;
  /** The block's key. */
  readonly block: string;
  readonly node: NodeSummary;
  /** `key` of the position before; absent for a start position. */
  readonly before: string | undefined;
}

/** The summaries of a course as tables. */
export interface CourseIndex {
  /** Where each chapter stands in the course, by its file. */
  readonly order: ReadonlyMap<string, number>;
  readonly names: ReadonlyMap<string, NameInCourse>;
  /** What links into each chapter may name, by its file and by its page. */
  readonly targets: ReadonlyMap<string, LinkTargets & { readonly chapter: string }>;
  /** Where each position stands, by its key, in the order of the course. */
  readonly at: ReadonlyMap<string, readonly Occurrence[]>;
  /** The moves that are played from each position, in the order of the course. */
  readonly from: ReadonlyMap<string, readonly Occurrence[]>;
  readonly judgements: readonly DatedJudgement[];
  /** How many patterns the course has. */
  readonly patterns: number;
  /** The nodes of each block, by `file key`. */
  readonly blocks: ReadonlyMap<string, ReadonlyMap<number, Occurrence>>;
  /** What an engine said of positions. */
  readonly facts: EngineFacts;
  /** The other courses of its shelf; absent where nobody looked for a shelf. */
  readonly shelf?: CourseFiles['shelf'];
  /** The blocks that start from a name or that a text links below, by `file key`. */
  readonly joined: ReadonlyMap<string, Pick<BlockSummary, 'from' | 'below'>>;
}

export function makeCourseIndex(
  summaries: readonly ChapterSummary[],
  facts: EngineFacts = noFacts,
  shelf?: CourseFiles['shelf'],
): CourseIndex {
  const order = new Map(summaries.map(({ file }, index) => [file, index]));
  const targets = new Map<string, LinkTargets & { readonly chapter: string }>();
  const at = new Map<string, Occurrence[]>();
  const from = new Map<string, Occurrence[]>();
  const blocks = new Map<string, Map<number, Occurrence>>();
  const joined = new Map<string, Pick<BlockSummary, 'from' | 'below'>>();
  for (const { file, id, targets: own, blocks: all } of summaries) {
    targets.set(file, { ...own, chapter: file });
    targets.set(`${id}.html`, { ...own, chapter: file });
    for (const summary of all) {
      const { key: block, nodes } = summary;
      if (summary.from ?? summary.below) joined.set(`${file} ${block}`, summary);
      const byNode = new Map<number, Occurrence>();
      blocks.set(`${file} ${block}`, byNode);
      for (const node of nodes) {
        const before = node.parent === undefined ? undefined : byNode.get(node.parent)?.node.key;
        const here: Occurrence = { chapter: file, block, node, before };
        byNode.set(node.index, here);
        add(at, node.key, here);
        if (before !== undefined) add(from, before, here);
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
    at,
    from,
    patterns,
    judgements,
    blocks,
    joined,
    facts,
    ...(shelf && { shelf }),
  };
}

function add(map: Map<string, Occurrence[]>, key: string, value: Occurrence): void {
  const there = map.get(key);
  if (there) there.push(value);
  else map.set(key, [value]);
}
