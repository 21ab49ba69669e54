import { toString as plainText } from 'mdast-util-to-string';
import type { ChapterSummary } from '../check/index.ts';
import { numberedSan } from '../chess/index.ts';
import { topOf } from '../diagnostics/index.ts';
import {
  type Block,
  type Chapter,
  countWords,
  type MoveNode,
  minutesToRead,
  placeOfNode,
  treesOf,
} from '../model/index.ts';
import type { ChapterInShort, RuleBlock, RuleChapter, RuleMove, RuleText } from './types.ts';

/** A chapter as rules of a course's own see it. */
export function chapterForRules(chapter: Chapter): RuleChapter {
  const { file, id, title, summary, draft = false, learn, body, blocks, names } = chapter;
  return {
    file,
    id,
    title,
    ...(summary !== undefined && { summary }),
    draft,
    ...(learn && { learn }),
    place: topOf(file),
    words: countWords(chapter),
    minutes: minutesToRead(chapter),
    headings: body.children.flatMap((node) =>
      node.type === 'heading'
        ? [{ depth: node.depth, text: plainText(node), place: placeOfNode(node, file) }]
        : [],
    ),
    texts: textsOf(chapter),
    names: names.map(({ name, title, place, position }) => ({
      name,
      place,
      ...(title !== undefined && { title }),
      ...(position && { position }),
    })),
    blocks: blocks.map(blockForRules),
  };
}

function textsOf({ body, blocks, file }: Chapter): RuleText[] {
  return body.children.flatMap((node): RuleText[] => {
    if (node.type === 'heading' || node.type === 'yaml') return [];
    if (node.type !== 'courseBlock') {
      return [{ kind: 'text', text: plainText(node), place: placeOfNode(node, file) }];
    }
    const block = blocks[node.block];
    return block === undefined ? [] : treesOf(block).flat().flatMap(commentsOf);
  });
}

function commentsOf({ after }: MoveNode): RuleText[] {
  return after
    .flatMap((item) => (item.type === 'comment' ? [item] : item.before))
    .map(({ content, place }) => ({ kind: 'comment', text: plainText([...content]), place }));
}

function blockForRules(block: Block): RuleBlock {
  const { kind, place, view, nodes } = block;
  const shown = 'position' in block ? block.position : nodes[0]?.position;
  const name = ('from' in block && block.from?.name) || ('at' in block && nameIn(block.at));
  return {
    kind,
    place,
    view,
    ...(shown && { position: shown }),
    ...(name && { from: name }),
    trees: treesOf(block).map((tree) => tree.map(moveForRules)),
  };
}

function nameIn(at: unknown): string | undefined {
  return typeof at === 'object' && at !== null && 'name' in at ? String(at.name) : undefined;
}

function moveForRules(node: MoveNode): RuleMove {
  const { index, parent, children, depth, move, position, glyphs, labels, marks } = node;
  return {
    index,
    ...(parent !== undefined && { parent }),
    children,
    depth,
    ...(move && { san: move.san, color: move.color, from: move.from, to: move.to }),
    ...(move && { name: numberedSan(move) }),
    ...(position && { position }),
    glyphs,
    comment: commentsOf(node)
      .map(({ text }) => text)
      .join(' '),
    labels,
    marks,
    arrows: node.arrows.map(({ meaning, from, to }) => ({ meaning, from, to })),
    statements: node.statements.map(({ name, argument, place }) => ({ name, argument, place })),
    ...(node.written && { place: node.written.place }),
  };
}

/** A chapter as rules for the whole course see it. */
export function chapterInShort({ file, id, names, blocks }: ChapterSummary): ChapterInShort {
  return {
    file,
    id,
    place: topOf(file),
    names: names.map(({ name, title, place }) => ({
      name,
      place,
      ...(title !== undefined && { title }),
    })),
    moves: blocks.reduce(
      (sum, { nodes }) => sum + nodes.filter(({ san }) => san !== undefined).length,
      0,
    ),
  };
}
