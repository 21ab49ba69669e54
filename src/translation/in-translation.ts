import { courseId } from '../model/index.ts';
import { type CourseFiles, readSettings, type SourceFile } from '../read/index.ts';
import { languageOf, piecesOf, type Translation } from './read-translations.ts';
import { wordsOfSettings } from './words-of-settings.ts';

/**
 * The files of a course in another language: translated texts under the original's names, so that links, pictures,
 * games and addresses are the same. What is not translated is there in the original's words.
 * @param which chapters: those that readers get, or all that are there.
 */
export function inTranslation(
  files: CourseFiles,
  { tag, folder, chapters, files: translated }: Translation,
  which: 'ready' | 'written',
): CourseFiles {
  const language = languageOf(files);
  const { translations: _, facts: __, ...course } = files;
  const pieces = piecesOf(files, translated);
  const settings = files.settings && readSettings(files.settings).settings;
  const news = new Map(translated.news.map((file) => [file.path.slice(folder.length + 1), file]));
  const inLanguage = (original: SourceFile): SourceFile => {
    const chapter = chapters.get(original.path);
    if (chapter === undefined || (which === 'ready' && !chapter.isReady)) {
      return { ...original, language, ...(pieces.original && { pieces: pieces.original }) };
    }
    const { source, headings } = chapter;
    return {
      path: original.path,
      text: source.text,
      headings,
      ...(pieces.here && { pieces: pieces.here }),
    };
  };
  return {
    ...course,
    translation: {
      tag,
      id: settings ? courseId({ settings }) : '',
      words: wordsOfSettings(translated, language),
    },
    chapters: files.chapters.map(inLanguage),
    ...(files.pages && { pages: files.pages.map(inLanguage) }),
    news: (files.news ?? []).map((original) => {
      const text = news.get(original.path)?.text;
      return text === undefined
        ? original
        : { path: original.path, text, ...(pieces.here && { pieces: pieces.here }) };
    }),
    problems: [],
  };
}
