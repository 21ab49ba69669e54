import { createLocator } from '../diagnostics/index.ts';
import { eachGame } from '../movetext/index.ts';
import type { PartOfGames } from './chapter-maker.ts';
import { type PlayOptions, playGame } from './play-game.ts';
import type { DraftGame } from './types.ts';

export const longGame =
  'This is longer than any game can be, with its comments and variations, so it was left out.';

/** The games of a part of the file, played, and how many there are with those left out. */
export function gamesIn(
  { text, line, number }: PartOfGames & { readonly line: number },
  options: PlayOptions,
): { readonly games: readonly DraftGame[]; readonly all: number } {
  const pointAt = createLocator(text);
  const lineAt = (offset: number) => line - 1 + pointAt(offset).line;
  const games: DraftGame[] = [];
  let all = 0;
  for (const movetext of eachGame(text)) {
    const game = { number: number + all, movetext, text, lineAt };
    const start = lineAt(movetext.tags[0]?.span.start ?? movetext.line.span.start);
    all++;
    if (!movetext.tooLong) games.push(playGame(game, options));
    else options.note({ game: game.number, line: start, message: longGame, text: '' });
  }
  if (all === 0 && text.trim() !== '') {
    options.note({
      game: number,
      line,
      message: 'Here is no game; the text is passed over.',
      text,
    });
  }
  return { games, all };
}
