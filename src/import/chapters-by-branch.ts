import { nameMoves } from '../chess/index.ts';
import { type ChapterMaker, checkNumber, type PartOfGames } from './chapter-maker.ts';
import { addBlocks, type DraftChapter } from './draft-chapter.ts';
import { known, nameGame, nameLine } from './name-game.ts';
import type { DraftGame } from './types.ts';
import { writeBlocks } from './write-blocks.ts';

/**
 * A chapter for each branch: of several games, for each move after those that all of them share;
 * of a single game, for its main line and for each variation at its first branching. What all share
 * is known when all have been seen: until then only their texts are kept.
 */
export function chaptersByBranch(
  nextLabel: () => string,
  gamesIn: (part: PartOfGames) => readonly DraftGame[],
): ChapterMaker {
  const parts: PartOfGames[] = [];
  let count = 0;
  let shared: readonly string[] | undefined;

  function makeChapters(): DraftChapter[] {
    const [only] = parts;
    if (count === 1 && only) {
      const [game] = gamesIn(only);
      return game ? chaptersOfGame(game, nextLabel) : [];
    }
    const chapters = new Map<string, DraftChapter>();
    for (const game of each(parts, gamesIn)) {
      const moves = game.line.moves.slice(0, (shared?.length ?? 0) + 1);
      // Games that start elsewhere, or have no moves, stand by themselves.
      const own = known(game.tags, 'FEN') !== '' || moves.length === 0;
      const branch = own ? nameGame(game) : nameMoves(moves);
      const title = own ? branch : nameLine(moves);
      const chapter = chapters.get(branch) ?? { title, blocks: [] };
      chapters.set(branch, chapter);
      checkNumber(chapters.size);
      addBlocks(chapter, writeBlocks(game, { nextLabel }), own ? '' : nameGame(game));
    }
    return [...chapters.values()];
  }

  return {
    add(games, part) {
      parts.push(part);
      count += games.length;
      for (const { tags, line } of games) {
        if (known(tags, 'FEN') !== '' || line.moves.length === 0) continue;
        const moves = line.moves.map(({ san }) => san);
        // At the last move of the first game nothing branches any more.
        if (shared === undefined) shared = moves.slice(0, -1);
        else shared = shared.slice(0, sharedLength(shared, moves));
      }
    },
    makeChapters,
  };
}

function* each(
  parts: readonly PartOfGames[],
  gamesIn: (part: PartOfGames) => readonly DraftGame[],
): Generator<DraftGame> {
  for (const part of parts) yield* gamesIn(part);
}

/** How many moves of two lines are the same. */
function sharedLength(one: readonly string[], other: readonly string[]): number {
  const end = one.findIndex((san, index) => other[index] !== san);
  return end < 0 ? one.length : end;
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
      const title = nameLine([...moves.slice(0, branching), ...block.line.moves.slice(0, 1)]);
      chapter = { title, blocks: [] };
      chapters.push(chapter);
    }
    if (chapter) addBlocks(chapter, [block], '');
  }
  return chapters;
}
