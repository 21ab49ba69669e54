import { isPageFile } from './documents.ts';
import { topOf } from './read-chapter.ts';
import type { FilesBeside } from './read-course.ts';
import { readNews } from './read-news.ts';
import { missingSettings, readSettings } from './read-settings.ts';
import type { ChapterSyntax, CourseFiles, CourseProblem, CourseSyntax } from './types.ts';

/** Everything of a course but its chapters and pages. */
export type CourseFrame = Omit<CourseSyntax, 'chapters' | 'pages'>;

export function readFrame(files: CourseFiles, beside: FilesBeside): CourseFrame {
  const { settings, places, problems, missingId } = files.settings
    ? readSettings(files.settings)
    : missingSettings();
  const { translation } = files;
  if (translation) {
    const { tag, id, words } = translation;
    const { site } = settings;
    return {
      settings: {
        ...settings,
        ...words,
        id,
        language: tag,
        ...(site !== undefined && { site: `${site}/${tag}` }),
      },
      settingPlaces: places,
      news: (files.news ?? []).map((file) => readNews(file, beside)),
      problems: [...files.problems, ...problems],
    };
  }
  return {
    settings,
    settingPlaces: places,
    ...(missingId && { missingId }),
    news: (files.news ?? []).map((file) => readNews(file, beside)),
    problems: [...files.problems, ...problems],
  };
}

/** Chapters and pages that would be published under one name. */
export function repeatedIds(
  chapters: readonly Pick<ChapterSyntax, 'id' | 'file'>[],
): CourseProblem[] {
  const first = new Map<string, string>();
  return chapters.flatMap(({ id, file }): CourseProblem[] => {
    // Compared without case: some file systems know no difference.
    const earlier = first.get(id.toLowerCase());
    if (earlier === undefined) {
      first.set(id.toLowerCase(), file);
      return [];
    }
    return [
      {
        rule: 'chapter-unreadable',
        place: topOf(file),
        message: `This ${isPageFile(file) ? 'page' : 'chapter'} would be published as ${id}.html, as ${earlier} is.`,
        hint: 'Give one of them another `id: …` in its front matter, or another file name.',
      },
    ];
  });
}
