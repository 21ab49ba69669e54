import { type Chapter, type Course, documentsOf } from '../../../model/index.ts';
import type { Parts } from '../../../render/index.ts';
import type { Handout } from '../../site-data.ts';
import { type PaperText, paperPart } from './paper-part.ts';

/** With more sections the contents name the chapters alone: they would fill pages. */
const mostSections = 60;

/** A document, and the number that names it among the ids of the handout. */
export interface NumberedDocument {
  readonly document: Chapter;
  readonly number: number;
}

/** The chapters and the author's pages that are printed, by their numbers: chapters count first, and all pages. */
export function documentsOnPaper(course: Course): readonly NumberedDocument[] {
  return documentsOf(course).flatMap((document, index) =>
    document.page?.book === false ? [] : [{ document, number: index + 1 }],
  );
}

/** The whole course as one document for paper, the answers of all exercises at its end. */
export function joinHandout(course: Course, parts: Parts): Handout {
  const all = documentsOnPaper(course).map(({ document, number }) => ({
    chapter: document,
    number,
    part: parts.of(paperPart, document),
  }));
  // Every move has an id, and few are led to: the others would make a long course heavy.
  const used = new Set(all.flatMap(({ part }) => part.used));
  const html = (text: PaperText) =>
    text
      .map((piece, index) => {
        if (index % 2 === 0) return piece;
        return used.has(piece) ? ` id="${piece}"` : '';
      })
      .join('');
  const listed = all.reduce((sum, { part }) => sum + part.sections.length, 0) <= mostSections;
  return {
    chapters: all.map(({ chapter: { title, summary, page }, part, number }) => ({
      number,
      title,
      ...(summary !== undefined && { summary }),
      html: html(part.html),
      sections: listed ? part.sections : [],
      ...(part.answers && { answers: html(part.answers) }),
      ...(page && { isPage: true }),
    })),
  };
}
