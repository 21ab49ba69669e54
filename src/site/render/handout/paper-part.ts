import type { Element, Root } from 'hast';
import { toString as plainText } from 'mdast-util-to-string';
import {
  addressInSite,
  assignAddresses,
  chapterDocument,
  elementsIn,
  escapeValue,
  type Medium,
  type PartMaker,
  pageMedium,
  type RenderContext,
  resolve,
  type Target,
  writeInPieces,
} from '../../../render/index.ts';
import { fitForPaper } from './fit-for-paper.ts';
import { placeTeller } from './places.ts';

/** HTML in pieces, and between them ids that the handout may drop. */
export type PaperText = readonly string[];

/** A chapter's part of the handout. */
export interface PaperPart {
  readonly html: PaperText;
  readonly answers?: PaperText;
  /** Its sections, for the contents. */
  readonly sections: readonly { readonly id: string; readonly title: string }[];
  /** Ids that it links to, as in HTML. */
  readonly used: readonly string[];
}

export const paperPart: PartMaker<PaperPart> = { kind: 'paper', inputs: '', make: paperOf };

function paperOf(context: RenderContext): PaperPart {
  const { ask, chapter, strings } = context;
  const addresses = assignAddresses(ask);
  const tellPlace = placeTeller(ask, strings);
  const used = new Set<string>();
  const idIn = (file: string, id?: string): string => {
    const number = ask('chapter', file)?.number ?? 0;
    return id === undefined ? `c${number}` : `c${number}-${id}`;
  };
  /** Whether it leads to a page that the handout lacks. */
  const isOnSite = (target: Target): boolean => {
    const file =
      target.to === 'place' ? target.ref.chapter : target.to === 'chapter' && target.chapter;
    return file !== false && ask('chapter', file)?.page === 'on the site';
  };
  const lead = (id: string): string => {
    used.add(id);
    return `#${encodeURIComponent(id)}`;
  };
  const medium: Medium = {
    ...pageMedium(addresses),
    isLive: false,
    isWritten: true,
    drawsSigns: true,
    addressOf(target: Target) {
      if (isOnSite(target)) return addressInSite(target, addresses);
      if (target.to === 'note') return lead(idIn(chapter.file, target.id));
      if (target.to === 'chapter') return lead(idIn(target.chapter, target.id));
      if (target.to === 'place') return lead(idIn(target.ref.chapter, ask('id', target.ref)));
      return addressInSite(target, addresses);
    },
  };
  const tree = resolve(chapterDocument(context), medium, strings);
  const before = idIn(chapter.file, '');
  fitForPaper(tree, {
    id: (id) => before + id,
    place: (target, words) => tellPlace(target, chapter.file, words),
  });
  const answers = takeAnswers(tree);
  const sections = sectionsOf(tree);
  for (const { id } of sections) used.add(id);
  for (const root of [tree, { type: 'root' as const, children: answers }]) {
    for (const { properties } of elementsIn(root)) {
      if (typeof properties.ariaDescribedBy === 'string') used.add(properties.ariaDescribedBy);
    }
  }
  return {
    html: writeInPieces(tree.children),
    ...(answers.length > 0 && { answers: writeInPieces(answers) }),
    sections,
    used: [...used].map(escapeValue),
  };
}

/** The headings below the chapter's own. */
function sectionsOf(tree: Root): PaperPart['sections'] {
  return tree.children.flatMap((node) => {
    if (node.type !== 'element' || node.tagName !== 'h3') return [];
    const { id } = node.properties;
    return typeof id === 'string' ? [{ id, title: plainText(node) }] : [];
  });
}

/** Takes the answers out of a chapter: the section's content below its title. */
function takeAnswers(tree: Root): Element[] {
  const isAnswers = (node: Root['children'][number]): node is Element =>
    node.type === 'element' && node.data?.role === 'answers';
  const found = tree.children.filter(isAnswers);
  tree.children = tree.children.filter((node) => !isAnswers(node));
  return found
    .flatMap(({ children }) => children)
    .filter((node) => node.type === 'element')
    .filter(({ data }) => data?.role !== 'answers-title');
}
