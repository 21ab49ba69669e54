import type { ElementContent, Parents } from 'hast';
import {
  kindOfSanLetter,
  numberSign,
  type PieceKind,
  type PlayedMove,
  pieceKinds,
  sanIn,
} from '../chess/index.ts';
import { splitMoves } from '../contract/index.ts';
import type { Strings } from '../strings/index.ts';
import { partOfText } from './written-at.ts';

/** How moves are printed: the piece letters of the language, or figurines that read as such. */
export interface Notation {
  readonly style: 'letters' | 'figurines';
  readonly strings: Strings;
}

/** SAN as plain text in the language's letters. */
export function sanText(san: string, strings: Strings): string {
  return sanIn(strings.pieceLetters, san);
}

/**
 * SAN as HTML. A figurine is the piece's letter with the figure drawn over it by the style
 * sheet, so that copied text, speech and a page without styles keep the letter.
 */
export function sanHtml(san: string, { style, strings }: Notation): ElementContent[] {
  if (style === 'letters') return [{ type: 'text', value: sanText(san, strings) }];
  return san
    .split(/([KQRBN])/)
    .filter((part) => part !== '')
    .map((part): ElementContent => {
      const kind = kindOfSanLetter[part];
      return kind === undefined
        ? { type: 'text', value: part }
        : figurine(kind, strings.pieceLetters[kind]);
    });
}

function figurine(kind: PieceKind, letter: string): ElementContent {
  return {
    type: 'element',
    tagName: 'span',
    properties: { className: ['figurine', kind] },
    data: { role: 'figurine' },
    children: [{ type: 'text', value: letter }],
  };
}

/** What the reader types or a program reads keeps its letters. */
const leftAlone = new Set(['pre', 'code', 'script', 'style']);

/**
 * Gives the moves in running text their figurines too, those of phrases and of the author's plain words, so that a
 * page has one notation throughout.
 */
export function useFigurines(tree: Parents, notation: Notation): void {
  if (notation.style === 'letters') return;
  const { pieceLetters } = notation.strings;
  const letters = Object.values(pieceLetters).join('');
  const open: Parents[] = [tree];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    const children = (node.children as ElementContent[]).flatMap((child): ElementContent[] => {
      if (child.type !== 'text') return [child];
      const parts = splitMoves(child.value, letters);
      if (!parts.some(({ isPiece }) => isPiece)) return [child];
      let at = 0;
      return parts.map(({ text, isPiece }) => {
        const from = at;
        at += text.length;
        const kind = isPiece && pieceKinds.find((each) => pieceLetters[each] === text);
        return kind ? figurine(kind, text) : partOfText(child, from, at);
      });
    });
    node.children = children;
    for (const child of children) {
      if (
        child.type === 'element' &&
        child.data?.role !== 'figurine' &&
        !leftAlone.has(child.tagName)
      ) {
        open.push(child);
      }
    }
  }
}

/** `9.b3` or `7...Be7`: a move with its number, as in running text. */
export function numberedMove(
  move: Pick<PlayedMove, 'san' | 'number' | 'color'>,
  strings: Strings,
): string {
  return numberSign(move) + sanText(move.san, strings);
}
