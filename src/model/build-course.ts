import { type CourseSyntax, documentsOf } from '../read/index.ts';
import { assembleCourse, frontOf, saidByChapter } from './join/assemble-course.ts';
import { findUnsought } from './join/find-unsought.ts';
import { makeGraph } from './join/make-graph.ts';
import { mergeSaid } from './join/merge-said.ts';
import { modelLimits } from './model-limits.ts';
import { playChapters } from './play/play-chapters.ts';
import { outlineChapter } from './queries/outline.ts';
import type { Course } from './types.ts';

/** Builds the model of a course from nothing. `src/workspace` reuses what it can of the model before. */
export function buildCourse(syntax: CourseSyntax, limits = modelLimits): Course {
  const { side } = syntax.settings;
  const played = playChapters(documentsOf(syntax), { side, limits });
  const said = saidByChapter(played);
  const chapters = played.map(({ chapter, file }) => mergeSaid(chapter, said.get(file) ?? []));
  const patterns = chapters.map(({ blocks }) =>
    blocks.flatMap(({ kind, place }) => (kind === 'pattern' ? [place] : [])),
  );
  const outlines = chapters.map((chapter) => ({
    file: chapter.file,
    ...outlineChapter(chapter, side),
  }));
  const positions = Object.keys(makeGraph(outlines)).length;
  return assembleCourse(
    syntax,
    chapters.map((chapter, at) => ({
      front: frontOf(chapter),
      names: chapter.names,
      outline: outlines[at],
      whole: () => chapter,
    })),
    findUnsought(patterns, positions, limits),
  );
}
