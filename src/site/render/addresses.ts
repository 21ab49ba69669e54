import type { Chapter, Course, MoveNode, MovesBlock, NodeRef } from '../../model/types.ts';

/** Where everything of the course stands in the site. All addresses are relative. */
export interface Addresses {
  /** File name of a chapter's page. */
  page(chapter: number): string;
  /** Id of a move, or of its block for the start position, within its page. */
  id(ref: NodeRef): string;
  /** Address of a move as seen from the page of chapter `from`, or from outside all chapters. */
  href(ref: NodeRef, from?: number): string;
  /** Takes an id on a chapter's page that nothing else has: `wish`, else `wish-2`, … */
  claimId(chapter: number, wish: string): string;
}

/** Ids of the drawn boards' parts and of the page itself. */
const ofThePage = /^(?:board|piece|turn|coordinate|dark|page)-/;

/**
 * Gives every move of the course its id: its label, else `b2-12-Nf3` (`b2-12b-Nf6` for Black).
 * A block's start position has the id of the block, `b2`.
 */
export function assignAddresses(course: Course): Addresses {
  const taken = course.chapters.map(() => new Set<string>());
  const claimId = (chapter: number, wish: string): string => {
    const ids = taken[chapter] ?? new Set();
    const free = (id: string) => id !== '' && !ids.has(id) && !ofThePage.test(id);
    let id = wish;
    for (let count = 2; !free(id); count++) id = `${wish === '' ? 'x' : wish}-${count}`;
    ids.add(id);
    return id;
  };
  // Labels first: they are the addresses that last, and must not yield to a move's.
  const labelled = course.chapters.map((chapter) => new Map(labelsOf(chapter, claimId)));
  const ids = course.chapters.map((chapter) =>
    chapter.blocks.map((block) => {
      if (block.kind !== 'moves') return [];
      const name = `b${block.index + 1}`;
      return block.nodes.map((node) => {
        const [label] = node.labels;
        const id = label === undefined ? undefined : labelled[chapter.index]?.get(label);
        return id ?? claimId(chapter.index, readableId(name, node));
      });
    }),
  );

  const page = (chapter: number): string => `${course.chapters[chapter]?.id ?? 'index'}.html`;
  const id = (ref: NodeRef): string => ids[ref.chapter]?.[ref.block]?.[ref.node] ?? '';
  const href = (ref: NodeRef, from?: number): string =>
    `${ref.chapter === from ? '' : page(ref.chapter)}#${encodeURIComponent(id(ref))}`;
  return { page, id, href, claimId };
}

function labelsOf(
  chapter: Chapter,
  claimId: Addresses['claimId'],
): (readonly [label: string, id: string])[] {
  const moves = chapter.blocks.filter((block): block is MovesBlock => block.kind === 'moves');
  const names = new Set(moves.flatMap((block) => block.nodes.flatMap((node) => node.labels)));
  return [...names].map((name) => [name, claimId(chapter.index, name)]);
}

function readableId(block: string, { move }: MoveNode): string {
  if (move === undefined) return block;
  const side = move.color === 'white' ? '' : 'b';
  return `${block}-${move.number}${side}-${move.san.replace(/[+#=]/g, '')}`;
}
