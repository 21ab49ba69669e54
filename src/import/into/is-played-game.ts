import { isPiece } from '../directives/index.ts';
import { tagValue } from '../directives/tag-value.ts';
import { known } from '../name-game.ts';
import type { DraftGame } from '../types.ts';

/** How the games of a file are taken; `auto` looks at each. */
export type TakenAs = 'auto' | 'lines' | 'games';

/**
 * Whether a game was played, so that it illustrates and says nothing of what is advised: it has both players and
 * a result. What our own export wrote says it of itself.
 */
export function isPlayedGame(game: DraftGame, as: TakenAs): boolean {
  if (isPiece(game)) return tagValue(game.tags, 'Block') === 'game';
  if (as !== 'auto') return as === 'games';
  const hasPlayers = known(game.tags, 'White') !== '' && known(game.tags, 'Black') !== '';
  const result = game.result ?? tagValue(game.tags, 'Result');
  return hasPlayers && /^(?:1-0|0-1|1\/2-1\/2)$/.test(result);
}

/** Whether a piece of a course has moves that teach: a block of moves. */
export function hasLines(game: DraftGame): boolean {
  return !isPiece(game) || tagValue(game.tags, 'Block') === 'moves';
}
