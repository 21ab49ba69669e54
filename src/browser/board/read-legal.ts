import { kindOfUciLetter } from '../../chess/uci.ts';
import type { BoardMove } from './board-state.ts';

/** Reads the moves that a page carries as text: `Nf3:g1f3 e8=Q:e7e8q`. */
export function readLegal(text: string): BoardMove[] {
  return text.split(' ').flatMap((entry) => {
    const [, san, from, to, letter = ''] =
      /^(.+):([a-h][1-8])([a-h][1-8])([qrbn]?)$/.exec(entry) ?? [];
    if (san === undefined || from === undefined || to === undefined) return [];
    return [{ san, from, to, promotion: kindOfUciLetter[letter] }];
  });
}
