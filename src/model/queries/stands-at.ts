import type { Place } from '../../diagnostics/index.ts';
import { placeOfNode } from '../place-of-node.ts';
import type {
  Block,
  Chapter,
  DirectiveNode,
  MoveNode,
  NodeRef,
  PositionLinkNode,
  ProseMovesNode,
} from '../types.ts';
import { speaksOf } from './spoken-of.ts';
import { textNodes, treesOf } from './walk-chapter.ts';

/** The innermost thing at an offset of a chapter; `place` is all of it. */
export type StandsAt = { readonly place: Place } & (
  | {
      readonly kind: 'move';
      readonly block: Block;
      readonly node: MoveNode;
      /** Absent in the lines of an exercise, which have no address. */
      readonly ref?: NodeRef;
    }
  | { readonly kind: 'directive'; readonly directive: DirectiveNode; readonly of?: NodeRef }
  | { readonly kind: 'link'; readonly link: PositionLinkNode }
  | { readonly kind: 'moves-in-text'; readonly moves: ProseMovesNode }
  | { readonly kind: 'block'; readonly block: Block }
);

/** Finds the innermost thing at an offset of a chapter's file; undefined for plain words. */
export function standsAt(chapter: Chapter, offset: number): StandsAt | undefined {
  return inText(chapter, offset) ?? inBlock(chapter, offset);
}

function inText(chapter: Chapter, offset: number): StandsAt | undefined {
  const { file } = chapter;
  const standing: StandsAt[] = [
    ...textNodes(chapter, 'courseDirective').map((directive): StandsAt => {
      const of = speaksOf(chapter, directive);
      const place = placeOfNode(directive, file);
      return { kind: 'directive', place, directive, ...(of && { of }) };
    }),
    ...textNodes(chapter, 'positionLink').map(
      (link): StandsAt => ({ kind: 'link', place: placeOfNode(link, file), link }),
    ),
    ...textNodes(chapter, 'proseMoves').map(
      (moves): StandsAt => ({ kind: 'moves-in-text', place: placeOfNode(moves, file), moves }),
    ),
  ];
  let found: StandsAt | undefined;
  for (const here of standing) {
    if (holds(here.place, offset) && (!found || isWithin(here.place, found.place))) found = here;
  }
  return found;
}

function inBlock({ file, blocks }: Chapter, offset: number): StandsAt | undefined {
  const block = blocks.find(({ place }) => holds(place, offset));
  if (!block) return undefined;
  for (const tree of treesOf(block)) {
    // The moves of a game file have their places in that file.
    const node = tree.find(
      ({ written }) => written?.place.file === file && holds(written.place, offset),
    );
    if (!node?.written) continue;
    const ref = { chapter: file, block: block.key, node: node.index };
    const { place } = node.written;
    return { kind: 'move', place, block, node, ...(tree === block.nodes && { ref }) };
  }
  return { kind: 'block', place: block.place, block };
}

function holds({ start, end }: Place, offset: number): boolean {
  return start.offset <= offset && offset <= end.offset;
}

function isWithin(inner: Place, outer: Place): boolean {
  return inner.start.offset >= outer.start.offset && inner.end.offset <= outer.end.offset;
}
