import { type ChapterOptions, readChapter, topOf } from './read-chapter.ts';
import { readNews } from './read-news.ts';
import { missingSettings, readSettings } from './read-settings.ts';
import type { ChapterSyntax, CourseFiles, CourseProblem, CourseSyntax } from './types.ts';

/** Reads the files of a course; pure, so that tests and editors can read what is not on a disk. */
export function readCourse(
  files: CourseFiles,
  options: Pick<ChapterOptions, 'frontMatter'> = {},
): CourseSyntax {
  const { settings, places, problems, missingId } = files.settings
    ? readSettings(files.settings)
    : missingSettings();
  const media = new Set(files.media);
  const { unfit = new Map() } = files;
  const paths = new Set(files.chapters.map(({ path }) => path));
  const chapters = files.chapters.map((file) =>
    readChapter(file, { ...options, media, unfit, chapters: paths, games: files.games }),
  );
  const news = (files.news ?? []).map((file) => readNews(file, { media, unfit, chapters: paths }));
  return {
    settings,
    settingPlaces: places,
    ...(missingId && { missingId }),
    chapters,
    news,
    problems: [...files.problems, ...problems, ...repeatedIds(chapters)],
  };
}

function repeatedIds(chapters: readonly ChapterSyntax[]): CourseProblem[] {
  const first = new Map<string, ChapterSyntax>();
  return chapters.flatMap((chapter): CourseProblem[] => {
    // Compared without case: some file systems know no difference.
    const earlier = first.get(chapter.id.toLowerCase());
    if (!earlier) {
      first.set(chapter.id.toLowerCase(), chapter);
      return [];
    }
    return [
      {
        rule: 'chapter-unreadable',
        place: topOf(chapter.file),
        message: `This chapter would be published as ${chapter.id}.html, as ${earlier.file} is.`,
        hint: 'Give one of them another `id: …` in its front matter, or another file name.',
      },
    ];
  });
}
