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
  blockAt,
  type CommentNode,
  chapterAt,
  type MoveNode,
  type MovesBlock,
  practisedIn,
} from '../../model/index.ts';
import {
  nodeAt,
  pageMedium,
  proseHandlers,
  type RenderContext,
  resolveAll,
  tidySpaces,
  writeHtml,
} from '../../render/index.ts';
import type { SiteContext } from './site-context.ts';

/** The author's comments on moves that a reader may try in practice, and where lines begin. */
export function makeCourseNotes(base: SiteContext, table: CourseTable): CourseNotes {
  const { course } = base;
  const notes: Record<string, MoveNote> = {};
  Object.values(course.graph).forEach(({ moves }, position) => {
    for (const { san, at } of moves) {
      const kind = table.positions[position]?.moves.find((move) => move.san === san)?.kind;
      if (kind === undefined || kind === 'reply') continue;
      const nodes = at.flatMap((ref) => {
        const node = nodeAt(course, ref);
        const chapter = chapterAt(course, ref);
        const block = blockAt(course, ref);
        if (node === undefined || chapter === undefined || block?.kind !== 'moves') return [];
        return [{ node, block, context: { ...base, chapter } }];
      });
      const note = noteOf(nodes);
      if (note !== undefined) notes[noteName(position, san)] = note;
    }
  });
  return { format: 1, starts: startsOf(base, table), ...leftOut(base, table), notes };
}

type ChapterContext = SiteContext & RenderContext;

interface MovePlace {
  readonly node: MoveNode;
  readonly block: MovesBlock;
  readonly context: ChapterContext;
}

/** The comments on a move wherever it stands, each once. */
function noteOf(places: readonly MovePlace[]): MoveNote | undefined {
  const texts = places.flatMap(({ node, block, context }) =>
    commentsOn(node, block).map((comment) => renderComment(comment, context)),
  );
  const html = [...new Set(texts)].filter((text) => text !== '').join(' ');
  const nodes = places.map(({ node }) => node);
  const marks = [...new Set(nodes.flatMap((node) => node.marks))];
  const arrows = nodes.flatMap((node) => node.arrows);
  if (html === '' && marks.length === 0 && arrows.length === 0) return undefined;
  return {
    html,
    ...(marks.length > 0 && { marks }),
    ...(arrows.length > 0 && {
      arrows: arrows.map(({ meaning, from, to }) => ({ meaning, from, to })),
    }),
  };
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

/** A comment as the pages of practice show it; a link within its chapter names the page. */
function renderComment({ content }: CommentNode, context: ChapterContext): string {
  const { addresses, strings } = context;
  const paragraph = toHast(
    { type: 'paragraph', children: tidySpaces(content) },
    { handlers: proseHandlers(context, 0) },
  );
  if (paragraph.type !== 'element') return '';
  return writeHtml(resolveAll(paragraph.children, pageMedium(addresses), strings));
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
    chapter.blocks.flatMap((block) => {
      const [start] = block.kind === 'moves' ? block.nodes : [];
      const position = start?.position && indexOf.get(start.position.key);
      if (start?.position === undefined || position === undefined) return [];
      const number = Number(start.position.fen.slice(start.position.fen.lastIndexOf(' ') + 1));
      return [{ chapter: index, position, number }];
    }),
  );
}
