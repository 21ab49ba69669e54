import type { PhrasingContent, RootContent } from 'mdast';
import { adviceOf } from '../../check/index.ts';
import { listed, sideToMove } from '../../chess/index.ts';
import {
  blockAt,
  type Chapter,
  type Course,
  chapterAt,
  type DiagramBlock,
  type Label,
  type MoveNode,
  type NodeRef,
  nodeAt,
  pathTo,
} from '../../model/index.ts';
import { numberedMove } from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';

/**
 * A named position as a text of its own: the moves that lead to it, its board with what the author
 * says there, and what the course plays next.
 */
export function positionChapter(course: Course, { ref }: Label, strings: Strings): Chapter {
  const chapter = chapterAt(course, ref);
  const node = nodeAt(course, ref);
  const block = blockAt(course, ref);
  const { position } = node ?? {};
  if (chapter === undefined || node === undefined || block === undefined || !position) {
    throw new Error('a checked course has a position for every name');
  }
  const diagram: DiagramBlock = {
    kind: 'diagram',
    key: block.key,
    chapter: chapter.file,
    castled: [],
    place: block.place,
    view: block.view,
    position,
    ...(node.move && { lastMove: { from: node.move.from, to: node.move.to } }),
    nodes: [],
    shows: ref,
    caption: node.after.flatMap((item) => (item.type === 'comment' ? item.content : [])),
    marks: node.marks,
    arrows: node.arrows,
    claims: [],
  };
  const path = pathTo(course, ref);
  const title = node.move
    ? strings.book.boardAfter(numberedMove(node.move, strings))
    : chapter.title;
  const next = nextInWords(course, node, strings);
  const children: RootContent[] = [
    { type: 'heading', depth: 2, children: words(title) },
    ...(path.length > 0 ? [paragraph(movesInText(path, strings))] : []),
    { type: 'courseBlock', block: 0 },
    ...(next === undefined ? [] : [paragraph(next)]),
  ];
  return { ...chapter, body: { type: 'root', children }, blocks: [diagram], media: [] };
}

function movesInText(path: readonly MoveNode[], strings: Strings): string {
  return path
    .flatMap(({ move }, index) => {
      if (move === undefined) return [];
      const numbered = numberedMove(move, strings);
      return [index > 0 && move.color === 'black' ? numbered.replace(/^\d+\.+/, '') : numbered];
    })
    .join(' ');
}

function nextInWords(course: Course, { position }: MoveNode, strings: Strings): string | undefined {
  if (position === undefined) return undefined;
  const moveOf = (ref: NodeRef | undefined) => {
    const move = ref && nodeAt(course, ref)?.move;
    return move ? [numberedMove(move, strings)] : [];
  };
  const [advice] = adviceOf(course).get(position.key) ?? [];
  const { side } = course.settings;
  if (advice !== undefined) {
    const [move] = moveOf(advice.ref);
    return move && strings.letter.coursePlays(move);
  }
  if (side === 'both' || sideToMove(position) === side) return undefined;
  const replies = (course.graph[position.key]?.moves ?? []).flatMap(({ at }) => moveOf(at[0]));
  if (replies.length === 0) return undefined;
  return strings.letter.courseAnswers(listed(replies, strings.and));
}

function paragraph(value: string): RootContent {
  return { type: 'paragraph', children: words(value) };
}

function words(value: string): PhrasingContent[] {
  return [{ type: 'text', value }];
}
