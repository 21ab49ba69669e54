import { createLocator, lineStarts } from '../diagnostics/index.ts';
import { cleanText } from './clean-text.ts';
import { chapterFront, topOf } from './read-chapter.ts';
import { readFrontMatter } from './read-front-matter.ts';
import { parseMarkdown } from './remark-course.ts';
import type { CourseFiles, SourceFile } from './types.ts';

/**
 * What is published of a course: its files without the chapters whose front matter says `draft: true`; the files
 * themselves where none does.
 */
export function leaveOutDrafts(files: CourseFiles): CourseFiles {
  const chapters = files.chapters.filter((chapter) => !isDraft(chapter));
  const [first] = files.chapters;
  if (first === undefined || chapters.length === files.chapters.length) return files;
  if (chapters.length > 0) return { ...files, chapters };
  return {
    ...files,
    chapters,
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

/** Whether a chapter says that it is a draft, as `readChapter` reads it. */
function isDraft(written: SourceFile): boolean {
  // To see that a chapter has no such word costs less than to read it.
  if (!written.text.includes('draft')) return false;
  const { text } = cleanText(written, () => {});
  const end = text.search(/\n---[ \t]*(?:\r?\n|$)/);
  const head = end === -1 ? text : text.slice(0, end + '\n---'.length);
  const file = {
    file: written.path,
    text: head,
    lineStarts: lineStarts(head),
    pointAt: createLocator(head),
  };
  const front = readFrontMatter(parseMarkdown(head), file, {
    schema: chapterFront,
    what: 'chapter',
    demand: 'optional',
    report: () => {},
  });
  return front.draft === true;
}
