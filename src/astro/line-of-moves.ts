import { inUci } from '../chess/index.ts';
import { type MoveNode, mainLine } from '../model/index.ts';
import { sanText } from '../render/index.ts';
import type { Strings } from '../strings/index.ts';

/** The attributes of `<course-line>` for a line of moves (`browser/embed/read-line.ts`). */
export interface LineAttributes extends Readonly<Record<string, string>> {
  readonly moves: string;
  readonly sans: string;
  readonly at: string;
}

/** The main line, shown behind its first `at` moves. */
export function mainLineOf(
  nodes: readonly MoveNode[],
  { at, view, strings }: { readonly at: number; readonly view: string; readonly strings: Strings },
): LineAttributes {
  const fen = nodes[0]?.position?.fen ?? '';
  return { fen, view, ...attributesOf(mainLine(nodes), strings), at: String(at) };
}

/** The line through a move and on from it, shown behind that. */
export function lineThrough(
  nodes: readonly MoveNode[],
  through: MoveNode,
  strings: Strings,
): LineAttributes {
  const into: MoveNode[] = [];
  for (let node: MoveNode | undefined = through; node; node = nodes[node.parent ?? -1])
    into.unshift(node);
  const on: MoveNode[] = [];
  for (let node = nodes[through.children[0] ?? -1]; node; node = nodes[node.children[0] ?? -1])
    on.push(node);
  return { ...attributesOf([...into, ...on], strings), at: String(into.length - 1) };
}

function attributesOf(line: readonly MoveNode[], strings: Strings) {
  const moves = line.flatMap(({ move }) => (move ? [move] : []));
  return {
    moves: moves.map(inUci).join(' '),
    sans: moves.map(({ san }) => sanText(san, strings)).join(' '),
  };
}
