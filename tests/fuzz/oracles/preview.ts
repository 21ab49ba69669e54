import { previewCourse } from '../../../src/check/index.ts';
import { markedParts } from '../../../src/site/desk/marked-parts.ts';
import { deskFindings } from '../../../src/site/index.ts';
import { renderSite } from '../../../src/site/render/site.ts';
import type { Oracle } from '../case.ts';
import type { CourseRun } from './course-run.ts';
import { place } from './site.ts';

/** A page shows so many notes (`site/desk/mark-findings.ts`). */
const mostNotes = 200;

/** A course with errors is shown all the same, and each finding of a chapter has its note there, once. */
export const markedPreview: Oracle<CourseRun> = {
  name: 'marked preview',
  *examine({ course, diagnostics, checked, files }) {
    if (checked !== undefined) return;
    const parts = markedParts(previewCourse(course, diagnostics), (file) => files[file]);
    const { pages } = renderSite(course, place, parts);
    const texts = new Map<string, string>();
    for (const { path, data } of pages) {
      const shown = data();
      if ('chapter' in shown) texts.set(path, shown.chapter.html);
    }
    const told = new Map<string, number>();
    for (const { id, page = '', rule } of deskFindings({ course, diagnostics })) {
      const text = texts.get(page);
      const before = told.get(page) ?? 0;
      told.set(page, before + 1);
      if (text === undefined || before >= mostNotes) continue;
      const notes = text.split(` id="${id}"`).length - 1;
      if (notes !== 1) yield `a finding of ${rule} has ${notes} notes`;
    }
  },
};
