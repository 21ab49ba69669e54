import type { Heading } from 'mdast';
import { positionAddress, repeatedAddress } from '../contract/index.ts';
import type { Block, Chapter, ExerciseBlock } from '../model/index.ts';
import type { IdGiver } from './id-giver.ts';
import { lineNames } from './line-names.ts';
import { namedIds, offsetOf } from './named-ids.ts';
import { shownNodes } from './shown-nodes.ts';

export type LineKind = 'answer' | 'also' | 'wrong';
export const lineKinds = ['answer', 'also', 'wrong'] as const;

/** The ids of a chapter's page. They are a function of the chapter: no other chapter changes them. */
export interface ChapterIds {
  /** Of a move, or of a block's start. What a block does not show has the id of its start. */
  ofNode(block: Pick<Block, 'key'>, node: number): string;
  /** Of a line of an exercise; that of the move with an index is `${id}-${index}`. */
  ofLine(block: Pick<ExerciseBlock, 'key'>, kind: LineKind, line: number): string;
  /** Absent for a heading that the page does not show: the chapter's title. */
  ofHeading(heading: Heading): string | undefined;
  /** By the address of the position alone, the first place in the text that shows it. */
  readonly positions: ReadonlyMap<string, string>;
  /** Whether the page has an id, as far as the author's own HTML does not bring more. */
  has(id: string): boolean;
  /** Gives ids that nothing on the page has: one giver for each time that the page is made. */
  more(): IdGiver;
}

const known = new WeakMap<Chapter, ChapterIds>();

export function chapterIds(chapter: Chapter): ChapterIds {
  const found = known.get(chapter) ?? makeIds(chapter);
  known.set(chapter, found);
  return found;
}

function makeIds(chapter: Chapter): ChapterIds {
  const { names, headings, giver } = namedIds(chapter);
  const ids = giver.copy();
  const positions = new Map<string, string>();
  const nodes = new Map<string, readonly string[]>();
  for (const block of inOrderOfWeight(chapter.blocks)) {
    nodes.set(block.key, giveNodes(block, { ids, names, positions }));
  }
  for (const block of chapter.blocks) {
    // Where no move shows a position, what shows it has its address as well.
    const position = 'position' in block ? block.position : undefined;
    const [id] = nodes.get(block.key) ?? [];
    if (position === undefined || id === undefined) continue;
    const plain = positionAddress(position.key);
    if (!positions.has(plain)) positions.set(plain, id);
  }
  const lines = giveLines(chapter.blocks, ids);
  return {
    ofNode({ key }, node) {
      const own = nodes.get(key);
      return own?.[node] ?? own?.[0] ?? '';
    },
    ofLine: ({ key }, kind, line) => lines.get(key)?.[kind][line] ?? '',
    ofHeading: (heading) => headings.get(offsetOf(heading)),
    positions,
    has: (id) => ids.has(id),
    more: () => ids.copy(),
  };
}

/** What teaches a line comes before games, whose moves only illustrate: an address leads there first. */
function inOrderOfWeight(blocks: readonly Block[]): Block[] {
  const games = blocks.filter(({ kind }) => kind === 'game');
  return [...blocks.filter(({ kind }) => kind !== 'game'), ...games];
}

interface Giving {
  readonly ids: IdGiver;
  readonly names: ReadonlyMap<string, string>;
  readonly positions: Map<string, string>;
}

/** The ids of a block's nodes, by index; where one is missing, the first stands for it. */
function giveNodes(block: Block, { ids, names, positions }: Giving): readonly string[] {
  if (block.kind !== 'moves' && block.kind !== 'game') return [ids.give(wishOf(block))];
  const given: string[] = [];
  const lineOf = lineNames(block.nodes);
  for (const { index, labels, position } of shownNodes(block)) {
    const plain = position && positionAddress(position.key);
    const name = labels.map((label) => names.get(label)).find((id) => id !== undefined);
    if (name !== undefined) given[index] = name;
    // A move that cannot be played is only text; a start that is no position is still a block.
    else if (plain === undefined) given[index] = given[0] ?? ids.give(block.kind);
    else if (!ids.has(plain)) given[index] = ids.give(plain);
    else given[index] = ids.give(repeatedAddress(plain, lineOf(index)));
    if (plain !== undefined && !positions.has(plain)) positions.set(plain, given[index] ?? '');
  }
  return given;
}

/** What a block is known by that shows one position, or a pattern: what stands on its board. */
function wishOf(block: Block): string {
  if (block.kind === 'pattern') return `pattern-${block.placement.replaceAll('/', '-')}`;
  const position = 'position' in block ? block.position : undefined;
  if (position === undefined) return block.kind;
  return positionAddress(position.key).replace('at', block.kind);
}

type LineIds = Readonly<Record<LineKind, readonly string[]>>;

/** The lines of exercises are led to from nowhere but their own board, so a number will do. */
function giveLines(blocks: readonly Block[], ids: IdGiver): ReadonlyMap<string, LineIds> {
  const exercises = blocks.filter((block) => block.kind === 'exercise');
  return new Map(
    exercises.map((block, index) => {
      const given = (kind: LineKind) =>
        block[kind].map((_, line) => ids.give(`exercise-${index + 1}-${kind}-${line + 1}`));
      return [block.key, { answer: given('answer'), also: given('also'), wrong: given('wrong') }];
    }),
  );
}
