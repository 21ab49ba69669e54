export { bodyTexts } from './body-texts.ts';
export type { Choices } from './choices.ts';
export { documentsOf, isPageFile, type WithPages } from './documents.ts';
export { fileAddress, fileOfAddress } from './file-address.ts';
export { engineFile, type FindOptions, findFiles, NoCourseError, themeFile } from './find-files.ts';
export { inLettersOf, listLetters } from './in-san.ts';
export { learnWords } from './learn.ts';
export { leaveOutDrafts } from './leave-out-drafts.ts';
export { idLine } from './missing-id.ts';
export { arrowProblem, isLabel, labelHint, parseArrow, parseList, squareProblem } from './names.ts';
export type * from './nodes.ts';
export { directiveNames } from './nodes.ts';
export { attributes as blockAttributes, blockNames } from './read-block.ts';
export {
  type ChapterOptions,
  chapterChoices,
  pageChoices,
  readChapter,
  reservedIds,
} from './read-chapter.ts';
export { type FilesBeside, filesBeside, readCourse } from './read-course.ts';
export { diagramChoices } from './read-diagram.ts';
export { exerciseChoices } from './read-exercise.ts';
export { type CourseFrame, readFrame, repeatedIds } from './read-frame.ts';
export { type JudgementText, readJudgement } from './read-judgement.ts';
export { isDay } from './read-news.ts';
export { patternChoices } from './read-pattern.ts';
export { marginChoices, readSettings, settingChoices } from './read-settings.ts';
export { gamesLimit, readTextFile } from './read-text-file.ts';
export { readTranslationSettings, translatedSettings } from './read-translation-settings.ts';
export { remarkCourse } from './remark-course.ts';
export { isLanguageTag } from './setting-fields.ts';
export { findShelf, isShelf, type ShelfFiles } from './shelf/find-shelf.ts';
export { type FolderSeen, placeCourses, type ShelvedFolder } from './shelf/place-courses.ts';
export { readShelfSettings, type ShelfSettings, shelfFile } from './shelf/read-shelf-settings.ts';
export type * from './types.ts';
export { webAddressFault } from './web-address.ts';
export { writeLetters } from './write-letters.ts';
export { type YamlText, yamlTexts } from './yaml-texts.ts';
