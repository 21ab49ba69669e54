/**
 * Keeps where the parts of a document are written, so that the preview of `dev` can mark findings in them. Elements
 * have a `position`, as in unist; texts have the seams of the pieces that they were joined of. No medium shows it.
 */
import type { Element, ElementContent, Text as HastText } from 'hast';
import type { Text as MdastText, Node } from 'mdast';
import type { Handlers } from 'mdast-util-to-hast';

/** Where a piece of a text begins, in its value and in the file. Both run in parallel up to the next seam. */
export interface Seam {
  readonly at: number;
  readonly offset: number;
}

declare module 'mdast' {
  interface TextData {
    seams?: readonly Seam[];
  }
}
declare module 'hast' {
  interface TextData {
    seams?: readonly Seam[];
  }
}

/** The seams of a text; empty where its place is unknown. */
export function seamsOf({ data, position }: MdastText | HastText): readonly Seam[] {
  if (data?.seams) return data.seams;
  const offset = position?.start.offset;
  return offset === undefined ? [] : [{ at: 0, offset }];
}

/** Cuts a text and keeps its place. */
export function partOfText<T extends MdastText | HastText>(node: T, from: number, to?: number): T {
  const isWhole = from === 0 && (to ?? node.value.length) === node.value.length;
  if (isWhole && !node.data?.seams) return node;
  const value = node.value.slice(from, to);
  const seams = seamsOf(node);
  const before = seams.findLast(({ at }) => at <= from);
  const after = seams.filter(({ at }) => at > from && at < from + value.length);
  const moved = [
    ...(before ? [{ at: 0, offset: before.offset + from - before.at }] : []),
    ...after.map(({ at, offset }) => ({ at: at - from, offset })),
  ];
  return { ...node, value, data: { ...node.data, seams: moved } };
}

/** Joins two texts and keeps their places. */
export function joinTexts(before: MdastText, after: MdastText): MdastText {
  const { length } = before.value;
  const moved = seamsOf(after).map(({ at, offset }) => ({ at: at + length, offset }));
  return {
    ...before,
    value: before.value + after.value,
    data: { ...before.data, seams: [...seamsOf(before), ...moved] },
  };
}

/** Wraps handlers so that their elements and texts know where they are written. */
export function withPlaces(handlers: Handlers): Handlers {
  return Object.fromEntries(
    Object.entries(handlers).map(([name, handler]) => [
      name,
      (state, node, parent) => {
        const made = handler(state, node, parent);
        if (Array.isArray(made)) for (const each of made) writtenAt(each as ElementContent, node);
        else if (made) writtenAt(made as ElementContent, node);
        return made;
      },
    ]),
  );
}

function writtenAt(made: ElementContent, node: Node): void {
  if (made.type === 'text' && node.type === 'text') {
    // Without seams of its own the text has a position, which the library copies.
    const { seams } = (node as MdastText).data ?? {};
    if (seams) made.data = { seams };
  } else if (made.type === 'element' && node.position) {
    (made as Element).position ??= node.position;
  }
}
