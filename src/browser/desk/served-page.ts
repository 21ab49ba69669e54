import { isThemeSheet } from '../../contract/theme-sheet.ts';
import { alignLists } from './align-lists.ts';

/**
 * The page as it was served, beside the living one. What the server sends anew is compared with what it sent before, never
 * with the living page: only what the author has changed is replaced, all else keeps its elements, with their state,
 * listeners and focus.
 */
export interface ServedPage {
  /**
   * Makes the living page what the server sends now.
   * @returns the new elements, or undefined if the page must be reloaded.
   */
  become(fresh: Document): readonly Element[] | undefined;
}

/** Replaced as wholes: scripts have made something else of what was served. */
const wholes = '.exercise, svg, course-board';
/** The board beside the text, which shows what its reader wants. */
const left = '.beside';

/** To be called before any script has changed the page. */
export function servedPage(): ServedPage {
  let served = document.cloneNode(true) as Document;
  const living = new WeakMap<Node, Node>();
  pairAll(served, document, living);
  return {
    become(fresh) {
      if (isOtherPage(served, fresh)) return undefined;
      const patch = new Patch(living);
      if (!patch.children(served.body, fresh.body)) return undefined;
      document.title = fresh.title;
      changeTheme(fresh);
      served = fresh;
      return patch.added;
    },
  };
}

/** Whether a page needs scripts that it has not, or has lost or got the board that they start with. */
function isOtherPage(served: Document, fresh: Document): boolean {
  const needs = (page: Document) =>
    [...page.querySelectorAll('script[src], link[rel="stylesheet"]')].map(
      (each) => each.getAttribute('src') ?? each.getAttribute('href'),
    );
  // The reader's settings may have brought others.
  const has = new Set(needs(served));
  // A theme is put in without a new page.
  const isMissing = (each: string | null) => each !== null && !has.has(each) && !isThemeSheet(each);
  const hasBoard = (page: Document) => page.querySelector(left) !== null;
  return (
    needs(fresh).some(isMissing) ||
    hasBoard(served) !== hasBoard(fresh) ||
    served.body.className !== fresh.body.className
  );
}

/** The sheet of the author's own look as it is now; the one before goes when the new one is there, so nothing flashes. */
function changeTheme(fresh: Document): void {
  const themesOf = (page: Document) =>
    [...page.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].filter((link) =>
      isThemeSheet(link.getAttribute('href') ?? ''),
    );
  const before = themesOf(document);
  const [now] = themesOf(fresh);
  const leave = () => {
    for (const link of before) link.remove();
  };
  const href = now?.getAttribute('href');
  if (now === undefined) {
    leave();
    return;
  }
  if (before.some((link) => link.getAttribute('href') === href)) return;
  const link = document.importNode(now, true);
  link.addEventListener('load', leave, { once: true });
  const sheets = document.querySelectorAll('link[rel="stylesheet"]');
  (sheets[sheets.length - 1] ?? document.head.lastChild)?.after(link);
}

/** Two trees of the same nodes, one beside the other. */
function pairAll(one: Node, other: Node, living: WeakMap<Node, Node>): void {
  living.set(one, other);
  for (let index = 0; index < one.childNodes.length; index++) {
    const [child, partner] = [one.childNodes[index], other.childNodes[index]];
    if (child && partner) pairAll(child, partner, living);
  }
}

class Patch {
  readonly added: Element[] = [];
  readonly #living: WeakMap<Node, Node>;

  constructor(living: WeakMap<Node, Node>) {
    this.#living = living;
  }

