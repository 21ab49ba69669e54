import type { Course } from '../../../model/index.ts';
import type { Parts } from '../../../render/index.ts';
import type { Handout } from '../../site-data.ts';
import { type PaperText, paperPart } from './paper-part.ts';

/** With more sections the contents name the chapters alone: they would fill pages. */
const mostSections = 60;

/** The whole course as one document for paper, the answers of all exercises at its end. */
export function joinHandout({ chapters }: Course, parts: Parts): Handout {
  const all = chapters.map((chapter) => ({ chapter, part: parts.of(paperPart, chapter) }));
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
    chapters: all.map(({ chapter: { title, summary }, part }, index) => ({
      number: index + 1,
      title,
      ...(summary !== undefined && { summary }),
      html: html(part.html),
      sections: listed ? part.sections : [],
      ...(part.answers && { answers: html(part.answers) }),
    })),
  };
}
