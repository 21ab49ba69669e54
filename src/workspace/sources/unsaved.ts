import { compareNames } from '../../diagnostics/index.ts';
import {
  type CourseFiles,
  type SourceFile,
  type TranslationFiles,
  themeFile,
} from '../../read/index.ts';

/**
 * The files of a course as an editor has them: unsaved texts replace those on the disk or add to them.
 * @param unsaved texts by path, such as `chapters/02-main.md`.
 */
export function withUnsaved(files: CourseFiles, unsaved: ReadonlyMap<string, string>): CourseFiles {
  if (unsaved.size === 0) return files;
  const settings = unsaved.get('course.yaml') ?? files.settings?.text;
  const theme = unsaved.get(themeFile) ?? files.theme?.text;
  return {
    ...files,
    ...(theme === undefined ? {} : { theme: sourceOf(themeFile, theme) }),
    ...(settings === undefined ? {} : { settings: sourceOf('course.yaml', settings) }),
    chapters: joined(files.chapters, unsaved, /^chapters\/[^/]+\.md$/),
    pages: joined(files.pages ?? [], unsaved, /^pages\/[^/]+\.md$/),
    games: joined(files.games, unsaved, /^games\/[^/]+\.pgn$/),
    news: joined(files.news ?? [], unsaved, /^news\/[^/]+\.md$/),
    ...(files.translations && {
      translations: files.translations.map((each) => unsavedIn(each, unsaved)),
    }),
  };
}

/** Only files of a translation that are on the disk already can be replaced. */
function unsavedIn(
  translation: TranslationFiles,
  unsaved: ReadonlyMap<string, string>,
): TranslationFiles {
  const now = (file: SourceFile): SourceFile => {
    const text = unsaved.get(file.path);
    return text === undefined ? file : sourceOf(file.path, text);
  };
  const { chapters, pages, news, settings } = translation;
  return {
    ...translation,
    chapters: chapters.map(now),
    pages: pages.map(now),
    news: news.map(now),
    ...(settings && { settings: now(settings) }),
  };
}

function joined(
  saved: readonly SourceFile[],
  unsaved: ReadonlyMap<string, string>,
  isOne: RegExp,
): SourceFile[] {
  const byPath = new Map(saved.map((file) => [file.path, file]));
  for (const [path, text] of unsaved) if (isOne.test(path)) byPath.set(path, sourceOf(path, text));
  // In the order of a folder's files.
  return [...byPath.values()].sort((a, b) => compareNames(a.path, b.path));
}

function sourceOf(path: string, text: string): SourceFile {
  return { path, text: text.replace(/^\uFEFF/, '') };
}
