import { pieceSprite } from '../../draw/index.ts';
import {
  type Block,
  type Chapter,
  type Course,
  chapterAt,
  type MoveNode,
  type NodeRef,
} from '../../model/index.ts';
import { gameMoves } from './game-moves.ts';

/** Where everything of the course stands in the site. All addresses are relative. */
export interface Addresses {
  /** File name of a chapter's page. */
  page(chapter: string): string;
  /** Id of a move, or of its block for the start position, within its page. */
  id(ref: NodeRef): string;
  /** Address of a move as seen from the page of chapter `from`, or from outside all chapters. */
  href(ref: NodeRef, from?: string): string;
  /** Takes an id on a chapter's page that nothing else has: `wish`, else `wish-2`, … */
  claimId(chapter: string, wish: string): string;
}

/** Ids that every page has already: its text, and the symbols that boards are drawn with. */
const ofThePage: ReadonlySet<string> = new Set([
  'page-text',
  ...[...pieceSprite().matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? ''),
]);

/** Gives out the ids of a page: `wish`, else `wish-2`, … */
export function createIds(): (wish: string) => string {
  const taken = new Set<string>();
  /** For a wish that was met before, the last number that was put behind it. */
  const numbers = new Map<string, number>();
  return (wish) => {
    const free = (id: string) => id !== '' && !taken.has(id) && !ofThePage.has(id);
    let id = wish;
    let count = numbers.get(wish) ?? 1;
    while (!free(id)) {
      count++;
      id = `${wish === '' ? 'x' : wish}-${count}`;
    }
    numbers.set(wish, count);
    taken.add(id);
    return id;
  };
}

/**
 * Gives every move of the course its id: its label, else `b2-12-Nf3` (`b2-12b-Nf6` for Black).
 * A block's start position has the id of the block, `b2`; so has all that a block does not show.
 * `ending` is that of the chapters' files.
 */
export function assignAddresses(course: Course, ending = 'html'): Addresses {
  const pages = new Map(course.chapters.map(({ file }) => [file, createIds()]));
  const claimId = (chapter: string, wish: string): string =>
    (pages.get(chapter) ?? createIds())(wish);
  const ids = new Map<string, readonly (string | undefined)[]>();
  for (const chapter of course.chapters) {
    // Labels first: they are the addresses that last, and must not yield to a move's.
    const labelled = new Map(labelsOf(chapter, claimId));
    for (const [index, block] of chapter.blocks.entries()) {
      const name = `b${index + 1}`;
      const start = block.kind === 'moves' ? undefined : claimId(chapter.file, name);
      const own = shownMoves(block).map((node) => {
        if (node === undefined) return start;
        const [label] = node.labels;
        const id = label === undefined ? undefined : labelled.get(label);
        return id ?? claimId(chapter.file, readableId(name, node));
      });
      ids.set(`${chapter.file} ${block.key}`, own);
    }
  }

  const page = (chapter: string): string =>
    `${chapterAt(course, { chapter })?.id ?? 'index'}.${ending}`;
  const id = (ref: NodeRef): string => {
    const block = ids.get(`${ref.chapter} ${ref.block}`);
    return block?.[ref.node] ?? block?.[0] ?? '';
  };
  const href = (ref: NodeRef, from?: string): string =>
    `${ref.chapter === from ? '' : page(ref.chapter)}#${encodeURIComponent(id(ref))}`;
  return { page, id, href, claimId };
}

/** The moves that a block shows, by their index; the block itself stands for the rest. */
function shownMoves(block: Block): readonly (MoveNode | undefined)[] {
  if (block.kind === 'moves') return block.nodes;
  if (block.kind !== 'game') return [undefined];
  const shown = new Set(gameMoves(block).source);
  return block.nodes.map((node) => (node.index > 0 && shown.has(node.index) ? node : undefined));
}

function labelsOf(
  chapter: Chapter,
  claimId: Addresses['claimId'],
): (readonly [label: string, id: string])[] {
  const nodes = chapter.blocks.flatMap(shownMoves);
  const names = new Set(nodes.flatMap((node) => node?.labels ?? []));
  return [...names].map((name) => [name, claimId(chapter.file, name)]);
}

function readableId(block: string, { move }: MoveNode): string {
  if (move === undefined) return block;
  const side = move.color === 'white' ? '' : 'b';
  return `${block}-${move.number}${side}-${move.san.replace(/[+#=]/g, '')}`;
}
