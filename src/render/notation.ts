import type { ElementContent, Parents } from 'hast';
import {
  kindOfSanLetter,
  numberSign,
  type PieceKind,
  type PlayedMove,
  pieceKinds,
  sanIn,
} from '../chess/index.ts';
import { splitUnbroken } from '../contract/index.ts';
import type { Strings } from '../strings/index.ts';
import { element, text } from './hast.ts';
import { replaceWhere } from './replace-where.ts';
import { partOfText } from './written-at.ts';

/** How moves are printed: with the piece letters of the language, or with figurines that are read aloud as such. */
export interface Notation {
  readonly style: 'letters' | 'figurines';
  readonly strings: Strings;
}

/** SAN as plain text with the language's piece letters. */
export function sanText(san: string, strings: Strings): string {
  return sanIn(strings.pieceLetters, san);
}

/**
 * SAN as HTML. A figurine is the piece's letter with the figure drawn over it by the style
 * sheet, so that copied text, speech and a page without styles keep the letter.
 */
export function sanHtml(san: string, { style, strings }: Notation): ElementContent[] {
  if (style === 'letters' || !/[KQRBN]/.test(san)) return [text(sanText(san, strings))];
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

/** Text that readers type or programs read keeps its letters. */
const leftAlone = new Set(['pre', 'code', 'script', 'style']);

/**
 * Puts figurines into moves in running text, both in our phrases and in the author's plain words, so that a page has
 * one notation.
 */
export function useFigurines(tree: Parents, notation: Notation): void {
  if (notation.style === 'letters') return;
  const { pieceLetters } = notation.strings;
  const letters = Object.values(pieceLetters).join('');
  const anyLetter = new RegExp(`[${letters}]`, 'u');
  const open: Parents[] = [tree];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    const split = (child: ElementContent): ElementContent | ElementContent[] => {
      if (child.type !== 'text' || !anyLetter.test(child.value)) return child;
      const runs = splitUnbroken(child.value, letters);
      if (!runs.flat().some(({ isPiece }) => isPiece)) return child;
      let at = 0;
      return runs.flatMap((run) => {
        const shown = run.map(({ text, isPiece }) => {
          const from = at;
          at += text.length;
          const kind = isPiece && pieceKinds.find((each) => pieceLetters[each] === text);
          return kind ? figurine(kind, text) : partOfText(child, from, at);
        });
        // The style sheet keeps a move of a block on one line.
        const isWhole = isMove(node) || !run.some(({ isPiece }) => isPiece);
        return isWhole ? shown : [element('span', { className: ['unbroken'] }, shown)];
      });
    };
    const children = replaceWhere(node.children as ElementContent[], split);
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

function isMove(node: Parents): boolean {
  return node.type === 'element' && node.data?.role === 'move';
}

/** `9.b3` or `7...Be7`: a move with its number, as in running text. */
export function numberedMove(
  move: Pick<PlayedMove, 'san' | 'number' | 'color'>,
  strings: Strings,
): string {
  return numberSign(move) + sanText(move.san, strings);
}
