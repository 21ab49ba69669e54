import type { Color } from '../../chess/types.ts';
import { type Counted, counted } from '../../contract/sentence.ts';
import type { CompareWords } from '../../contract/words.ts';

/** Speaks the page's language: its sentences, its plurals, its figures. */
export interface Speech {
  readonly words: CompareWords;
  readonly side: (color: Color) => string;
  readonly figure: (number: number) => string;
  /** The form of a sentence for a number, with `{n}` filled in. */
  readonly counted: (sentence: Counted, number: number) => string;
}

export function speak(words: CompareWords, language: string): Speech {
  const numbers = new Intl.NumberFormat(language);
  return {
    words,
    side: (color) => words[color],
    figure: (number) => numbers.format(number),
    counted: (sentence, number) => counted(sentence, number, language),
  };
}
