import type { Range, TextEdit } from 'vscode-languageserver-protocol';
import type { Block } from '../../model/index.ts';
import type { Asked } from '../asked.ts';
import { layMovetext } from '../lay-movetext.ts';

/**
 * Formats the movetext within a range: numbers, spaces, line breaks. Nothing else of the chapter is touched, comments
 * stay as they are, and a block that cannot be read in full is left alone.
 */
export function formatRange(asked: Asked, range: Range): TextEdit[] {
  const { text, session, open } = asked;
  const [from, to] = [asked.offsetOf(range.start), asked.offsetOf(range.end)];
  return (asked.chapter()?.blocks ?? []).flatMap((block) => {
    const content = contentOf(block, text);
    if (!content || content.start > to || content.end < from) return [];
    const first = block.nodes[0]?.position?.fen.split(' ');
    const changes = layMovetext(text.slice(content.start, content.end), {
      from: from - content.start,
      to: to - content.start,
      number: Number(first?.[5] ?? 1),
      color: first?.[1] === 'b' ? 'black' : 'white',
      lineEnd: text.includes('\r\n') ? '\r\n' : '\n',
    });
    return changes.map(({ start, end, text: newText }) => ({
      range: session.places.toRange(open, content.start + start, content.start + end),
      newText,
    }));
  });
}

/** Where the movetext of a block stands; none for other blocks, and for one that stands within a list or a quote. */
function contentOf({ kind, place }: Block, text: string) {
  if (kind !== 'moves' && kind !== 'game') return undefined;
  if (place.start.column !== 1) return undefined;
  const block = text.slice(place.start.offset, place.end.offset);
  const opening = /^(`{3,}|~{3,}).*(?:\r\n?|\n)/.exec(block);
  const closing = /(?:\r\n?|\n)(`{3,}|~{3,})[ \t]*$/.exec(block);
  if (!opening || !closing || /\bfile\s*=/.test(opening[0]) || closing.index < opening[0].length) {
    return undefined;
  }
  return { start: place.start.offset + opening[0].length, end: place.start.offset + closing.index };
}
