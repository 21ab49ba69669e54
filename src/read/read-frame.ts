import { nearestName, topOf } from '../diagnostics/index.ts';
import { readTheme, type ThemeSyntax } from '../look/index.ts';
import { isPageFile } from './documents.ts';
import type { FilesBeside } from './files-beside.ts';
import { readNews } from './read-news.ts';
import { findMisshapenSigns } from './settings/find-misshapen-signs.ts';
import { findUnfitSigns } from './settings/find-unfit-signs.ts';
import { missingSettings, readSettings } from './settings/read-settings.ts';
import type {
  ChapterSyntax,
  CourseFiles,
  CourseProblem,
  CourseSettings,
  CourseSyntax,
  Theme,
} from './types.ts';

/** Everything of a course but its chapters and pages. */
export type CourseFrame = Omit<CourseSyntax, 'chapters' | 'pages'>;

export function readFrame(files: CourseFiles, beside: FilesBeside): CourseFrame {
  const { settings, places, problems, missingId } = files.settings
    ? readSettings(files.settings)
    : missingSettings();
  const theme = files.theme && readTheme(files.theme, beside);
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
      ...(theme && { theme: themeOf(theme) }),
      problems: [...files.problems, ...problems],
    };
  }
  return {
    settings,
    settingPlaces: places,
    ...(missingId && { missingId }),
    news: (files.news ?? []).map((file) => readNews(file, beside)),
    ...(theme && { theme: themeOf(theme) }),
    problems: [
      ...problemsOfFiles(files, settings),
      ...problems,
      ...missingRules(files, settings, places),
      ...findUnfitSigns(settings, places, beside),
      ...findMisshapenSigns(settings, places, files.pictures ?? new Map()),
      ...(theme?.problems ?? []).map((problem) => ({
        rule: 'theme-unreadable' as const,
        ...problem,
      })),
    ],
  };
}

function themeOf({ look, places, partColours }: ThemeSyntax): Theme {
  return { look, places, partColours };
}

/** Problems in `rules/` matter only if something there is run. */
function problemsOfFiles(
  { problems }: CourseFiles,
  { ownRules }: CourseSettings,
): readonly CourseProblem[] {
  return ownRules.length > 0 ? problems : problems.filter(({ rule }) => rule !== 'own-rule');
}

/** Files of code that `course.yaml` names and that are not there. */
function missingRules(
  { rules, problems }: CourseFiles,
  { ownRules }: CourseSettings,
  places: CourseFrame['settingPlaces'],
): CourseProblem[] {
  if (rules === undefined) return [];
  const names = rules.map(({ path }) => path.replace(/^rules\//, ''));
  return ownRules.flatMap((name) => {
    const isThere =
      names.includes(name) || problems.some(({ place }) => place.file === `rules/${name}`);
    if (isThere) return [];
    const near = nearestName(name, names);
    return [
      {
        rule: 'own-rule',
        place: places[`own-rules.${name}`] ?? topOf('course.yaml'),
        message: `There is no file rules/${name}.`,
        hint: near ? `Did you mean \`${near}\`?` : 'Write it, or take this line out.',
      },
    ];
  });
}

/** Reports chapters and pages that would be published under the same name. */
export function repeatedIds(
  chapters: readonly Pick<ChapterSyntax, 'id' | 'file'>[],
): CourseProblem[] {
  const first = new Map<string, string>();
  return chapters.flatMap(({ id, file }): CourseProblem[] => {
    // Case-insensitive, as some file systems are.
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
