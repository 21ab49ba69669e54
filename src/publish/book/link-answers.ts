import type { Element, Root } from 'hast';
import { element, elementsIn } from '../../render/index.ts';

/**
 * Leads from each exercise to its answer and back, and gives the answers an id, so that the contents can name
 * them. Changes the tree. @param words of the link to an answer.
 */
export function linkAnswers(tree: Root, words: string): void {
  const ids = new Set<unknown>();
  const exercises = new Map<string, Element>();
  const numbers: { readonly number: Element; readonly exercise: string }[] = [];
  let answers: Element | undefined;
  for (const node of elementsIn(tree)) {
    const { id } = node.properties;
    ids.add(id);
    const { role, exercise } = node.data ?? {};
    if (role === 'exercise') exercises.set(String(id), node);
    if (role === 'answers') answers = node;
    if (exercise !== undefined) numbers.push({ number: node, exercise });
  }
  if (answers === undefined) return;
  answers.properties['epub:type'] = 'answers';
  const [title] = answers.children;
  if (title?.type === 'element') {
    // The chapter's document has the same properties, and its other media have no such id.
    title.properties = { ...title.properties, id: freeId('answers', ids) };
  }
  for (const { number, exercise } of numbers) {
    const id = freeId(`answer-to-${exercise}`, ids);
    number.properties.id = id;
    number.children = [element('a', { href: `#${encodeURIComponent(exercise)}` }, number.children)];
    const link = element('a', { href: `#${encodeURIComponent(id)}` }, [words]);
    exercises.get(exercise)?.children.push(element('p', { className: ['to-answer'] }, [link]));
  }
}

function freeId(wanted: string, ids: Set<unknown>): string {
  let id = wanted;
  for (let count = 2; ids.has(id); count++) id = `${wanted}-${count}`;
  ids.add(id);
  return id;
}
