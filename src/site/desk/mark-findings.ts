import type { Element, ElementContent, Root, RootContent, Text } from 'hast';
import type { DeskFinding } from '../../contract/index.ts';
import type { Place } from '../../diagnostics/index.ts';
import { partOfText, type Role, seamsOf } from '../../render/index.ts';
import { findingNote, findingSign, mark, unshownBlock } from './finding-note.ts';

/** A finding of the chapter whose page is marked. */
export interface PlacedFinding {
  readonly finding: DeskFinding;
  readonly place: Place;
}

export interface MarkedText {
  /** Where the blocks of the course language stand in the file. */
  readonly blocks: readonly { readonly place: Place }[];
  /** The file, which shows what became nothing on the page. */
  readonly source: string;
}

type Parent = Root | Element;

/** Something on the page that knows where it is written. */
interface Written {
  readonly node: Element | Text;
  /** From the root to the node that holds it. */
  readonly around: readonly Parent[];
  readonly from: number;
  readonly to: number;
}

/** Marks on a page; the list of findings has all. */
const mostNotes = 200;

/**
 * Marks findings in a chapter's text: a sign at the words, a note behind the paragraph. Shows the source of what is not
 * on the page because of a finding.
 * @param tree is changed: its elements are its own, but texts and properties may be shared.
 */
export function markFindings(
  tree: Root,
  findings: readonly PlacedFinding[],
  text: MarkedText,
): void {
  // From the end, so that marks do not shift later ones and notes keep their order.
  for (const { finding, place } of findings.slice(0, mostNotes).reverse()) {
    const written = allWritten(tree);
    const at = smallestAround(written, place.start.offset);
    if (at === undefined) markMissing(tree, written, { finding, place }, text);
    else markWritten(at, written, { finding, place });
  }
}

function allWritten(tree: Root): Written[] {
  const found: Written[] = [];
  // A screen does not show the answers at the end, which stand with their exercises as well.
  const isPassed = (node: Element) => isOurs(node) || node.data?.role === 'answers';
  const walk = (parent: Parent, around: readonly Parent[]): void => {
    for (const node of parent.children) {
      if (node.type === 'text') {
        const seams = seamsOf(node);
        const [first] = seams;
        const last = seams.at(-1);
        if (!first || !last) continue;
        const to = last.offset + node.value.length - last.at;
        found.push({ node, around, from: first.offset, to });
      } else if (node.type === 'element' && !isPassed(node)) {
        const [from, to] = [node.position?.start.offset, node.position?.end.offset];
        if (from !== undefined && to !== undefined) found.push({ node, around, from, to });
        walk(node, [...around, node]);
      }
    }
  };
  walk(tree, [tree]);
  return found;
}

function smallestAround(written: readonly Written[], offset: number): Written | undefined {
  let best: Written | undefined;
  for (const each of written) {
    const isAround = each.from <= offset && offset < each.to;
    if (isAround && (!best || each.to - each.from <= best.to - best.from)) best = each;
  }
  return best;
}

/** The words themselves, what stands before them, or the block that they are in. */
function markWritten(at: Written, written: readonly Written[], found: PlacedFinding): void {
  const { finding, place } = found;
  const offset = place.start.offset;
  if (at.node.type === 'text' && !isInLink(at)) {
    markText(at.node, at, found);
    return;
  }
  if (at.node.type === 'text' || !isBlock(at.node)) {
    // A sign is a link, and links do not nest.
    const whole = outOfLink(at);
    mark(whole.node, finding);
    putAfter(whole, [findingSign(finding)]);
    putNote(whole, finding);
    return;
  }
  const block = at.node;
  const before = written.findLast(
    ({ node, around, to }) =>
      around.includes(block) && to <= offset && (node.type === 'text' || !isBlock(node)),
  );
  if (before && !isApart(block)) {
    const whole = outOfLink(before);
    putAfter(whole, [findingSign(finding)]);
    putNote(whole, finding);
    return;
  }
  mark(block, finding);
  if (/^(?:p|h[1-6]|li)$/.test(block.tagName)) block.children.push(findingSign(finding));
  putNote({ ...at, around: [...at.around, block] }, finding);
}

/** Marks the words of a text that a finding is about, or the place between words that a directive left. */
function markText(node: Text, at: Written, { finding, place }: PlacedFinding): void {
  const from = indexIn(node, place.start.offset);
  const to = Math.max(from, indexIn(node, place.end.offset));
  const words = partOfText(node, from, to);
  const marked: Element = {
    type: 'element',
    tagName: 'span',
    properties: {},
    children: [words],
  };
  mark(marked, finding);
  replace(at, [
    ...(from > 0 ? [partOfText(node, 0, from)] : []),
    ...(words.value.trim() === '' ? [words] : [marked]),
    findingSign(finding),
    ...(to < node.value.length ? [partOfText(node, to)] : []),
  ]);
  putNote(at, finding);
}

