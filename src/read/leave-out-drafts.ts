import { createLocator, lineStarts, topOf } from '../diagnostics/index.ts';
import { documentsOf } from './documents.ts';
import { cleanText } from './files/clean-text.ts';
import { readFront } from './front-matter/read-front.ts';
import { parseMarkdown } from './markdown/remark-course.ts';
import type { CourseFiles, SourceFile } from './types.ts';

/**
 * A course without the chapters and pages whose front matter says `draft: true`. Returns the given object if there
 * are none.
 */
export function leaveOutDrafts(files: CourseFiles): CourseFiles {
  const chapters = files.chapters.filter((chapter) => !isDraft(chapter));
  const pages = files.pages?.filter((page) => !isDraft(page));
  const [first] = files.chapters;
  const isWhole = documentsOf({ chapters, pages }).length === documentsOf(files).length;
  if (first === undefined || isWhole) return files;
  if (chapters.length > 0) return { ...files, chapters, ...(pages && { pages }) };
  return {
    ...files,
    chapters,
    ...(pages && { pages }),
    problems: [
      ...files.problems,
      {
        rule: 'course-setting',
        place: topOf(first.path),
        message: 'Every chapter is a draft, so there is nothing to publish.',
        hint: 'Take `draft: true` out of a chapter that is ready.',
      },
    ],
  };
}

/** Whether a document is a draft, by the same rules as `readChapter`. */
function isDraft(written: SourceFile): boolean {
  const end = written.text.search(/[\r\n]---[ \t]*(?:[\r\n]|$)/);
  const front = end === -1 ? written.text : written.text.slice(0, end + '\n---'.length);
  // Searching for the word costs less than parsing.
  if (!front.includes('draft')) return false;
  const { text: head } = cleanText({ ...written, text: front }, () => {});
  const file = {
    file: written.path,
    text: head,
    lineStarts: lineStarts(head),
    pointAt: createLocator(head),
  };
  const { sound: said } = readFront(parseMarkdown(head), file, {
    demand: 'optional',
    report: () => {},
  });
  return said.draft === true;
}
