/**
 * The course language for any unified pipeline. Bundled with all that it needs as `linewright/remark`, without
 * anything of Node (`scripts/build-remark.mjs`).
 */
import type { Root } from 'mdast';
import type { Processor } from 'unified';
import type { VFile } from 'vfile';
import { checkCourse } from '../check/index.ts';
import { readHandbookAddress, ruleAddress } from '../diagnostics/index.ts';
import { buildCourse, type Chapter } from '../model/index.ts';
import {
  type ChapterSyntax,
  type CourseSettings,
  readChapter,
  remarkCourse,
} from '../read/index.ts';
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
  /**
   * All chapters of the course, with what stands before their text: the file that is shown may use their names, lead
   * to them and start from their positions, and is checked against them. The file itself may be among them; it is
   * known by its path, or by its text where the pipeline gives none.
   */
  readonly chapters?: readonly { readonly path: string; readonly text: string }[];
  /** Address of the page of a chapter; default: its id and `.html`. */
  readonly pageAddress?: (chapter: { readonly id: string; readonly path: string }) => string;
  /**
   * Whether an error stops the pipeline, for generators that show no messages; the exception names the place of the
   * first. Default: it does not.
   */
  readonly fail?: boolean;
  /**
   * Address of a published handbook: each message has the address of its rule there as its `url`. Default: what the
   * variable LINEWRIGHT_HANDBOOK of the environment says, where there is one.
   */
  readonly handbook?: string;
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
  const {
    side = 'both',
    language = 'en',
    notation = 'letters',
    media = [],
    chapters = [],
    handbook = globalThis.process?.env?.LINEWRIGHT_HANDBOOK,
  } = options;
  remarkCourse.call(this);
  const reading = {
    media: new Set(media),
    frontMatter: 'optional',
    ...(chapters.length > 0 && { chapters: new Set(chapters.map(({ path }) => path)) }),
  } as const;
  const book = handbook ? readHandbookAddress(handbook) : undefined;
  const known = new Map<object, ChapterSyntax>();
  const read = (other: { readonly path: string; readonly text: string }) => {
    const found = known.get(other) ?? readChapter(other, reading);
    known.set(other, found);
    return found;
  };
  return (tree: Root, file: VFile): void => {
    const source = { path: file.path ?? 'chapter.md', text: String(file).replace(/^\uFEFF/, '') };
    const own = chapters.findIndex((each) => isSame(each, source));
    if (own >= 0) source.path = chapters[own]?.path ?? source.path;
    const others = chapters.map(read);
    const parsed = readChapter(source, reading, tree);
    // The pipeline may have taken the front matter away.
    const { id, title } = others[own] ?? parsed;
    const chapter = { ...parsed, id, title };
    const course = own < 0 ? [...others, chapter] : others.with(own, chapter);
    const built = buildCourse({
      settings: { title: chapter.title, side, language, rules: {}, ownRules: [], notation },
      settingPlaces: {},
      chapters: course,
      problems: [],
    });
    for (const { place, message, rule, hint, severity } of checkCourse(built).diagnostics) {
      if (place.file !== source.path) continue;
      const said = file.message(message, { place, ruleId: rule, source: 'linewright' });
      said.fatal = severity === 'error';
      if (hint !== undefined) said.note = hint;
      if (book !== undefined) said.url = ruleAddress(book, rule);
    }
    if (options.fail) stopAtError(file);
    const shown = built.chapters.find((each) => each.file === source.path);
    if (!shown) return;
    file.data.linewright = shown;
    const context = { ...contextOf(built), chapter: shown };
    const { text } = source;
    const { boardAddress, pageAddress } = options;
    tree.children = showNodes(context, { board: boardElement(boardAddress), text, pageAddress });
  };
}

/** Whether a chapter is the file: by its path, else by its text, of which some pipelines take the front matter. */
function isSame(
  chapter: { readonly path: string; readonly text: string },
  file: { readonly path: string; readonly text: string },
): boolean {
  const path = file.path.replaceAll('\\', '/');
  if (path === chapter.path || path.endsWith(`/${chapter.path}`)) return true;
  const text = file.text.trim();
  return text !== '' && chapter.text.replaceAll('\r\n', '\n').trim().endsWith(text);
}

/** @throws VFileMessage for the first error, with the number of the others. */
function stopAtError(file: VFile): void {
  const errors = file.messages.filter(({ fatal, source }) => fatal && source === 'linewright');
  const [first] = errors;
  if (first === undefined) return;
  const hint = first.note === undefined ? '' : ` ${first.note}`;
  const more = errors.length === 1 ? '' : ` (${errors.length} errors in all)`;
  const { place, ruleId = '' } = first;
  const help = first.url === undefined ? '' : ` ${first.url}`;
  file.fail(`${first.reason}${hint}${more}${help}`, { place, ruleId, source: 'linewright' });
}
