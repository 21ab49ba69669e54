import { addBlocks, type DraftChapter } from './draft-chapter.ts';
import { known, nameGame, nameMoves } from './name-game.ts';
import type { DraftGame } from './types.ts';
import { writeBlocks } from './write-blocks.ts';

/**
 * A chapter for each branch: of several games, for each move after those that all of them share;
 * of a single game, for its main line and for each variation at its first branching.
 */
export function chaptersByBranch(
  games: readonly DraftGame[],
  nextLabel: () => string,
): DraftChapter[] {
  const [only] = games;
  if (games.length === 1 && only) return chaptersOfGame(only, nextLabel);
  const shared = sharedMoves(games);
  const chapters = new Map<string, DraftChapter>();
  for (const game of games) {
    const moves = game.line.moves.slice(0, shared + 1);
    // Games that start elsewhere, or have no moves, stand by themselves.
    const own = known(game.tags, 'FEN') !== '' || moves.length === 0;
    const title = own ? nameGame(game) : nameMoves(moves);
    const chapter = chapters.get(title) ?? { title, blocks: [] };
    chapters.set(title, chapter);
    addBlocks(chapter, writeBlocks(game, { nextLabel }), own ? '' : nameGame(game));
  }
  return [...chapters.values()];
}

/** How many moves the main lines of all games from the initial position have in common. */
function sharedMoves(games: readonly DraftGame[]): number {
  const lines = games
    .filter(({ tags, line }) => known(tags, 'FEN') === '' && line.moves.length > 0)
    .map(({ line }) => line.moves);
  const [first = []] = lines;
  let shared = 0;
  while (
    shared < first.length - 1 &&
    lines.every((moves) => moves[shared]?.san === first[shared]?.san)
  ) {
    shared += 1;
  }
  return shared;
}

function chaptersOfGame(game: DraftGame, nextLabel: () => string): DraftChapter[] {
  const { moves } = game.line;
  const branching = moves.findIndex(({ after }) =>
    after.some((item) => item.type === 'variation' && item.line.moves.length > 0),
  );
  const items = moves[branching]?.after ?? [];
  const apart = new Set(items.flatMap((item) => (item.type === 'variation' ? [item.line] : [])));
  const chapters: DraftChapter[] = [{ title: nameGame(game), blocks: [] }];
  for (const block of writeBlocks(game, { nextLabel, apart })) {
    let [chapter] = chapters;
    if (apart.has(block.line)) {
      const title = nameMoves([...moves.slice(0, branching), ...block.line.moves.slice(0, 1)]);
      chapter = { title, blocks: [] };
      chapters.push(chapter);
    }
    if (chapter) addBlocks(chapter, [block], '');
  }
  return chapters;
}
