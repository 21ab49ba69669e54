/** A PGN file laid against a course: what is new in it, and the edits that write it. */
export { gamesChapter } from './games-chapter.ts';
export type { TakenAs } from './is-played-game.ts';
export { type LayOptions, layFile } from './lay-file.ts';
export type {
  AgainstAdvice,
  Laid,
  NewBranch,
  NewNode,
  PastEnd,
  PlayedGame,
  SaidOnly,
  SourceGame,
} from './types.ts';
export { branchPoint, type WrittenBranches, writeBranches } from './write-branches.ts';
