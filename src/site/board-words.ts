import type { Strings } from '../strings/index.ts';

/** What a page sends to its boards, as `data-words` of what they stand in. */
export function boardWords(strings: Strings, more: Readonly<Record<string, unknown>> = {}): string {
  return JSON.stringify({
    ...strings.board,
    letters: strings.pieceLetters,
    pieces: strings.pieceNames,
    white: strings.white,
    black: strings.black,
    ...more,
  });
}
