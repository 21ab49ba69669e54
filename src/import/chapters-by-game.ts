import { type ChapterMaker, checkNumber } from './chapter-maker.ts';
import { addBlocks, type DraftChapter } from './draft-chapter.ts';
import { known, nameGame } from './name-game.ts';
import { writeBlocks } from './write-blocks.ts';

/**
 * A chapter for each game. Games that follow one another with the same `Chapter` tag, as our export
 * has it, stay together.
 */
export function chaptersByGame(nextLabel: () => string): ChapterMaker {
  const chapters: DraftChapter[] = [];
  let last = '';
  return {
    add(games) {
      for (const game of games) {
        const told = known(game.tags, 'Chapter');
        const previous = told !== '' && told === last ? chapters.at(-1) : undefined;
        const chapter = previous ?? { title: nameGame(game), blocks: [] };
        if (!previous) chapters.push(chapter);
        checkNumber(chapters.length);
        last = told;
        addBlocks(chapter, writeBlocks(game, { nextLabel }), known(game.tags, 'Section'));
      }
    },
    makeChapters: () => chapters,
  };
}
