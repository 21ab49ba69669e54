import { toString as plainText } from 'mdast-util-to-string';
import { adviceOf, isMarkedBad } from '../check/index.ts';
import { sideToMove } from '../chess/index.ts';
import { type Course, chapterAt, type MoveNode, type NodeRef, nodeAt } from '../model/index.ts';
import { isAssessment } from '../movetext/index.ts';
import { assignAddresses } from '../render/index.ts';
import type { EditionPlace, Move } from './types.ts';

/** An edition of a course with what comparing asks of it. */
export interface Edition {
  readonly course: Course;
  readonly graph: Course['graph'];
  /** The move that is advised in a position. */
  advice(key: string): string | undefined;
  /** Whether the side that the course is for is to move. */
  isOurs(key: string): boolean;
  nodes(key: string, san: string): readonly MoveNode[];
  refOf(key: string, san: string): NodeRef | undefined;
  isBad(key: string, san: string): boolean;
  /** The assessment of a position; the three glyphs for equal chances are one. */
  assessment(key: string): number | undefined;
  /** A move with its number, as it stands where the course has it first. */
  move(key: string, san: string): Move;
  /** The squares of a move, `e2-e4`. */
  arrow(key: string, san: string): string | undefined;
  /** What the author says right behind a move, in plain words; empty where nothing. */
  comment(key: string, san: string): string;
  place(ref: NodeRef): EditionPlace;
  /** The position before a move, at the place where the move stands. */
  placeBefore(key: string, ref: NodeRef): EditionPlace;
  /** The first place of a position; one that has a name before others. */
  placeAt(key: string): EditionPlace | undefined;
}

/** @param stands whether this is the new edition, whose places can be linked to. */
export function makeEdition(course: Course, stands: boolean): Edition {
  const { graph } = course;
  const { side } = course.settings;
  const advice = adviceOf(course);
  const addresses = assignAddresses(course);
  const refs = (key: string, san: string) =>
    graph[key]?.moves.find((move) => move.san === san)?.at ?? [];
  const nodes = (key: string, san: string) =>
    refs(key, san).flatMap((ref) => nodeAt(course, ref) ?? []);

  const place = (ref: NodeRef): EditionPlace => {
    const chapter = chapterAt(course, ref);
    const { move, labels = [] } = nodeAt(course, ref) ?? {};
    const [label] = labels;
    return {
      chapter: chapter?.id ?? '',
      file: chapter?.file ?? '',
      ...(move && { after: { san: move.san, number: move.number, color: move.color } }),
      ...(label !== undefined && { label }),
      id: addresses.id(ref),
      stands,
    };
  };

  const placeAt = (key: string): EditionPlace | undefined => {
    const at = graph[key]?.at ?? [];
    const named = at.find((ref) => (nodeAt(course, ref)?.labels.length ?? 0) > 0);
    // A block that starts from a name repeats the position; the move that leads there is shown.
    const ref = named ?? at.find(({ node }) => node > 0) ?? at[0];
    return ref && place(ref);
  };

  return {
    course,
    graph,
    advice: (key) => advice.get(key)?.[0]?.san,
    isOurs: (key) => side !== 'both' && sideToMove({ key }) === side,
    nodes,
    refOf: (key, san) => refs(key, san)[0],
    isBad: (key, san) => nodes(key, san).some(isMarkedBad),
    assessment(key) {
      for (const ref of graph[key]?.at ?? []) {
        const nag = nodeAt(course, ref)?.glyphs.findLast(isAssessment);
        if (nag !== undefined) return nag === 11 || nag === 12 ? 10 : nag;
      }
      return undefined;
    },
    move(key, san) {
      const played = nodes(key, san)[0]?.move;
      const color = sideToMove({ key });
      return { san, number: played?.number ?? 1, color: played?.color ?? color };
    },
    arrow(key, san) {
      const played = nodes(key, san)[0]?.move;
      return played && `${played.from}-${played.to}`;
    },
    comment: (key, san) =>
      nodes(key, san)
        .map(commentOf)
        .find((text) => text !== '') ?? '',
    place,
    placeAt,
    placeBefore(key, ref) {
      const { label, after: _, ...rest } = place(ref);
      const before = placeAt(key);
      // The position's own name lasts longer than the address of a move.
      const name = before?.label ?? label;
      return {
        ...rest,
        ...(before?.after && { after: before.after }),
        ...(name !== undefined && { label: name }),
      };
    },
  };
}

/** What the comments right behind a move say, in plain words. */
function commentOf(node: MoveNode): string {
  const comments = node.after.flatMap((item) => (item.type === 'comment' ? [item.content] : []));
  return plainText(comments.flat()).replace(/\s+/g, ' ').trim();
}
