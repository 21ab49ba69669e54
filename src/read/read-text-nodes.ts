import type {
  Image,
  ImageReference,
  Link,
  LinkReference,
  Parent,
  PhrasingContent,
  RootContent,
} from 'mdast';
import type { Point } from '../diagnostics/index.ts';
import { limitNesting } from './limit-nesting.ts';
import { readInline } from './markdown.ts';
import { isLabel, labelHint } from './names.ts';
import type { PositionLinkNode } from './nodes.ts';
import { readDirective } from './read-directive.ts';
import { readProseMoves } from './read-prose-moves.ts';
import { resolveMedia } from './resolve-media.ts';
import { placeOf, positionOf, type TextContext } from './text-context.ts';

/** Reads a comment or a caption: inline Markdown with what means something in a course. */
export function readInlineText(
  text: string,
  pointAt: (offset: number) => Point,
  context: TextContext,
): PhrasingContent[] {
  const parent = { children: readInline(text, pointAt) };
  limitNesting(parent, context);
  readTextNodes(parent, context);
  return parent.children;
}

/**
 * Replaces, in place, the nodes under `parent` that mean something in a course: text directives,
 * links to positions, moves in inline code, pictures.
 */
export function readTextNodes(
  parent: { children: (RootContent | PhrasingContent)[] },
  context: TextContext,
): void {
  for (const [index, child] of parent.children.entries()) {
    const node = readNode(child, context);
    if (node !== child) parent.children[index] = node;
    if ('children' in node) readTextNodes(node as Parent, context);
  }
}

function readNode(node: RootContent | PhrasingContent, context: TextContext) {
  switch (node.type) {
    case 'textDirective':
      return readDirective(node, context);
    case 'link':
      return readLink(node, context);
    case 'linkReference':
      return readLinkReference(node, context);
    case 'inlineCode':
      return readProseMoves(node);
    case 'image':
      return readImage(node, context);
    case 'imageReference':
      return readImageReference(node, context);
    default:
      return node;
  }
}

function readLink(node: Link, context: TextContext): PositionLinkNode | Link {
  return node.url.startsWith('pos:') ? positionLink(node.url, node, context) : node;
}

function readLinkReference(node: LinkReference, context: TextContext) {
  const url = context.definitions.get(node.identifier)?.url;
  return url?.startsWith('pos:') ? positionLink(url, node, context) : node;
}

function positionLink(
  url: string,
  node: Link | LinkReference,
  context: TextContext,
): PositionLinkNode {
  let label = url.slice('pos:'.length);
  try {
    label = decodeURIComponent(label);
  } catch {
    // A stray % stays as written: the label will be unknown, and that is reported.
  }
  if (!isLabel(label)) {
    context.report({
      place: placeOf(node, context),
      message: `\`${label}\` is no name for a position.`,
      hint: labelHint,
    });
  }
  return { type: 'positionLink', label, children: node.children, ...positionOf(node) };
}

function readImage(node: Image, context: TextContext): PhrasingContent {
  const resolved = resolveMedia(node.url, context.source.file, context.media);
  if ('problem' in resolved) {
    context.report({ place: placeOf(node, context), ...resolved.problem });
    return { type: 'text', value: node.alt ?? '', ...positionOf(node) };
  }
  context.usedMedia.add(resolved.path);
  return { ...node, url: resolved.path };
}

/** `![text][name]`: becomes a plain image, so that its file is found like any other. */
function readImageReference(node: ImageReference, context: TextContext): PhrasingContent {
  const definition = context.definitions.get(node.identifier);
  if (!definition) return node;
  const { url, title } = definition;
  const { alt } = node;
  return readImage({ type: 'image', url, ...{ title, alt }, ...positionOf(node) }, context);
}
