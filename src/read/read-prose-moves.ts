import type { InlineCode } from 'mdast';
import { parseMovetext } from '../movetext/index.ts';
import type { ProseMovesNode } from './nodes.ts';
import { positionOf, type TextContext } from './text-context.ts';

const beginsWithNumber = /^\d{1,3}\s?(?:\.|…)/;
const looksLikeMove = /^(?:[KQRBN♔-♟]?[a-h1-8x=\-–]*[a-h][1-8]|[O0]-[O0])/u;

/** Inline code that is a run of moves with a number, `7.Bg2 Be7`; other code stays as it is. */
export function readProseMoves(
  node: InlineCode,
  { nextId }: Pick<TextContext, 'nextId'>,
): ProseMovesNode | InlineCode {
  if (!beginsWithNumber.test(node.value)) return node;
  const { line, problems } = parseMovetext(node.value);
  if (problems.length > 0 || line.before.length > 0 || line.result) return node;
  if (!line.moves.every((move) => move.after.length === 0 && looksLikeMove.test(move.san.text))) {
    return node;
  }
  const first = line.moves[0];
  if (!first?.number) return node;
  let ply = first.number.value * 2 + (first.number.dots > 1 ? 1 : 0);
  const moves = line.moves.map((move, index) => {
    const start = move.number?.span.start ?? move.san.span.start;
    const end = line.moves[index + 1];
    const next = end ? (end.number?.span.start ?? end.san.span.start) : node.value.length;
    const at = move.number ? move.number.value * 2 + (move.number.dots > 1 ? 1 : 0) : ply;
    ply = at + 1;
    return {
      text: node.value.slice(start, next).trim(),
      san: move.san.text,
      number: at >> 1,
      color: at % 2 === 0 ? ('white' as const) : ('black' as const),
    };
  });
  return { type: 'proseMoves', value: node.value, moves, id: nextId(), ...positionOf(node) };
}
