import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { type Course, chapterIndex } from '../../../model/index.ts';
import type { Handout } from '../../site-data.ts';
import { chapterTree } from '../chapter.ts';
import { contextOf } from '../context.ts';
import { pageMedium } from '../medium.ts';
import { makeStill } from '../still.ts';
import { fitForPaper } from './fit-for-paper.ts';
import { placeTeller, targetOf } from './places.ts';

/** The whole course as one document for paper, the answers of all exercises at its end. */
export function renderHandout(course: Course): Handout {
  // Addresses of its own: rendering gives out ids, and the chapters' pages have theirs.
  const base = contextOf(course, pageMedium);
  const { addresses, strings } = base;
  const placeOf = placeTeller(course, addresses, strings);
  const prefix = (chapter: string) => `c${chapterIndex(course, chapter) + 1}`;
  const idIn = (chapter: string, id: string) => `${prefix(chapter)}-${id}`;
  const parts = course.chapters.map((chapter, index) => {
    const { file, title, summary } = chapter;
    const tree = fitForPaper(makeStill(chapterTree({ ...base, chapter })), {
      id: (id) => idIn(file, id),
      link(href, words) {
        const target = targetOf(course, addresses, href, file);
        if (target === undefined) return { href };
        const id =
          target.id === undefined ? prefix(target.chapter) : idIn(target.chapter, target.id);
        return { href: `#${encodeURIComponent(id)}`, place: placeOf(target, file, words) };
      },
    });
    const answers = takeAnswers(tree);
    return { tree, answers, number: index + 1, title, ...(summary !== undefined && { summary }) };
  });
  dropIdleIds(parts.flatMap(({ tree, answers }) => [tree, ...answers]));
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
    node.type === 'element' && [node.properties.className].flat().includes('answers');
  const found = tree.children.filter(isAnswers);
  tree.children = tree.children.filter((node) => !isAnswers(node));
  return found
    .flatMap(({ children }) => children)
    .filter((node) => node.type === 'element')
    .filter(({ properties }) => ![properties.className].flat().includes('answers-title'));
}

/** Every move has an id, and few are led to: the others would make a long course heavy. */
function dropIdleIds(trees: readonly (Root | Element)[]): void {
  const used = new Set<string>();
  const walk = (node: Root | Element, visit: (element: Element) => void): void => {
    if (node.type === 'element') visit(node);
    for (const child of node.children) if (child.type === 'element') walk(child, visit);
  };
  for (const tree of trees) {
    walk(tree, ({ properties }) => {
      const { href, ariaDescribedBy } = properties;
      if (typeof href === 'string' && href.startsWith('#')) {
        used.add(decodeURIComponent(href.slice(1)));
      }
      if (typeof ariaDescribedBy === 'string') used.add(ariaDescribedBy);
    });
  }
  for (const tree of trees) {
    walk(tree, ({ properties }) => {
      if (typeof properties.id === 'string' && !used.has(properties.id)) delete properties.id;
    });
  }
}
