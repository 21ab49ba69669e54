import type {
  Image,
  InlineCode,
  Link,
  LinkReference,
  Parent,
  PhrasingContent,
  RootContent,
} from 'mdast';
import type { TextDirective } from 'mdast-util-directive';
import { nearestName, type Place } from '../diagnostics/index.ts';
import { parseMovetext } from '../movetext/index.ts';
import type { FileText } from './fence.ts';
import { arrowProblem, isLabel, labelHint, squareProblem } from './names.ts';
import {
  type DirectiveName,
  type DirectiveNode,
  directiveNames,
  type PositionLinkNode,
  type ProseMovesNode,
} from './nodes.ts';
import { resolveMedia } from './resolve-media.ts';
import type { CourseProblem } from './types.ts';

/** What a chapter's text is read with. */
export interface TextContext {
  readonly source: FileText;
  /** Targets of `[name]: pos:label` definitions by their identifier. */
  readonly positionDefinitions: ReadonlyMap<string, string>;
  readonly media: ReadonlySet<string>;
  readonly usedMedia: Set<string>;
  readonly report: (problem: Omit<CourseProblem, 'rule'>) => void;
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
    default:
      return node;
  }
}

function placeOf(node: RootContent | PhrasingContent, context: TextContext): Place {
  const start = context.source.pointAt(node.position?.start.offset ?? 0);
  const end = context.source.pointAt(node.position?.end.offset ?? start.offset);
  return { file: context.source.file, start, end };
}

function readDirective(node: TextDirective, context: TextContext): DirectiveNode | PhrasingContent {
  const place = placeOf(node, context);
  const raw = context.source.text.slice(place.start.offset, place.end.offset);
  const asText: PhrasingContent = { type: 'text', value: raw, ...position(node) };
  // `White:Black` and `10:30` are words, not directives: only the bracket form counts.
  const opening = 1 + node.name.length;
  if (raw.charAt(opening) !== '[') return asText;
  const name = directiveNames.find((known) => known === node.name);
  if (!name) {
    const near = nearestName(node.name, directiveNames);
    context.report({
      place,
      message: `There is no directive \`:${node.name}[…]\`.`,
      hint: near
        ? `Did you mean \`:${near}[…]\`? For a plain colon write \`\\:\`.`
        : `The directives are ${directiveNames.map((known) => `:${known}`).join(', ')}. For a plain colon write \`\\:\`.`,
    });
    return asText;
  }
  const argument = raw
    .slice(opening + 1, raw.lastIndexOf(']'))
    .replace(/\s+/g, ' ')
    .trim();
  const problem = argumentProblem(name, argument);
  if (problem) {
    context.report({ place, ...problem });
    return { ...asText, value: '' };
  }
  return { type: 'courseDirective', name, argument, ...position(node) };
}

function argumentProblem(name: DirectiveName, argument: string) {
  switch (name) {
    case 'here':
    case 'same':
    case 'later':
      return isLabel(argument)
        ? undefined
        : { message: `\`${argument}\` is no name for a position.`, hint: labelHint };
    case 'mark':
      return squareProblem(argument);
    case 'plan':
    case 'threat':
    case 'guard':
      return arrowProblem(argument);
    case 'claim':
      return argument === ''
        ? {
            message: 'This claim says nothing.',
            hint: 'Write what is claimed, such as `:claim[isolated d5]`.',
          }
        : undefined;
    case 'allow':
      return /^[a-z-]+ \S/.test(argument)
        ? undefined
        : {
            message: '`:allow[…]` needs the id of a rule and a reason.',
            hint: 'Write `:allow[rule-id the reason]` on the line of the finding.',
          };
    case 'end':
    case 'option':
      return argument === ''
        ? {
            message: `\`:${name}[]\` gives no reason.`,
            hint: `Say why in a few words: \`:${name}[…]\`.`,
          }
        : undefined;
  }
}

function readLink(node: Link, context: TextContext): PositionLinkNode | Link {
  return node.url.startsWith('pos:') ? positionLink(node.url, node, context) : node;
}

function readLinkReference(node: LinkReference, context: TextContext) {
  const url = context.positionDefinitions.get(node.identifier);
  return url === undefined ? node : positionLink(url, node, context);
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
  return { type: 'positionLink', label, children: node.children, ...position(node) };
}

const beginsWithNumber = /^\d{1,3}\s?(?:\.|…)/;
const looksLikeMove = /^(?:[KQRBN♔-♟]?[a-h1-8x=\-–]*[a-h][1-8]|[O0]-[O0])/u;

function readProseMoves(node: InlineCode): ProseMovesNode | InlineCode {
  if (!beginsWithNumber.test(node.value)) return node;
  const { line, problems } = parseMovetext(node.value);
  if (problems.length > 0 || line.before.length > 0 || line.result) return node;
  if (!line.moves.every((move) => move.after.length === 0 && looksLikeMove.test(move.san.text))) {
    return node;
  }
  const first = line.moves[0];
  if (!first?.number) return node;
  let ply = first.number.value * 2 + (first.number.dots > 1 ? 1 : 0);
  const moves = line.moves.map((move, index) => {
    const start = move.number?.span.start ?? move.san.span.start;
    const end = line.moves[index + 1];
    const next = end ? (end.number?.span.start ?? end.san.span.start) : node.value.length;
    const at = move.number ? move.number.value * 2 + (move.number.dots > 1 ? 1 : 0) : ply;
    ply = at + 1;
    return {
      text: node.value.slice(start, next).trim(),
      san: move.san.text,
      number: at >> 1,
      color: at % 2 === 0 ? ('white' as const) : ('black' as const),
    };
  });
  return { type: 'proseMoves', value: node.value, moves, ...position(node) };
}

function readImage(node: Image, context: TextContext): PhrasingContent {
  const resolved = resolveMedia(node.url, context.source.file, context.media);
  if ('problem' in resolved) {
    context.report({ place: placeOf(node, context), ...resolved.problem });
    return { type: 'text', value: node.alt ?? '', ...position(node) };
  }
  context.usedMedia.add(resolved.path);
  return { ...node, url: resolved.path };
}

function position(node: { position?: RootContent['position'] }) {
  return node.position ? { position: node.position } : {};
}
