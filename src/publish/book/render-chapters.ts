import type { Nodes, Root } from 'hast';
import type { Chapter } from '../../model/index.ts';
import {
  addressInSite,
  assignAddresses,
  chapterDocument,
  type Medium,
  resolve,
  type SharedContext,
  type Target,
} from '../../render/index.ts';

export interface RenderedChapter {
  readonly chapter: Chapter;
  /** Its file's name. */
  readonly file: string;
  readonly tree: Root;
}

/** The chapters as the pages of a book: what a link leads to is in the book, on the web, or nowhere. */
export function renderChapters(
  context: SharedContext,
  board: Medium['board'],
  site: string | undefined,
): RenderedChapter[] {
  const { course, strings } = context;
  const inBook = assignAddresses(course, 'xhtml');
  const onSite = assignAddresses(course);
  const documents = new Map(
    course.chapters.map((chapter) => [chapter.file, chapterDocument({ ...context, chapter })]),
  );
  const ids = new Map([...documents].map(([file, document]) => [file, idsShown(document)]));

  const addressFrom =
    (from: string) =>
    (target: Target): string | undefined => {
      switch (target.to) {
        case 'web':
          return target.address;
        case 'note':
          return addressInSite(target, inBook);
        case 'place':
        case 'chapter': {
          const file = target.to === 'place' ? target.ref.chapter : target.chapter;
          const id = target.to === 'place' ? inBook.id(target.ref) : target.id;
          if (id !== undefined && ids.get(file)?.has(id)) {
            return addressInSite({ to: 'chapter', chapter: file, id }, inBook, from);
          }
          // A heading that is not there: its page is.
          return file === from ? undefined : inBook.page(file);
        }
        default:
          return site && !/^[\\/.]/.test(target.address)
            ? `${site}/${addressInSite(target, onSite)}`
            : undefined;
      }
    };
  return course.chapters.map((chapter) => {
    const medium: Medium = {
      isLive: false,
      board,
      addressOf: addressFrom(chapter.file),
      showsLastBoards: true,
    };
    const document = documents.get(chapter.file) ?? { type: 'root', children: [] };
    return { chapter, file: inBook.page(chapter.file), tree: resolve(document, medium, strings) };
  });
}

/** The ids of what a reader sees: an answer stands at the end of its chapter, not below its exercise. */
function idsShown(document: Root): ReadonlySet<string> {
  const ids = new Set<string>();
  const walk = (node: Nodes): void => {
    if (node.type === 'element') {
      if (node.data?.role === 'answer' || node.data?.role === 'pictures') return;
      const { id } = node.properties;
      if (typeof id === 'string') ids.add(id);
    }
    if ('children' in node) for (const child of node.children) walk(child);
  };
  walk(document);
  return ids;
}
