import type { Color, PieceKind } from '../../chess/types.ts';
import type { Leaving } from '../../lookup/games/parting-of.ts';
import type { GameFault } from '../../lookup/games/types.ts';

/** A sentence about a number, in its forms. */
export interface Counted {
  readonly one: string;
  readonly other: string;
}

/** What the page says in its language; it sends them as data. */
export interface CompareWords {
  readonly choose: string;
  readonly drop: string;
  readonly paste: string;
  readonly go: string;
  readonly stop: string;
  readonly progress: string;
  readonly read: Counted;
  readonly stopped: Counted;
  readonly done: Counted;
  readonly noGames: string;
  readonly failed: string;
  readonly result: string;
  readonly figures: Readonly<
    Record<
      'games' | 'met' | 'within' | 'apart' | 'otherSide' | 'empty' | 'variant' | 'broken',
      string
    >
  >;
  readonly lastKnown: string;
  readonly player: string;
  readonly playerHint: string;
  readonly playerHintBoth: string;
  readonly nobody: string;
  readonly advisedYou: string;
  readonly advised: string;
  readonly advisedHint: string;
  readonly asideYou: string;
  readonly aside: string;
  readonly asideHint: string;
  /** Of a move that the course has beside its advice. */
  readonly asideMove: Readonly<Record<'option' | 'bad', string>>;
  readonly covered: string;
  readonly coveredHint: string;
  readonly known: string;
  readonly knownHint: string;
  readonly ended: string;
  readonly endedHint: string;
  readonly noLeaving: string;
  readonly position: string;
  readonly count: string;
  readonly advice: string;
  readonly played: string;
  readonly score: string;
  readonly scoreInWords: string;
  readonly showGames: Counted;
  readonly moreMoves: Counted;
  readonly morePositions: Counted;
  readonly list: string;
  readonly listHere: string;
  readonly allGames: string;
  readonly moreGames: Counted;
  readonly broken: Counted;
  readonly game: string;
  readonly faults: Readonly<Record<GameFault['kind'], string>>;
  readonly variant: string;
  readonly empty: string;
  /** The sentences of the games that the course itself shows. */
  readonly gameLeaves: Readonly<Record<Leaving | 'never', string>>;
  readonly startPosition: string;
  readonly after: string;
  readonly inChapter: string;
  readonly and: string;
  readonly someone: string;
  readonly white: string;
  readonly black: string;
  readonly letters: Readonly<Record<PieceKind, string>>;
}

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
  const plurals = new Intl.PluralRules(language);
  const figure = (number: number) => numbers.format(number);
  return {
    words,
    side: (color) => words[color],
    figure,
    counted(sentence, number) {
      const form = plurals.select(number) === 'one' ? sentence.one : sentence.other;
      return form.replace('{n}', figure(number));
    },
  };
}
