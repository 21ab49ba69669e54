import type { Root } from 'hast';
import { inUci } from '../chess/index.ts';
import { drawBoard } from '../draw/index.ts';
import { type Chapter, type Course, type MoveNode, treesOf } from '../model/index.ts';
import {
  type Addresses,
  addressInSite,
  assignAddresses,
  chapterDocument,
  contextOf,
  elementsIn,
  type Medium,
  resolve,
  writeHtml,
} from '../render/index.ts';
import { findEmbeds } from '../site/index.ts';
import type { ChapterData, MoveData } from './chapter-schema.ts';

/** A chapter as an entry of a collection. */
export interface ChapterEntry {
  readonly id: string;
  readonly data: ChapterData;
  /** The text, with its boards drawn: no script, no style sheet and no other file. */
  readonly html: string;
  readonly headings: readonly {
    readonly depth: number;
    readonly slug: string;
    readonly text: string;
  }[];
}

export interface EntryAddresses {
  readonly chapter: (id: string) => string;
  /** Of a file of `media/`, as it is written. */
  readonly file: (path: string) => string;
}

/** In CSS pixels. */
const boardWidth = 400;

export function chapterEntries(course: Course, where: EntryAddresses): ChapterEntry[] {
  const inSite = assignAddresses(course);
  const page = (file: string) =>
    where.chapter(course.chapters.find((each) => each.file === file)?.id ?? '');
  const addresses: Addresses = {
    ...inSite,
    page,
    href: (ref, from) =>
      `${ref.chapter === from ? '' : page(ref.chapter)}#${encodeURIComponent(inSite.id(ref))}`,
  };
  const context = contextOf(course);
  const embeds = findEmbeds(course, addresses, context.strings);
  return course.chapters.map((chapter, index) => {
    const medium = stillMedium(addresses, chapter, where);
    const tree = resolve(chapterDocument({ ...context, chapter }), medium, context.strings);
    const { title, side, language, author } = course.settings;
    return {
      id: chapter.id,
      html: writeHtml(tree.children),
      headings: headingsIn(tree),
      data: {
        title: chapter.title,
        ...(chapter.summary !== undefined && { summary: chapter.summary }),
        order: index + 1,
        href: page(chapter.file),
        course: { title, side, language, ...(author !== undefined && { author }) },
        positions: embeds
          .filter((embed) => embed.chapter === chapter.file)
          .map(({ label, words, href, alt, picture: { placement, view = 'white', lastMove } }) => ({
            ...{ label, words, href, alt, fen: placement, view },
            ...(lastMove && { lastMove: { from: lastMove.from, to: lastMove.to } }),
          })),
        lines: chapter.blocks.flatMap((block) =>
          block.kind === 'moves' || block.kind === 'game'
            ? treesOf(block).flatMap((nodes) => lineOf(nodes, block.view))
            : [],
        ),
        exercises: chapter.blocks.filter(({ kind }) => kind === 'exercise').length,
      },
    };
  });
}

function stillMedium(addresses: Addresses, { file }: Chapter, where: EntryAddresses): Medium {
  let boards = 0;
  return {
    isLive: false,
    numbersDiagrams: true,
    board: (picture) => ({
      type: 'raw',
      value: drawBoard({ ...picture, size: boardWidth, idPrefix: `board-${++boards}-` }),
    }),
    addressOf(target) {
      const address = addressInSite(target, addresses, file);
      return /^media\//.test(address) ? where.file(address) : address;
    },
  };
}

function lineOf(nodes: readonly MoveNode[], view: 'white' | 'black') {
  const [start] = nodes;
  if (start?.position === undefined) return [];
  return [{ fen: start.position.fen, view, moves: movesFrom(nodes, start) }];
}

function movesFrom(nodes: readonly MoveNode[], { children }: MoveNode): MoveData[] {
  return children.flatMap((index) => {
    const node = nodes[index];
    if (node?.move === undefined) return [];
    const { san, number, color, after } = node.move;
    const next = movesFrom(nodes, node);
    return [
      { san, uci: inUci(node.move), number, color, fen: after.fen, nags: [...node.glyphs], next },
    ];
  });
}

function headingsIn(tree: Root): ChapterEntry['headings'] {
  return [...elementsIn(tree)].flatMap((element) => {
    const depth = /^h([1-6])$/.exec(element.tagName)?.[1];
    const { id } = element.properties;
    if (depth === undefined || typeof id !== 'string') return [];
    return [{ depth: Number(depth), slug: id, text: textOf(element) }];
  });
}

function textOf(node: { readonly children?: readonly object[]; readonly value?: unknown }): string {
  if (typeof node.value === 'string') return node.value;
  return (node.children ?? []).map(textOf).join('');
}
