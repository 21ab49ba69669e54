export { bodyTexts } from './blocks/body-texts.ts';
export { learnWords } from './blocks/learn.ts';
export { attributes as blockAttributes, blockNames } from './blocks/read-block.ts';
export { diagramChoices } from './blocks/read-diagram.ts';
export { exerciseChoices } from './blocks/read-exercise.ts';
export { patternChoices } from './blocks/read-pattern.ts';
export { documentsOf, isPageFile } from './documents.ts';
export {
  engineFile,
  type FindOptions,
  findFiles,
  NoCourseError,
  themeFile,
} from './files/find-files.ts';
export { gamesLimit, readTextFile } from './files/read-text-file.ts';
export { type FilesBeside, filesBeside } from './files-beside.ts';
export { chapterChoices, pageChoices } from './front-matter/read-front.ts';
export { leaveOutDrafts } from './leave-out-drafts.ts';
export { decodeAddress, fileAddress } from './links/file-address.ts';
export { remarkCourse } from './markdown/remark-course.ts';
export { inLettersOf, listLetters } from './moves/in-san.ts';
export { arrowProblem, isLabel, labelHint, parseArrow, parseList, squareProblem } from './names.ts';
export type * from './nodes.ts';
export { directiveNames } from './nodes.ts';
export { type JudgementText, readJudgement } from './prose/read-judgement.ts';
export { type ChapterOptions, readChapter } from './read-chapter.ts';
export { readCourse } from './read-course.ts';
export { type CourseFrame, readFrame, repeatedIds } from './read-frame.ts';
export { isDay } from './read-news.ts';
export { idLine } from './settings/missing-id.ts';
export { marginChoices, readSettings, settingChoices } from './settings/read-settings.ts';
export { readTranslationSettings } from './settings/read-translation-settings.ts';
export { isLanguageTag } from './settings/setting-fields.ts';
export { webAddressFault } from './settings/web-address.ts';
export { findShelf, isShelf, type ShelfFiles } from './shelf/find-shelf.ts';
export { type FolderSeen, placeCourses, type ShelvedFolder } from './shelf/place-courses.ts';
export { readShelfSettings, shelfFile } from './shelf/read-shelf-settings.ts';
export type * from './types.ts';
export { writeLetters } from './write-letters.ts';
export type { Choices } from './yaml/choices.ts';
export { yamlTexts } from './yaml/yaml-texts.ts';
