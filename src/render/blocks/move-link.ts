import type { Element, ElementContent } from 'hast';
import { numberSign } from '../../chess/index.ts';
import { dataProperties, drawnSigns, positionAddress } from '../../contract/index.ts';
import { isBadSign, type MoveNode } from '../../model/index.ts';
import { glyphSign } from '../../movetext/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { RenderContext } from '../context.ts';
import { element } from '../hast.ts';
import { sanHtml } from '../notation.ts';
import type { MoveTree } from './move-tree.ts';

/** The signs as people type them: hardly any font has the first two, and the others should look alike. */
const plainSigns: Readonly<Record<string, string>> = {
  '⩲': '+/=',
  '⩱': '=/+',
  '±': '+/-',
  '∓': '-/+',
};

/** The last suffix glyph: `!` to `?!` (NAG 1 to 6) stand close to the move, assessments apart. */
const lastSuffix = 6;
const noBreak = '\u00a0';

/**
 * A move as readers see it, with its glyphs: a link to itself that carries the data for the board. An unplayable
 * move, which only a preview shows, is text.
 */
export function moveLink(
  context: RenderContext,
  tree: MoveTree,
  node: MoveNode,
  withNumber: boolean,
): ElementContent[] {
  const { move } = node;
  if (move === undefined) {
    const words = element('span', { className: ['move', 'fault'] }, [node.written?.san ?? ''], {
      role: 'move',
    });
    return [written(words, node)];
  }
  const number = withNumber ? [numberSign(move) + noBreak] : [];
  const words = [...number, ...sanHtml(move.san, context.notation)];
  const glyphs = node.glyphs.flatMap((nag) => glyph(nag, context.strings));
  const id = tree.idOf?.(node);
  if (id === undefined) {
    const shown = element('span', { className: ['move'] }, words, { role: 'move' });
    return [written(shown, node), ...glyphs];
  }
  const meetings = tree.meetings?.get(node.index);
  const link = element(
    'a',
    {
      className: ['move'],
      id,
      ...dataProperties('move', {
        ...boardData(node, id),
        // Omitted for the move before it in the text.
        up: node.parent === node.index - 1 ? undefined : node.parent,
        bad: tree.line && node.glyphs.some(isBadSign) ? '' : undefined,
      }),
    },
    words,
    { role: 'move', ...(meetings && { meetings }) },
  );
  return [written(link, node), ...glyphs];
}

/** Adds where the author wrote the move (`written-at.ts`). */
function written(link: Element, { written }: MoveNode): Element {
  if (written?.place) link.position = { start: written.place.start, end: written.place.end };
  return link;
}

/** The data for the board: the position unless the id gives it, the marked squares and the arrows. */
export function boardData(node: MoveNode, id: string) {
  const { position } = node;
  const plain = position && positionAddress(position.key);
  const isTold = plain === undefined || id === plain || id.startsWith(`${plain}.`);
  return {
    p: isTold ? undefined : plain,
    ...drawnData(node),
  };
}

/** Marked squares and arrows as attributes. */
export function drawnData({ marks, arrows }: Pick<MoveNode, 'marks' | 'arrows'>) {
  if (marks.length === 0 && arrows.length === 0) return {};
  const pairs = (meaning: string) =>
    listOf(arrows.filter((arrow) => arrow.meaning === meaning).map(({ from, to }) => from + to));
  return {
    mark: listOf(marks),
    plan: pairs('plan'),
    threat: pairs('threat'),
    guard: pairs('guard'),
  };
}

function listOf(words: readonly string[]): string | undefined {
  return words.length === 0 ? undefined : words.join(' ');
}

/** The sign of a glyph with its meaning, or the meaning alone; empty for an unknown number. */
export function glyph(nag: number, strings: Strings): ElementContent[] {
  const sign = glyphSign(nag);
  const meaning = strings.glyph(nag);
  const shown = sign ?? meaning;
  if (shown === undefined) return [];
  const drawn = drawnSigns[shown];
  const plain = plainSigns[shown];
  const mark = element(
    'span',
    {
      className: drawn === undefined ? ['glyph'] : ['glyph', 'drawn', drawn],
      ...(sign !== undefined &&
        meaning !== undefined && { role: 'img', ariaLabel: meaning, title: meaning }),
    },
    [shown],
    drawn === undefined ? {} : { role: 'sign', ...(plain !== undefined && { plain }) },
  );
  return nag <= lastSuffix ? [mark] : [{ type: 'text', value: noBreak }, mark];
}
