import type { ElementContent } from 'hast';
import { kindOfSanLetter, numberSign, type PlayedMove, sanIn } from '../chess/index.ts';
import type { Strings } from '../strings/index.ts';

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
      if (kind === undefined) return { type: 'text', value: part };
      return {
        type: 'element',
        tagName: 'span',
        properties: { className: ['figurine', kind] },
        data: { role: 'figurine' },
        children: [{ type: 'text', value: strings.pieceLetters[kind] }],
      };
    });
}

/** `9.b3` or `7...Be7`: a move with its number, as in running text. */
export function numberedMove(
  move: Pick<PlayedMove, 'san' | 'number' | 'color'>,
  strings: Strings,
): string {
  return numberSign(move) + sanText(move.san, strings);
}
