import type { ElementContent } from 'hast';
import { numberSign } from '../../chess/index.ts';
import type { MoveNode } from '../../model/types.ts';
import { glyphSign } from '../../movetext/glyphs.ts';
import type { Strings } from '../../strings/index.ts';
import type { RenderContext } from './context.ts';
import { element } from './hast.ts';
import type { MoveTree } from './move-tree.ts';
import { sanHtml } from './notation.ts';

/** Signs that few fonts have: the style sheet draws them over the text. */
const drawnSigns: Readonly<Record<string, string>> = {
  '⩲': 'slight-white',
  '⩱': 'slight-black',
  '±': 'clear-white',
  '∓': 'clear-black',
};

/** Suffix glyphs, `!` to `?!`, stand close to the move; assessments and others apart. */
const lastSuffix = 6;
const noBreak = '\u00a0';

/**
 * A move as the reader sees it: a link to itself that carries all the board needs, and its
 * glyphs. A move that cannot be played, as a preview may show, is text.
 */
export function moveLink(
  context: RenderContext,
  tree: MoveTree,
  node: MoveNode,
  withNumber: boolean,
): ElementContent[] {
  const { move } = node;
  if (move === undefined) {
    return [element('span', { className: ['move', 'fault'] }, [node.written?.san ?? ''])];
  }
  const number = withNumber ? [numberSign(move) + noBreak] : [];
  const words = [...number, ...sanHtml(move.san, context.notation)];
  const glyphs = node.glyphs.flatMap((nag) => glyph(nag, context.strings));
  const id = tree.idOf?.(node);
  if (id === undefined) {
    return [element('span', { className: ['move'] }, words), ...glyphs];
  }
  const also = tree.meetings?.get(node.index);
  const link = element(
    'a',
    {
      className: ['move'],
      id,
      href: `#${encodeURIComponent(id)}`,
      dataM: move.from + move.to,
      ...boardData(node),
      // The parent is the move before it in the text unless told otherwise.
      ...(node.parent === node.index - 1 ? {} : { dataUp: node.parent }),
      ...(also !== undefined && { dataAlso: also }),
    },
    words,
  );
  return [link, ...glyphs];
}

/** The attributes that set the board: the placement, the marked squares and the arrows. */
export function boardData(node: MoveNode): Record<string, string> {
  const data: Record<string, string> = {};
  if (node.position !== undefined) data.dataP = placementOf(node.position.fen);
  if (node.marks.length > 0) data.dataMark = node.marks.join(' ');
  for (const { meaning, from, to } of node.arrows) {
    const name = { plan: 'dataPlan', threat: 'dataThreat', guard: 'dataGuard' }[meaning];
    data[name] = data[name] === undefined ? from + to : `${data[name]} ${from}${to}`;
  }
  return data;
}

/** The first field of a FEN. */
export function placementOf(fen: string): string {
  return fen.slice(0, fen.indexOf(' '));
}

function glyph(nag: number, strings: Strings): ElementContent[] {
  const sign = glyphSign(nag);
  const meaning = strings.glyph(nag);
  const shown = sign ?? meaning;
  if (shown === undefined) return [];
  const drawn = drawnSigns[shown];
  const mark = element(
    'span',
    {
      className: drawn === undefined ? ['glyph'] : ['glyph', 'drawn', drawn],
      ...(sign !== undefined &&
        meaning !== undefined && { role: 'img', ariaLabel: meaning, title: meaning }),
    },
    [shown],
  );
  return nag <= lastSuffix ? [mark] : [{ type: 'text', value: noBreak }, mark];
}
