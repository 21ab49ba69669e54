import type {
  Image,
  ImageReference,
  Link,
  LinkReference,
  Parent,
  PhrasingContent,
  RootContent,
  Text,
} from 'mdast';
import type { Point } from '../../diagnostics/index.ts';
import { resolveLink } from '../links/resolve-link.ts';
import { resolveMedia } from '../links/resolve-media.ts';
import { type ExcessNode, limitNesting } from '../markdown/limits/index.ts';
import { readInlines } from '../markdown/markdown.ts';
import { isLabel, labelHint, readCourseLabel } from '../names.ts';
import { type CourseLinkNode, directiveNames, type PositionLinkNode } from '../nodes.ts';
import { placeOf, positionOf, type TextContext, takeMedia } from '../text-context.ts';
import { readDirective } from './read-directive.ts';
import { readHtml } from './read-html.ts';
import { readProseMoves } from './read-prose-moves.ts';
import { placeOfUrl, urlRange } from './url-range.ts';

/** Reads a comment or a caption: inline Markdown with the course's own elements. */
export function readInlineText(
  text: string,
  pointAt: (offset: number) => Point,
  context: TextContext,
): PhrasingContent[] {
  const [nodes = []] = readInlines([{ text, pointAt }]);
  return readInlineNodes(nodes, context);
}

/** Reads the course's own elements in a parsed comment or caption. */
export function readInlineNodes(nodes: PhrasingContent[], context: TextContext): PhrasingContent[] {
  const parent = { children: nodes };
  limitNesting(parent, context);
  readTextNodes(parent, context);
  return parent.children;
}

/**
 * Replaces, in place, the nodes under `parent` that are elements of a course: text directives, links to positions,
 * moves in inline code, pictures.
 */
export function readTextNodes(
  parent: { children: (RootContent | PhrasingContent)[] },
  context: TextContext,
): void {
  parent.children.forEach((child, index) => {
    const node = readNode(child, context);
    if (node !== child) parent.children[index] = node;
    if ('children' in node) readTextNodes(node as Parent, context);
  });
}

function readNode(node: RootContent | PhrasingContent, context: TextContext) {
  switch (node.type) {
    case 'text':
      reportAlmost(node, context);
      return node;
    case 'textDirective':
      return readDirective(node, context);
    case 'link':
      return readLink(node, context);
    case 'linkReference':
      return readLinkReference(node, context);
    case 'inlineCode':
      return readProseMoves(node, context);
    case 'image':
      return readImage(node, context);
    case 'imageReference':
      return readImageReference(node, context);
    case 'html':
      return readHtml(node, context);
    case 'excess':
      return readExcess(node, context);
    default:
      return node;
  }
}

const almost = new RegExp(`(?<!:):{2,}(${directiveNames.join('|')})\\[|\\]\\(\\s*pos(?::|$)`, 'g');

/**
 * Reports plain text that was probably meant as an element of the course: readers would see it, and nothing would be
 * checked.
 */
function reportAlmost(node: Text, context: TextContext): void {
  if (node.value.search(almost) < 0) return;
  const { start, end } = placeOf(node, context);
  const { text, file, pointAt } = context.source;
  for (const { 0: whole, 1: name, index } of text
    .slice(start.offset, end.offset)
    .matchAll(almost)) {
    const at = start.offset + index;
    context.report({
      place: { file, start: pointAt(at), end: pointAt(at + whole.length) },
      message: name
        ? `\`:${name}[…]\` has more than one colon here, so it is only text.`
        : 'This cannot be read as a link, so it is only text.',
      hint: name
        ? `Write one colon: \`:${name}[…]\`.`
        : 'Write `[text](pos:name)` with both brackets closed and no space in the name.',
    });
  }
}

function readLink(node: Link, context: TextContext): PositionLinkNode | CourseLinkNode | Link {
  if (/^pos:/i.test(node.url)) return positionLink(node.url, node, context);
  if (!context.chapters) return node;
  const { chapters, media } = context;
  const resolved = resolveLink(node.url, context.source.file, { chapters, media });
  if ('problem' in resolved) {
    context.report({ place: placeOfUrl(node, context), ...resolved.problem });
    return node;
  }
  if (resolved.media !== undefined && !takeMedia(resolved.media, node, context)) return node;
  const range = urlRange(node, context);
  return { ...node, url: resolved.url, ...(range && { data: { urlRange: range } }) };
}

/** `[text][name]`: becomes a plain link, so that its file is found like any other. */
function readLinkReference(node: LinkReference, context: TextContext) {
  const definition = context.definitions.get(node.identifier);
  if (!definition) return node;
  const { url, title } = definition;
  const { children } = node;
  return readLink({ type: 'link', url, ...{ title }, children, ...positionOf(node) }, context);
}

function positionLink(
  url: string,
  node: Link,
  context: TextContext,
): PositionLinkNode | CourseLinkNode {
  let label = url.slice('pos:'.length);
  try {
    label = decodeURIComponent(label);
  } catch {
    // With a stray `%` it stays as written; the unknown label is reported later.
  }
  const place = placeOf(node, context);
  const range = label === '' ? undefined : urlRange(node, context);
  const labelRange = {
    start: range ? context.source.pointAt(range.start.offset + 'pos:'.length) : place.start,
    end: range?.end ?? place.end,
  };
  const elsewhere = readCourseLabel(label);
  if (elsewhere) {
    return {
      type: 'courseLink',
      ...elsewhere,
      labelRange,
      children: node.children,
      ...positionOf(node),
    };
  }
  if (!isLabel(label)) {
    context.report({
      place: { ...place, ...labelRange },
      message: `\`${label}\` is no name for a position.`,
      hint: labelHint,
    });
  }
  return {
    type: 'positionLink',
    label,
    labelRange,
    children: node.children,
    ...positionOf(node),
  };
}

function readImage(node: Image, context: TextContext): PhrasingContent {
  const resolved = resolveMedia(node.url, context.source.file, context.media);
  if ('problem' in resolved) {
    context.report({ place: placeOfUrl(node, context), ...resolved.problem });
    return inWords(node);
  }
  if (!takeMedia(resolved.path, node, context)) return inWords(node);
  return { ...node, url: resolved.path };
}

function readExcess(node: ExcessNode, context: TextContext): PhrasingContent {
  const { message, hint } = node;
  context.report({ place: placeOf(node, context), message, hint });
  return { type: 'text', value: '', ...positionOf(node) };
}

function inWords(node: Image): Text {
  return { type: 'text', value: node.alt ?? '', ...positionOf(node) };
}

/** `![text][name]`: becomes a plain image, so that its file is found like any other. */
function readImageReference(node: ImageReference, context: TextContext): PhrasingContent {
  const definition = context.definitions.get(node.identifier);
  if (!definition) return node;
  const { url, title } = definition;
  const { alt } = node;
  return readImage({ type: 'image', url, ...{ title, alt }, ...positionOf(node) }, context);
}
