import type { Color, PieceKind } from '../chess/types.ts';

/** What an exercise says in the page's language; the site sends it as data with the exercise. */
export interface ExerciseWords {
  readonly board: string;
  readonly typed: string;
  readonly play: string;
  readonly giveUp: string;
  readonly again: string;
  readonly back: string;
  readonly on: string;
  readonly promote: string;
  readonly right: string;
  readonly also: string;
  readonly wrong: string;
  readonly legal: string;
  readonly illegal: string;
  readonly cannotGo: string;
  readonly notYours: Readonly<Record<Color, string>>;
  readonly unclear: string;
  readonly unreadable: string;
  readonly given: string;
  readonly or: string;
  readonly white: string;
  readonly black: string;
  readonly letters: Readonly<Record<PieceKind, string>>;
  readonly pieces: Readonly<Record<PieceKind, string>>;
}

/** Fills the gaps of a sentence: `{move} can be played.` */
export function fill(sentence: string, parts: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (gap, name: string) => parts[name] ?? gap);
}
