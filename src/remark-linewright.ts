import type { Root } from 'mdast';
import type { Processor } from 'unified';
import type { VFile } from 'vfile';
import { checkCourse } from './check/index.ts';
import { buildCourse, type Chapter } from './model/index.ts';
import { type CourseSettings, readChapter, remarkCourse } from './read/index.ts';

export interface RemarkLinewrightOptions {
  /** The side that the course is for; default `both`. */
  readonly side?: CourseSettings['side'];
  /** Paths of pictures that exist, as `media/…`. */
  readonly media?: readonly string[];
}

declare module 'vfile' {
  interface DataMap {
    /** The chapter's validated move trees, set by `remarkLinewright`. */
    linewright: Chapter;
  }
}

/**
 * The course language for any unified pipeline, behind remark-parse: fenced `moves` and `diagram`
 * blocks become `courseBlock` nodes, directives and moves in the text nodes of their own. The
 * chapter with its validated move trees is put into `file.data.linewright`, and every finding
 * becomes a message of the file; errors do not stop the pipeline.
 */
export function remarkLinewright(this: Processor, options: RemarkLinewrightOptions = {}) {
  remarkCourse.call(this);
  return (tree: Root, file: VFile): void => {
    const source = { path: file.path ?? 'chapter.md', text: String(file).replace(/^\uFEFF/, '') };
    const media = new Set(options.media ?? []);
    const chapter = readChapter(source, { media, frontMatter: 'optional' }, tree);
    const course = buildCourse({
      settings: {
        title: chapter.title,
        side: options.side ?? 'both',
        language: 'en',
        rules: {},
        notation: 'letters',
      },
      settingPlaces: {},
      chapters: [chapter],
      problems: [],
    });
    for (const { place, message, rule, hint, severity } of checkCourse(course).diagnostics) {
      const said = file.message(message, { place, ruleId: rule, source: 'linewright' });
      said.fatal = severity === 'error';
      if (hint !== undefined) said.note = hint;
    }
    const [built] = course.chapters;
    if (built) file.data.linewright = built;
  };
}
