/** What a chapter says, as HTML: for the pages of the site, for books and for letters. */
export { chapterTree } from './chapter.ts';
export { compose } from './compose.ts';
export { contextOf, nodeAt, positionInWords, type RenderContext } from './context.ts';
export { pictureOf } from './diagram-images.ts';
export { element, text } from './hast.ts';
export type { Medium } from './medium.ts';
export { newsChapter, newsId, newsPage } from './news.ts';
export { elementsIn } from './nodes-in.ts';
export { numberedMove, sanText } from './notation.ts';
export { emblematic } from './site.ts';
export { makeStill } from './still.ts';
export { writeXml } from './write-xml.ts';
