import type { Heading, Parents } from 'mdast';
import { toString as plainText } from 'mdast-util-to-string';
import { type Chapter, slug } from '../model/index.ts';
import { IdGiver } from './id-giver.ts';
import { shownNodes } from './shown-nodes.ts';

/** The ids that authors write after a `#`. */
export interface NamedIds {
  /** Of named positions, by their names. */
  readonly names: ReadonlyMap<string, string>;
  /** By the offset where they begin, since a body that is loaded again has other nodes. */
  readonly headings: ReadonlyMap<number | undefined, string>;
  /** Those of the author's own HTML, as far as they are written plainly. */
  readonly inHtml: readonly string[];
  readonly giver: IdGiver;
}

/** The id of a named position, for whoever knows its name and not its page: names come first, and are unique. */
export function idOfName(name: string): string {
  return new IdGiver().give(name);
}

const known = new WeakMap<Chapter, NamedIds>();

export function namedIds(chapter: Chapter): NamedIds {
  const found = known.get(chapter) ?? giveIds(chapter);
  known.set(chapter, found);
  return found;
}

/** Names first: they are unique in the course, and an author chose them to be led to. */
function giveIds(chapter: Chapter): NamedIds {
  const giver = new IdGiver();
  const names = new Map<string, string>();
  for (const node of chapter.blocks.flatMap(shownNodes)) {
    // A name that stands twice is a finding; it has one id all the same.
    for (const name of node.labels) if (!names.has(name)) names.set(name, giver.give(name));
  }
  const headings = new Map<number | undefined, string>();
  const inHtml: string[] = [];
  const title = repeatedTitle(chapter);
  const walk = (parent: Parents): void => {
    for (const node of parent.children) {
      if (node.type === 'heading' && node !== title) {
        headings.set(offsetOf(node), giver.give(slug(node.data?.original ?? plainText(node))));
      } else if (node.type === 'html') {
        for (const [, quoted, single, bare] of node.value.matchAll(idAttribute)) {
          inHtml.push(quoted ?? single ?? bare ?? '');
        }
      } else if ('children' in node) walk(node);
    }
  };
  walk(chapter.body);
  return { names, headings, inHtml, giver };
}

export function offsetOf({ position }: Heading): number | undefined {
  return position?.start.offset;
}

const idAttribute = /\sid\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+))/gi;

/** A first heading that says the chapter's title again is not shown: the page has it already. */
export function repeatedTitle({ body, title }: Chapter): Heading | undefined {
  const [first] = body.children;
  const repeats = first?.type === 'heading' && first.depth === 1 && plainText(first) === title;
  return repeats ? first : undefined;
}