/** Where an offset of the file is in a text; where a silent directive stood, the seam. */
function indexIn(node: Text, offset: number): number {
  const seams = seamsOf(node);
  const index = seams.findLastIndex((seam) => seam.offset <= offset);
  const seam = seams[index];
  if (seam === undefined) return 0;
  const end = seams[index + 1]?.at ?? node.value.length;
  return Math.min(end, seam.at + offset - seam.offset);
}

/** What stands nowhere on the page: a block that shows nothing, front matter, a file. */
function markMissing(
  tree: Root,
  written: readonly Written[],
  { finding, place }: PlacedFinding,
  { blocks, source }: MarkedText,
): void {
  const offset = place.start.offset;
  const block = blocks.find(
    (each) => each.place.start.offset <= offset && offset <= each.place.end.offset,
  );
  const note = findingNote(finding);
  const before = block?.place.start.offset ?? offset;
  const shown = tree.children.find(
    (node) => node.type === 'element' && node.data?.unshown === before,
  );
  if (shown) {
    tree.children.splice(tree.children.indexOf(shown) + 1, 0, note);
    return;
  }
  const next = written.find(({ from }) => from >= before)?.around[1];
  const direct = written.find(({ from }) => from >= before)?.node as RootContent | undefined;
  const target = (next as RootContent | undefined) ?? direct;
  const index = target ? tree.children.indexOf(target) : tree.children.length;
  const excerpt = block
    ? [unshownBlock(source.slice(block.place.start.offset, block.place.end.offset), before)]
    : [];
  tree.children.splice(index < 0 ? tree.children.length : index, 0, ...excerpt, note);
}

/** Behind the paragraph, or the whole of what has an order of its own. */
function putNote({ node, around }: Written, finding: DeskFinding): void {
  const path = [...around, ...(node.type === 'element' ? [node] : [])];
  const apart = path.findIndex((each) => each.type === 'element' && isApart(each));
  const paragraph = path.findLastIndex((each) => each.type === 'element' && isHome(each));
  // What stands in neither is behind the whole that it stands in.
  const home = apart >= 0 ? apart : paragraph >= 0 ? paragraph : 1;
  const block = path[home];
  const parent = path[home - 1];
  if (block?.type !== 'element' || parent === undefined) {
    (path[0] as Root).children.push(findingNote(finding));
  } else if (block.tagName === 'li') {
    block.children.push(findingNote(finding));
  } else {
    parent.children.splice(parent.children.indexOf(block) + 1, 0, findingNote(finding));
  }
}

function putAfter({ node, around }: Written, added: readonly ElementContent[]): void {
  const parent = around.at(-1);
  parent?.children.splice(parent.children.indexOf(node) + 1, 0, ...added);
}

function replace({ node, around }: Written, by: readonly ElementContent[]): void {
  const parent = around.at(-1);
  parent?.children.splice(parent.children.indexOf(node), 1, ...by);
}

function isInLink({ around }: Written): boolean {
  return around.some((each) => each.type === 'element' && each.tagName === 'a');
}

/** The link that something stands in, as a whole. */
function outOfLink(at: Written): Written & { readonly node: Element | Text } {
  const index = at.around.findIndex((each) => each.type === 'element' && each.tagName === 'a');
  const link = at.around[index];
  if (link?.type !== 'element') return at;
  return { ...at, node: link, around: at.around.slice(0, index) };
}

/** What this file has put there. */
function isOurs({ properties }: Element): boolean {
  return [properties.className]
    .flat()
    .some((name) => /^desk-(?:note|sign|unshown)$/.test(String(name)));
}

const blockTags =
  /^(?:p|h[1-6]|li|ul|ol|dl|dd|dt|div|figure|figcaption|section|table|thead|tbody|tr|td|th|pre|blockquote|details|article)$/;

function isBlock({ tagName }: Element): boolean {
  return blockTags.test(tagName);
}

/** A paragraph or the like, behind which a note may stand. */
function isHome({ tagName }: Element): boolean {
  return /^(?:p|h[1-6]|li|pre|blockquote)$/.test(tagName);
}

/** A whole with an order of its own that no note is put into. */
function isApart({ data }: Element): boolean {
  return data?.role !== undefined && apart.has(data.role);
}

const apart: ReadonlySet<Role> = new Set(['exercise', 'diagram', 'pattern', 'table']);
