import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { chapterIndex } from '../../../model/index.ts';
import {
  addressInSite,
  chapterDocument,
  type Medium,
  pageMedium,
  resolve,
  type Target,
} from '../../../render/index.ts';
import type { Handout } from '../../site-data.ts';
import type { SiteContext } from '../site-context.ts';
import { fitForPaper } from './fit-for-paper.ts';
import { placeTeller } from './places.ts';

/** The whole course as one document for paper, the answers of all exercises at its end. */
export function renderHandout(context: SiteContext): Handout {
  const { course, addresses, strings } = context;
  const placeOf = placeTeller(course, addresses, strings);
  const idIn = (file: string, id?: string): string => {
    const number = chapterIndex(course, file) + 1;
    return id === undefined ? `c${number}` : `c${number}-${id}`;
  };
  const used = new Set<string>();
  const lead = (id: string): string => {
    used.add(id);
    return `#${encodeURIComponent(id)}`;
  };
  const mediumOf = (from: string): Medium => ({
    ...pageMedium(addresses),
    isLive: false,
    addressOf(target: Target) {
      if (target.to === 'note') return lead(idIn(from, target.id));
      if (target.to === 'chapter') return lead(idIn(target.chapter, target.id));
      if (target.to === 'place') return lead(idIn(target.ref.chapter, addresses.id(target.ref)));
      return addressInSite(target, addresses);
    },
  });
  const parts = course.chapters.map((chapter, index) => {
    const { file, title, summary } = chapter;
    const still = resolve(chapterDocument({ ...context, chapter }), mediumOf(file), strings);
    const tree = fitForPaper(still, {
      id: (id) => idIn(file, id),
      place: (target, words) => placeOf(target, file, words),
    });
    const answers = takeAnswers(tree);
    return { tree, answers, number: index + 1, title, ...(summary !== undefined && { summary }) };
  });
  dropIdleIds(
    parts.flatMap(({ tree, answers }) => [tree, ...answers]),
    used,
  );
  const html = (tree: Root | Element[]) =>
    toHtml(Array.isArray(tree) ? { type: 'root', children: tree } : tree, {
      allowDangerousHtml: true,
    });
  return {
    chapters: parts.map(({ tree, answers, ...part }) => ({
      ...part,
      html: html(tree),
      ...(answers.length > 0 && { answers: html(answers) }),
    })),
  };
}

/** Takes the answers out of a chapter: what stands in their section below its title. */
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

/** Every move has an id, and few are led to: the others would make a long course heavy. */
function dropIdleIds(trees: readonly (Root | Element)[], used: Set<string>): void {
  const walk = (node: Root | Element, visit: (element: Element) => void): void => {
    if (node.type === 'element') visit(node);
    for (const child of node.children) if (child.type === 'element') walk(child, visit);
  };
  for (const tree of trees) {
    walk(tree, ({ properties: { ariaDescribedBy } }) => {
      if (typeof ariaDescribedBy === 'string') used.add(ariaDescribedBy);
    });
  }
  for (const tree of trees) {
    walk(tree, ({ properties }) => {
      if (typeof properties.id === 'string' && !used.has(properties.id)) delete properties.id;
    });
  }
}
