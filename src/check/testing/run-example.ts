import type { Diagnostic, Example } from '../../diagnostics/index.ts';
import { findPictureFault } from '../../media/picture-fault.ts';
import { buildCourse } from '../../model/index.ts';
import { readCourse, type SourceFile } from '../../read/index.ts';
import { checkCourse } from '../check-course.ts';

/** The chapter that an example is, unless it names files of its own. */
export const exampleChapter = 'chapters/1.md';

/** The files of an example's course. */
export function filesOfExample({ course, side = 'white' }: Example): SourceFile[] {
  const files = typeof course === 'string' ? { [exampleChapter]: course } : course;
  const all = { 'course.yaml': `title: Example\nid: example\nside: ${side}\n`, ...files };
  return Object.entries(all).map(([path, text]) => ({ path, text }));
}

/** What one rule finds in the course of an example: for its test and its page in the handbook. */
export function runExample(files: readonly SourceFile[], rule: string): Diagnostic[] {
  const media = files.filter(({ path }) => path.startsWith('media/'));
  const settings = files.find(({ path }) => path === 'course.yaml');
  const draft = readCourse(
    {
      ...(settings ? { settings } : {}),
      chapters: files.filter(({ path }) => path.startsWith('chapters/')),
      games: files.filter(({ path }) => path.startsWith('games/')),
      media: media.map(({ path }) => path),
      unfit: new Map(
        media.flatMap(({ path, text }) => {
          const fault = path.endsWith('.svg') && findPictureFault(path, Buffer.from(text));
          return fault ? [[path, fault]] : [];
        }),
      ),
      news: files.filter(({ path }) => path.startsWith('news/')),
      problems: [],
    },
    { frontMatter: 'optional' },
  );
  return checkCourse(buildCourse(draft)).diagnostics.filter(
    (diagnostic) => diagnostic.rule === rule,
  );
}
