/**
 * Renders each chapter once, as a document whose links are references and whose boards are positions. Media show it:
 * the site's pages, paper, letters, e-books.
 */
export { type Addresses, assignAddresses } from './addresses.ts';
export { type Ask, askOf } from './ask/ask.ts';
export { keyAt, nodeAt } from './ask/node-at.ts';
export { type AskedOfCourse, recordAsked, stillAnswered } from './ask/recorder.ts';
export { exerciseNumber } from './blocks/exercise.ts';
export type { AnswersNode } from './blocks/exercise-answers.ts';
export { chaptersMet } from './blocks/meetings.ts';
export { glyph } from './blocks/move-link.ts';
export { renderPattern } from './blocks/pattern.ts';
export { patternPlaces } from './blocks/pattern-places.ts';
export { chapterDocument } from './chapter.ts';
export { compose } from './compose.ts';
export {
  contextOf,
  namedInWords,
  positionInWords,
  type RenderContext,
  type SharedContext,
} from './context.ts';
export type { Role, Target } from './document.ts';
export { element, text } from './hast.ts';
export type { Medium } from './medium/medium.ts';
export { addressInSite, pageMedium } from './medium/page-medium.ts';
export { placeInWords } from './medium/places.ts';
export { resolve, resolveAll } from './medium/resolve.ts';
export { escapeValue, writeHtml, writeInPieces } from './medium/write-html.ts';
export { writeXml } from './medium/write-xml.ts';
export { namesByKey } from './names-by-key.ts';
export { newsBoards, newsChapter, newsId, newsPage, newsPicture } from './news-chapter.ts';
export { elementsIn } from './nodes-in.ts';
export { numberedMove, sanText } from './notation.ts';
export { freshParts, type PartMaker, type Parts, printPart } from './parts.ts';
export { courseInks } from './pictures/course-inks.ts';
export { coverPosition } from './pictures/cover-position.ts';
export { cardPath, diagramNames, imagePath, pictureOf } from './pictures/diagram-images.ts';
export { emblematic } from './pictures/emblematic.ts';
export { targetOf } from './prose/links.ts';
export { proseHandlers } from './prose/prose.ts';
export { referenceWords } from './prose/reference-words.ts';
export { tidySpaces } from './prose/tidy-spaces.ts';
export { remembered } from './remembered.ts';
export { titlesByKey } from './titles-by-key.ts';
export { partOfText, seamsOf } from './written-at.ts';
