import type { Range, SemanticTokens } from 'vscode-languageserver-protocol';
import type { Place } from '../../diagnostics/index.ts';
import {
  adviceIn,
  type Chapter,
  isMarkedBad,
  namesWritten,
  placeOfNode,
  type Side,
  textNodes,
  treesOf,
} from '../../model/index.ts';
import type { Asked } from '../asked.ts';

const types = ['function', 'number', 'operator', 'keyword', 'variable', 'string'] as const;
const modifiers = ['declaration', 'deprecated', 'advice', 'illegal'] as const;

export const tokenLegend = { tokenTypes: [...types], tokenModifiers: [...modifiers] };

interface Token {
  readonly start: number;
  readonly end: number;
  readonly type: (typeof types)[number];
  readonly modifiers?: readonly (typeof modifiers)[number][];
}

/** The moves, numbers, signs, directives and names of a chapter, of all of it or of a stretch. */
export function tokens(
  { chapter: read, course, open, session, offsetOf }: Asked,
  range?: Range,
): SemanticTokens {
  const chapter = read();
  if (!chapter) return { data: [] };
  const [from, to] = range
    ? [offsetOf(range.start), offsetOf(range.end)]
    : [0, Number.POSITIVE_INFINITY];
  const found = apart(tokensIn(chapter, course()?.settings.side ?? 'both')).filter(
    ({ start, end }) => end > from && start < to,
  );
  const placed = found.flatMap(({ start, end, type, modifiers: all = [] }) => {
    const { start: first, end: last } = session.places.toRange(open, start, end);
    // A token stands on one line.
    if (first.line !== last.line || last.character <= first.character) return [];
    return {
      line: first.line,
      character: first.character,
      length: last.character - first.character,
      type: types.indexOf(type),
      modifiers: all.reduce((bits, one) => bits | (1 << modifiers.indexOf(one)), 0),
    };
  });
  return { data: encodeTokens(placed) };
}

/** Five numbers a token, each place counted from the token before it (LSP 3.17, semantic tokens). */
export function encodeTokens(
  tokens: readonly {
    readonly line: number;
    readonly character: number;
    readonly length: number;
    readonly type: number;
    readonly modifiers: number;
  }[],
): number[] {
  let before = { line: 0, character: 0 };
  return tokens.flatMap((token) => {
    const lines = token.line - before.line;
    const characters = lines === 0 ? token.character - before.character : token.character;
    before = token;
    return [lines, characters, token.length, token.type, token.modifiers];
  });
}

/** In the order of the text; where two overlap, the one that begins first. */
function apart(tokens: readonly Token[]): Token[] {
  let end = 0;
  return [...tokens]
    .sort((a, b) => a.start - b.start || a.end - b.end)
    .filter((token) => {
      if (token.start < end) return false;
      end = token.end;
      return true;
    });
}

function tokensIn(chapter: Chapter, side: Side): Token[] {
  const { file } = chapter;
  const found: Token[] = [];
  const add = (
    place: Pick<Place, 'start' | 'end'>,
    type: Token['type'],
    ...all: NonNullable<Token['modifiers']>[number][]
  ) => found.push({ start: place.start.offset, end: place.end.offset, type, modifiers: all });
  for (const block of chapter.blocks) {
    const advice = block.kind === 'moves' ? adviceIn(block, side) : new Set();
    for (const node of treesOf(block).flat()) {
      if (node.written?.place.file !== file) continue;
      const { place, number, glyphs } = node.written;
      if (number) add(number.place, 'number');
      if (node.fault) add(place, 'function', 'illegal');
      else if (advice.has(node.index)) add(place, 'function', 'advice');
      else if (isMarkedBad(node)) add(place, 'function', 'deprecated');
      else add(place, 'function');
      for (const glyph of glyphs) add(glyph.place, 'operator');
    }
  }
  for (const node of textNodes(chapter, 'proseMoves')) add(placeOfNode(node, file), 'function');
  for (const node of textNodes(chapter, 'courseDirective')) {
    const { start } = placeOfNode(node, file);
    const end = { ...start, offset: start.offset + node.name.length + 1 };
    add({ start, end }, 'keyword');
    if (node.name !== 'here' && node.name !== 'same' && node.name !== 'later') {
      add(node.argumentRange, 'string');
    }
  }
  for (const { written, isGiven } of namesWritten(chapter)) {
    if (isGiven) add(written, 'variable', 'declaration');
    else add(written, 'variable');
  }
  return found;
}
