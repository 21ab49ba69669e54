import { isAssessment, isMoveSuffix } from '../movetext/index.ts';
import { glyphText } from './move-text.ts';
import { blockText, endOfMove, nodeIn } from './node-text.ts';
import { EditRefusedError, type Edits, type NodeInChapter, type WrittenChapter } from './types.ts';

/**
 * Puts a glyph behind a move in place of the one that says the same kind of thing, or takes it away where it
 * stands: of `!` to `?!` a move has one, and one verdict on the position.
 * @param nag a numeric annotation glyph.
 * @throws EditRefusedError
 */
export function setGlyph(written: WrittenChapter, at: NodeInChapter, nag: number): Edits {
  const block = blockText(written, at);
  const node = nodeIn(block, at);
  if (node.written === undefined) {
    throw new EditRefusedError('A glyph stands behind a move, and here is none', 'choose a move');
  }
  const kindOf = (other: number) => (isMoveSuffix(other) ? 1 : isAssessment(other) ? 2 : other);
  const { glyphs } = node.written;
  const end = endOfMove(block, node);
  const stands = glyphs.find((glyph) => glyph.nag === nag);
  const rival = stands ?? glyphs.find((glyph) => kindOf(glyph.nag) === kindOf(nag));
  if (rival === undefined) {
    // A suffix stands right behind the move, before any other.
    const suffixed = isMoveSuffix(nag);
    const at = suffixed ? node.written.place.end.offset : end;
    return [{ place: block.place(at, at), text: `${suffixed ? '' : ' '}${glyphText(nag)}` }];
  }
  const { start, end: behind } = rival.place;
  if (stands === undefined) {
    return [{ place: block.place(start.offset, behind.offset), text: glyphText(nag) }];
  }
  const white = /[ \t]*$/.exec(block.text.slice(0, start.offset))?.[0].length ?? 0;
  return [{ place: block.place(start.offset - white, behind.offset), text: '' }];
}