  /** @returns whether the living page still is where it was thought to be. */
  children(served: Element, fresh: Element): boolean {
    const parent = this.#living.get(served);
    if (!(parent instanceof Element)) return false;
    this.#living.set(fresh, parent);
    const [before, after] = [[...served.childNodes], [...fresh.childNodes]];
    const same = alignLists(before.map(textOf), after.map(textOf));
    const kept = new Set(same);
    const gone = new Set(before.filter((_, index) => !kept.has(index)));
    let last: Node | null = null;
    let from = -1;
    for (const [index, node] of after.entries()) {
      const at = same[index];
      const partner = at === undefined ? undefined : before[at];
      const changed = partner
        ? undefined
        : firstLike(node, before.slice(from + 1, nextSame(same, index)), gone);
      if (partner && at !== undefined) {
        this.#keep(partner, node);
        from = at;
      } else if (changed) {
        gone.delete(changed);
        from = before.indexOf(changed);
        if (!this.#change(changed, node)) return false;
      } else this.#insert(node, parent, last);
      const put: Node | undefined = this.#living.get(node);
      if (put?.parentNode !== parent) return false;
      last = put;
    }
    for (const node of gone) (this.#living.get(node) as ChildNode | undefined)?.remove();
    return true;
  }

  #keep(served: Node, fresh: Node): void {
    const put = this.#living.get(served);
    if (put) this.#living.set(fresh, put);
    for (let index = 0; index < fresh.childNodes.length; index++) {
      const [one, other] = [served.childNodes[index], fresh.childNodes[index]];
      if (one && other) this.#keep(one, other);
    }
  }

  #insert(fresh: Node, parent: Element, behind: Node | null): void {
    const put = document.importNode(fresh, true);
    parent.insertBefore(put, behind ? behind.nextSibling : parent.firstChild);
    pairAll(fresh, put, this.#living);
    if (put instanceof Element) this.added.push(put);
  }

  #change(served: Node, fresh: Node): boolean {
    const put = this.#living.get(served);
    if (put === undefined) return false;
    if (!(served instanceof Element && fresh instanceof Element && put instanceof Element)) {
      if (put.nodeValue !== fresh.nodeValue) put.nodeValue = fresh.nodeValue;
      this.#living.set(fresh, put);
      return true;
    }
    if (served.matches(left)) {
      this.#living.set(fresh, put);
      return true;
    }
    if (served.matches(wholes)) {
      const whole = document.importNode(fresh, true);
      openAsBefore(put, whole);
      put.replaceWith(whole);
      pairAll(fresh, whole, this.#living);
      this.added.push(whole);
      return true;
    }
    changeAttributes(served, fresh, put);
    return this.children(served, fresh);
  }
}

function textOf(node: Node): string {
  return node instanceof Element ? node.outerHTML : `${node.nodeType} ${node.nodeValue}`;
}

function nextSame(same: readonly (number | undefined)[], index: number): number | undefined {
  return same.slice(index + 1).find((at) => at !== undefined);
}

/** What a node that is new may have been before. */
function firstLike(
  node: Node,
  candidates: readonly ChildNode[],
  gone: ReadonlySet<Node>,
): ChildNode | undefined {
  return candidates.find((each) => {
    if (!gone.has(each) || each.nodeType !== node.nodeType) return false;
    if (!(each instanceof Element && node instanceof Element)) return true;
    const isNote = (element: Element) => element.matches('.desk-note');
    return each.tagName === node.tagName && each.id === node.id && isNote(each) === isNote(node);
  });
}

/** What scripts have set on the living element stays. */
function changeAttributes(served: Element, fresh: Element, put: Element): void {
  for (const name of new Set([...served.getAttributeNames(), ...fresh.getAttributeNames()])) {
    const [before, now] = [served.getAttribute(name), fresh.getAttribute(name)];
    if (before === now) continue;
    if (name === 'class') {
      put.classList.remove(
        ...[...served.classList].filter((each) => !fresh.classList.contains(each)),
      );
      put.classList.add(...fresh.classList);
    } else if (now === null) put.removeAttribute(name);
    else put.setAttribute(name, now);
  }
}

/** The folds that were open in what is replaced are open in what takes its place. */
function openAsBefore(before: Element, now: Element): void {
  const folds = [...before.querySelectorAll('details')];
  for (const [index, fold] of [...now.querySelectorAll('details')].entries()) {
    const earlier = folds[index];
    if (earlier?.className === fold.className && earlier.open) fold.open = true;
  }
}
