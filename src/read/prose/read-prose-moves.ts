import type { InlineCode } from 'mdast';
import { parseMovetext } from '../../movetext/index.ts';
import { noteLetters, wordsInSan } from '../moves/in-san.ts';
import type { ProseMovesNode } from '../nodes.ts';
import { placeOf, positionOf, type TextContext } from '../text-context.ts';

const beginsWithNumber = /^\d{1,3}\s?(?:\.|…)/;
const looksLikeMove = /^(?:[KQRBN♔-♟]?[a-h1-8x=\-–]*[a-h][1-8]|[O0]-[O0])/u;

/** Turns inline code that is a run of numbered moves, `7.Bg2 Be7`, into a node; other code stays as it is. */
export function readProseMoves(
  node: InlineCode,
  context: TextContext,
): ProseMovesNode | InlineCode {
  if (!beginsWithNumber.test(node.value)) return node;
  const value = wordsInSan(node.value, context.pieces);
  const { line, problems } = parseMovetext(value);
  if (problems.length > 0 || line.before.length > 0 || line.result) return node;
  if (!line.moves.every((move) => move.after.length === 0 && looksLikeMove.test(move.san.text))) {
    return node;
  }
  const first = line.moves[0];
  if (!first?.number) return node;
  const { start: from, end: to } = placeOf(node, context);
  const { pointAt } = context.source;
  const at = context.source.text.slice(from.offset, to.offset).indexOf(node.value);
  const pointIn = (offset: number) => pointAt(from.offset + at + offset);
  let ply = first.number.value * 2 + (first.number.dots > 1 ? 1 : 0);
  const moves = line.moves.map((move, index) => {
    const start = move.number?.span.start ?? move.san.span.start;
    const end = line.moves[index + 1];
    const next = end ? (end.number?.span.start ?? end.san.span.start) : value.length;
    const own = move.number ? move.number.value * 2 + (move.number.dots > 1 ? 1 : 0) : ply;
    ply = own + 1;
    const text = value.slice(start, next).trim();
    return {
      text,
      san: move.san.text,
      number: own >> 1,
      color: own % 2 === 0 ? ('white' as const) : ('black' as const),
      range:
        at < 0
          ? { start: from, end: to }
          : { start: pointIn(start), end: pointIn(start + text.length) },
    };
  });
  noteLettersOf(node, context);
  return { type: 'proseMoves', value, moves, id: context.nextId(), ...positionOf(node) };
}

/** Takes the text of the file: over two lines of a list the code has fewer characters. */
function noteLettersOf(node: InlineCode, context: TextContext): void {
  if (context.pieces === undefined) return;
  const { start, end } = placeOf(node, context);
  const { text, pointAt } = context.source;
  noteLetters(text.slice(start.offset, end.offset), (at) => pointAt(start.offset + at), context);
}
