/**
 * What a chapter says: made once as a document, whose links are references and whose boards are positions, and
 * shown by media: the site's pages, paper, letters, e-books.
 */
export { type Addresses, assignAddresses } from './addresses.ts';
export { type Ask, askOf } from './ask/ask.ts';
export { nodeAt } from './ask/node-at.ts';
export { type AskedOfCourse, recordAsked, stillAnswered } from './ask/recorder.ts';
export { chapterDocument } from './chapter.ts';
export { compose } from './compose.ts';
export {
  contextOf,
  namedInWords,
  positionInWords,
  type RenderContext,
  type SharedContext,
} from './context.ts';
export { courseInks } from './course-inks.ts';
export { coverPosition } from './cover-position.ts';
export { cardPath, diagramNames, imagePath, pictureOf } from './diagram-images.ts';
export type { Target } from './document.ts';
export { emblematic } from './emblematic.ts';
export { exerciseNumber } from './exercise.ts';
export type { AnswersNode } from './exercise-answers.ts';
export { element, text } from './hast.ts';
export { targetOf } from './links.ts';
export type { Medium } from './medium.ts';
export { chaptersMet } from './meetings.ts';
export { glyph } from './move-link.ts';
export { namesByKey } from './names-by-key.ts';
export { newsBoards, newsChapter, newsId, newsPage, newsPicture } from './news-chapter.ts';
export { elementsIn } from './nodes-in.ts';
export { numberedMove, sanText } from './notation.ts';
export { addressInSite, pageMedium } from './page-medium.ts';
export { freshParts, type PartMaker, type Parts, printPart } from './parts.ts';
export { renderPattern } from './pattern.ts';
export { patternPlaces } from './pattern-places.ts';
export { placeInWords } from './places.ts';
export { proseHandlers } from './prose.ts';
export { referenceWords } from './reference-words.ts';
export { resolve, resolveAll } from './resolve.ts';
export { tidySpaces } from './tidy-spaces.ts';
export { titlesByKey } from './titles-by-key.ts';
export { escapeValue, writeHtml, writeInPieces } from './write-html.ts';
export { writeXml } from './write-xml.ts';
export { partOfText, seamsOf } from './written-at.ts';
