import { sanIn } from '../../../chess/letters.ts';
import { pieceKinds } from '../../../chess/types.ts';
import type { PracticeWords } from '../../../contract/words.ts';

/** Canonical SAN in the letters of the page. */
export function printed(san: string, { letters }: PracticeWords): string {
  return sanIn(letters, san);
}

/** The same for the page, with figures where the course has them: `.figurine`, as in its text. */
export function printedNodes(san: string, words: PracticeWords): (string | HTMLElement)[] {
  const text = printed(san, words);
  if (!words.figurines) return [text];
  return text.split(/(\p{Lu})/u).map((part) => {
    const kind = pieceKinds.find((each) => part !== '' && words.letters[each] === part);
    if (kind === undefined) return part;
    const figure = document.createElement('span');
    figure.className = `figurine ${kind}`;
    figure.textContent = part;
    return figure;
  });
}
