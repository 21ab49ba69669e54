import { toHast } from 'mdast-util-to-hast';
import type {
  CourseNotes,
  CourseTable,
  LineStart,
  MoveNote,
  TablePosition,
} from '../../contract/index.ts';
import { noteName } from '../../lookup/index.ts';
import {
  type CommentNode,
  type MoveNode,
  type MovesBlock,
  outlineOf,
  practisedIn,
} from '../../model/index.ts';
import {
  assignAddresses,
  freshParts,
  type PartMaker,
  type Parts,
  pageMedium,
  proseHandlers,
  resolveAll,
  tidySpaces,
  writeHtml,
} from '../../render/index.ts';
import type { SiteContext } from './site-context.ts';

/** What a chapter says of a move that a reader may try in practice. */
interface NoteHere {
  /** Its comments as HTML. */
  readonly texts: readonly string[];
  readonly marks: NonNullable<MoveNote['marks']>;
  readonly arrows: NonNullable<MoveNote['arrows']>;
}

/** The same of all moves of the course's side, by the keys of blocks and the indices of nodes. */
type NotesHere = Readonly<Record<string, Readonly<Record<number, NoteHere>>>>;

export const notesPart: PartMaker<NotesHere> = {
  kind: 'notes',
  inputs: '',
  make(context) {
    const { side } = context.settings;
    const handlers = proseHandlers(context, 0);
    const page = { ...pageMedium(assignAddresses(context.ask)), isWritten: true };
    const textOf: TextOf = ({ content }) => {
      const children = tidySpaces(content);
      const paragraph = toHast({ type: 'paragraph', children }, { handlers });
      if (paragraph.type !== 'element') return '';
      return writeHtml(resolveAll(paragraph.children, page, context.strings));
    };
    const found: Record<string, Record<number, NoteHere>> = {};
    for (const block of context.chapter.blocks) {
      if (block.kind !== 'moves') continue;
      const own: Record<number, NoteHere> = {};
      for (const node of block.nodes) {
        if (node.move === undefined || (side !== 'both' && node.move.color !== side)) continue;
        const note = noteHere(node, block, textOf);
        if (note !== undefined) own[node.index] = note;
      }
      if (Object.keys(own).length > 0) found[block.key] = own;
    }
    return found;
  },
};

/** A comment as the pages of practice show it; a link within its chapter names the page. */
type TextOf = (comment: CommentNode) => string;

function noteHere(node: MoveNode, block: MovesBlock, textOf: TextOf): NoteHere | undefined {
  const { marks } = node;
  const texts = commentsOn(node, block)
    .map(textOf)
    .filter((text) => text !== '');
  const arrows = node.arrows.map(({ meaning, from, to }) => ({ meaning, from, to }));
  return texts.length + marks.length + arrows.length === 0 ? undefined : { texts, marks, arrows };
}

/**
 * The author's comments on moves that a reader may try in practice, and where lines begin.
 * @param parts of chapters; default: made when asked for.
 */
export function makeCourseNotes(
  base: SiteContext,
  table: CourseTable,
  parts: Parts = freshParts(base),
): CourseNotes {
  const { course } = base;
  const here = new Map(
    course.chapters.map((chapter) => [chapter.file, parts.of(notesPart, chapter)]),
  );
  const notes: Record<string, MoveNote> = {};
  Object.values(course.graph).forEach(({ moves }, position) => {
    for (const { san, at } of moves) {
      const places = at.flatMap(
        ({ chapter, block, node }) => here.get(chapter)?.[block]?.[node] ?? [],
      );
      if (places.length === 0) continue;
      const kind = table.positions[position]?.moves.find((move) => move.san === san)?.kind;
      if (kind === undefined || kind === 'reply') continue;
      notes[noteName(position, san)] = joinNotes(places);
    }
  });
  return { format: 1, starts: startsOf(base, table), ...leftOut(base, table), notes };
}

/** The comments on a move wherever it stands, each once. */
function joinNotes(places: readonly NoteHere[]): MoveNote {
  const html = [...new Set(places.flatMap(({ texts }) => texts))].join(' ');
  const marks = [...new Set(places.flatMap((place) => place.marks))];
  const arrows = places.flatMap((place) => place.arrows);
  return { html, ...(marks.length > 0 && { marks }), ...(arrows.length > 0 && { arrows }) };
}

/** Comments behind the move, and those that open the variation it begins. */
function commentsOn(node: MoveNode, block: MovesBlock): CommentNode[] {
  const opening = openingsOf(block).get(node.index) ?? [];
  return [...opening, ...node.after.filter((item) => item.type === 'comment')];
}

const openings = new WeakMap<MovesBlock, ReadonlyMap<number, readonly CommentNode[]>>();

/** The comments that open variations, by the first move of each. */
function openingsOf(block: MovesBlock): ReadonlyMap<number, readonly CommentNode[]> {
  const known = openings.get(block);
  if (known) return known;
  const found = new Map<number, readonly CommentNode[]>();
  for (const { after } of block.nodes) {
    for (const item of after) if (item.type === 'variation') found.set(item.first, item.before);
  }
  openings.set(block, found);
  return found;
}

/** Positions that practice leaves out, as indices of the table. */
function leftOut(
  { course }: SiteContext,
  { positions }: CourseTable,
): Pick<CourseNotes, 'unasked' | 'aside'> {
  const { asked, aside } = practisedIn(course);
  const where = (holds: (position: TablePosition) => boolean) =>
    positions.flatMap((position, index) => (holds(position) ? [index] : []));
  return {
    unasked: where(
      ({ key, moves }) => !asked.has(key) && moves.some(({ kind }) => kind === 'advice'),
    ),
    aside: where(({ key }) => aside.has(key)),
  };
}

function startsOf({ course }: SiteContext, { positions }: CourseTable): LineStart[] {
  const indexOf = new Map(positions.map(({ key }, index) => [key, index]));
  return course.chapters.flatMap((chapter, index) =>
    outlineOf(course, chapter).blocks.flatMap(({ nodes: [start], number = 1 }) => {
      const position = start?.index === 0 ? indexOf.get(start.key) : undefined;
      return position === undefined ? [] : [{ chapter: index, position, number }];
    }),
  );
}
