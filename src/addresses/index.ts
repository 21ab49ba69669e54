/** Where everything of a chapter stands on its page: the ids of moves, boards and headings. */
export { chapterIds, lineKinds } from './chapter-ids.ts';
export { gameMoves } from './game-moves.ts';
export type { IdGiver } from './id-giver.ts';
export { isTarget, type LinkTargets, linkTargets } from './link-targets.ts';
export { idOfName, namedIds, offsetOf, repeatedTitle } from './named-ids.ts';
export { resolveFragment } from './resolve-fragment.ts';
