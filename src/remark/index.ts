/**
 * The course language for any unified pipeline. Bundled with all that it needs as `linewright/remark`, without
 * anything of Node (`scripts/build-remark.mjs`).
 */
import type { Root } from 'mdast';
import type { Processor } from 'unified';
import type { VFile } from 'vfile';
import { checkCourse } from '../check/index.ts';
import { buildCourse, type Chapter } from '../model/index.ts';
import { type CourseSettings, readChapter, remarkCourse } from '../read/index.ts';
import { contextOf } from '../render/index.ts';
import { type Board, boardElement } from './board-element.ts';
import { showNodes } from './show-nodes.ts';

export interface RemarkLinewrightOptions {
  /** The side that the course is for; default `both`. */
  readonly side?: CourseSettings['side'];
  /** BCP 47; the language of the words around moves, and of the rules on words; default `en`. */
  readonly language?: string;
  /** How pieces are written; default `letters`. */
  readonly notation?: CourseSettings['notation'];
  /** Paths of pictures that exist, as `media/…`. */
  readonly media?: readonly string[];
  /**
   * Address of a picture of a board, such as one drawn by `linewright diagram`; without it boards are drawn
   * into the page as SVG.
   */
  readonly boardAddress?: (board: Board) => string;
}

declare module 'vfile' {
  interface DataMap {
    /** The chapter's validated move trees, set by `remarkLinewright`. */
    linewright: Chapter;
  }
}

/**
 * Put behind remark-parse. Fenced `moves`, `diagram`, `exercise`, `game` and `pattern` blocks become
 * `courseBlock` nodes, directives and moves in the text nodes of their own; each knows the HTML that
 * `remark-rehype` makes of it (`data.hName`, `data.hChildren`). The chapter with its validated move trees is put
 * into `file.data.linewright`, and every finding becomes a message of the file; errors do not stop the pipeline.
 */
export function remarkLinewright(this: Processor, options: RemarkLinewrightOptions = {}) {
  const { side = 'both', language = 'en', notation = 'letters', media = [] } = options;
  remarkCourse.call(this);
  return (tree: Root, file: VFile): void => {
    const source = { path: file.path ?? 'chapter.md', text: String(file).replace(/^\uFEFF/, '') };
    const chapter = readChapter(source, { media: new Set(media), frontMatter: 'optional' }, tree);
    const course = buildCourse({
      settings: { title: chapter.title, side, language, rules: {}, notation },
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
    if (!built) return;
    file.data.linewright = built;
    const context = { ...contextOf(course), chapter: built };
    tree.children = showNodes(context, boardElement(options.boardAddress));
  };
}
