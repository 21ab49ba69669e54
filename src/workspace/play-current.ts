import {
  type Chapter,
  type ChapterToPlay,
  firstNames,
  mergeSaid,
  modelLimits,
  type NameInCourse,
  type PlayedChapter,
  playChapters,
  type SaidElsewhere,
  type Side,
  saidByChapter,
} from '../model/index.ts';
import type { ChapterNow } from './chapter-now.ts';
import { hasCircle, printName } from './name-prints.ts';
import { hashOf } from './questions.ts';

/** What the chapters of a course say of one another's positions. */
export interface PlayedCourse {
  readonly names: ReadonlyMap<string, NameInCourse>;
  /** What others say of each chapter's positions, by its file. */
  readonly said: ReadonlyMap<string, readonly SaidElsewhere[]>;
}

/**
 * Plays the chapters of which nothing is kept, and first trusts what is kept of the others. A chapter is played again if
 * a name that it used has changed, until all agree.
 */
export function playCurrent(chapters: readonly ChapterNow[], side: Side): PlayedCourse {
  for (;;) {
    playWhere(chapters, ({ kept }) => kept === undefined, side);
    const names = firstNames(
      chapters.map((chapter) => ({ file: chapter.file, ...chapter.play() })),
    );
    const said = saidByChapter(chapters.map((chapter) => chapter.play()));
    // The findings of blocks in a circle depend on where it is entered, so nothing kept is valid.
    const isCircular = hasCircle(names) || chapters.some((chapter) => chapter.play().isCircular);
    const stale = chapters.filter(
      ({ kept, file }) =>
        kept &&
        (isCircular ||
          kept.said !== printSaid(said.get(file)) ||
          kept.played.asked.some(([name, print]) => printName(names.get(name)) !== print)),
    );
    if (stale.length === 0) return { names, said };
    for (const chapter of stale) chapter.forget();
  }
}

/** Plays some chapters, with the names of the others as they are. */
export function playWhere(
  chapters: readonly ChapterNow[],
  isToPlay: (chapter: ChapterNow, at: number) => boolean,
  side: Side,
): void {
  const toPlay = new Set(chapters.filter(isToPlay));
  if (toPlay.size === 0) return;
  const played = playChapters(
    chapters.flatMap((chapter): ChapterToPlay[] => {
      if (toPlay.has(chapter)) return [chapter.syntax().syntax];
      const { names } = chapter.play();
      // Others can do nothing for those that are played.
      return names.length === 0 ? [] : [{ file: chapter.file, names }];
    }),
    { side, limits: modelLimits },
  );
  const byFile = new Map(played.map((chapter): [string, PlayedChapter] => [chapter.file, chapter]));
  for (const chapter of toPlay) chapter.played = byFile.get(chapter.file);
}

/** A chapter with what others say of its positions. */
export function mergedChapter({ played, file }: ChapterNow, { said }: PlayedCourse): Chapter {
  if (played === undefined) throw new Error(`${file} has not been played`);
  return mergeSaid(played.chapter, said.get(file) ?? []);
}

export function printSaid(said: readonly SaidElsewhere[] = []): string {
  return said.length === 0 ? '' : hashOf(JSON.stringify(said));
}
