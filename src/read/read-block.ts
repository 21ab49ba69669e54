import type { Code, PhrasingContent } from 'mdast';
import { z } from 'zod';
import type { Color } from '../chess/types.ts';
import { nearestName, type Place, type Point } from '../diagnostics/index.ts';
import { parseMovetext } from '../movetext/index.ts';
import type { Comment, Line } from '../movetext/types.ts';
import { type Fence, readFence } from './fence.ts';
import { readInline } from './markdown.ts';
import { arrowProblem, isLabel, labelHint, parseList, squareProblem } from './names.ts';
import { readTextNodes, type TextContext } from './read-text-nodes.ts';
import { readYaml, type YamlResult } from './read-yaml.ts';
import type { BlockDraft, CourseProblem, MovetextDraft, PlacedText } from './types.ts';

export const blockNames = ['moves', 'diagram'] as const;

const attributeNames: Readonly<Record<(typeof blockNames)[number], readonly string[]>> = {
  moves: ['from', 'fen', 'view'],
  diagram: ['at', 'fen', 'after', 'view'],
};

/** A block's text and where its findings go. */
export interface BlockContext extends TextContext {
  readonly reportMoves: (problem: Omit<CourseProblem, 'rule'>) => void;
}

/** Reads a fenced block of the course language; `undefined` where the block is other code. */
export function readBlock(node: Code, context: BlockContext): BlockDraft | undefined {
  const name = blockNames.find((known) => known === node.lang);
  if (!name) {
    suggestName(node, context);
    return undefined;
  }
  const fence = readFence(node, context.source);
  if (!fence.closed) {
    context.report({
      place: fence.opening,
      message: `This \`${name}\` block is opened here and never closed: the rest of the chapter is taken for it.`,
      hint: 'Put a line with three backticks after its last line.',
    });
  }
  checkAttributes(name, fence, context);
  const shared = { place: fence.place, ...readView(fence, context) };
  if (name === 'diagram') return { kind: 'diagram', ...shared, ...readDiagram(fence, context) };
  return {
    kind: 'moves',
    ...shared,
    ...pick(fence, ['from', 'fen'], context),
    moves: readMoves(fence.content, fence.pointAt, context),
  };
}

function suggestName(node: Code, context: BlockContext): void {
  const near = node.lang ? nearestName(node.lang, blockNames) : undefined;
  if (!near || node.lang?.toLowerCase() === 'mojo') return;
  const { opening } = readFence(node, context.source);
  context.report({
    place: opening,
    message: `There is no block \`${node.lang}\`.`,
    hint: `Did you mean \`${near}\`?`,
  });
}

function checkAttributes(
  name: (typeof blockNames)[number],
  fence: Fence,
  { report }: BlockContext,
): void {
  const known = attributeNames[name];
  const list = known.map((attribute) => `\`${attribute}="…"\``).join(', ');
  if (fence.unreadable) {
    report({
      place: fence.unreadable,
      message: 'This cannot be read as an attribute.',
      hint: `Write attributes as name="value". A \`${name}\` block has ${list}.`,
    });
  }
  for (const [attribute, { namePlace }] of fence.attributes) {
    if (known.includes(attribute)) continue;
    const near = nearestName(attribute, known);
    report({
      place: namePlace,
      message: `A \`${name}\` block has no attribute \`${attribute}\`.`,
      hint: near ? `Did you mean \`${near}\`?` : `Its attributes are ${list}.`,
    });
  }
}

function readView(fence: Fence, { report }: BlockContext): { view?: Color } {
  const view = fence.attributes.get('view');
  if (!view) return {};
  if (view.text === 'white' || view.text === 'black') return { view: view.text };
  report({
    place: view.place,
    message: `\`${view.text}\` is no side to view the board from.`,
    hint: 'Write view="white" or view="black".',
  });
  return {};
}

/** The attributes that tell the position: one of them, and a well-formed name where it is a name. */
function pick<Name extends 'from' | 'at' | 'fen' | 'after'>(
  fence: Fence,
  names: readonly Name[],
  { report }: BlockContext,
): { [name in Name]?: PlacedText } {
  const given = names.filter((name) => fence.attributes.has(name));
  if (given.length > 1) {
    const list = given.map((name) => `\`${name}\``).join(' and ');
    report({
      place: fence.attributes.get(given[1] as Name)?.namePlace ?? fence.opening,
      message: `This block says twice where it starts: ${list}.`,
      hint: 'Keep one of them.',
    });
  }
  const name = given[0];
  const value = name && fence.attributes.get(name);
  if (!name || !value) return {};
  if ((name === 'from' || name === 'at') && !isLabel(value.text)) {
    report({
      place: value.place,
      message: `\`${value.text}\` is no name for a position.`,
      hint: labelHint,
    });
  }
  return { [name]: { text: value.text, place: value.place } } as { [name in Name]?: PlacedText };
}

/** Reads movetext and the inline Markdown of its comments. */
export function readMoves(
  text: string,
  pointAt: (offset: number) => Point,
  context: BlockContext,
): MovetextDraft {
  const movetext = parseMovetext(text);
  const place = (start: number, end: number): Place => ({
    file: context.source.file,
    start: pointAt(start),
    end: pointAt(end),
  });
  for (const { span, message, hint } of movetext.problems) {
    context.reportMoves({ place: place(span.start, span.end), message, hint });
  }
  const comments = new Map<Comment, PhrasingContent[]>();
  const lines: Line[] = [movetext.line];
  for (let line = lines.pop(); line; line = lines.pop()) {
    const items = [...line.before, ...line.moves.flatMap((move) => move.after)];
    for (const item of items) {
      if (item.type === 'variation') lines.push(item.line);
      else {
        const parent = {
          children: readInline(item.text, (offset) => pointAt(item.span.start + offset)),
        };
        readTextNodes(parent, context);
        comments.set(item, parent.children);
      }
    }
  }
  return { movetext, pointAt, comments };
}

const listOf = (what: string) =>
  z.union([z.string(), z.array(z.string({ error: what }), { error: what })], { error: what });

const diagramSchema = z.strictObject(
  {
    caption: z.string({ error: 'a text (in quotes if it contains `: `)' }).optional(),
    alt: z.string({ error: 'a text (in quotes if it contains `: `)' }).optional(),
    mark: listOf('squares such as `e5 f4`').optional(),
    plan: listOf('arrows such as `f3-e5`').optional(),
    threat: listOf('arrows such as `f3-e5`').optional(),
    guard: listOf('arrows such as `f3-e5`').optional(),
    claim: listOf('a claim, or a list of claims').optional(),
  },
  { error: 'a list of `name: value` lines' },
);

function readDiagram(fence: Fence, context: BlockContext) {
  const position = pick(fence, ['at', 'fen', 'after'], context);
  if (!position.at && !position.fen && !position.after) {
    context.report({
      place: fence.opening,
      message: 'This diagram does not say which position it shows.',
      hint: 'Write at="label", fen="…" or after="1. d4 d5".',
    });
  }
  const yaml = readYaml(
    {
      file: context.source.file,
      text: fence.content,
      pointAt: fence.pointAt,
      name: 'this diagram',
    },
    diagramSchema,
    Object.keys(diagramSchema.shape),
  );
  for (const problem of yaml.problems) context.report(problem);
  const body = yaml.value ?? {};
  const squares = itemsOf(body.mark, 'mark', yaml).flatMap(splitItems);
  const arrows = (['plan', 'threat', 'guard'] as const).flatMap((meaning) =>
    itemsOf(body[meaning], meaning, yaml)
      .flatMap(splitItems)
      .map((item) => ({ ...item, meaning })),
  );
  const sound = (item: PlacedText, problem: ReturnType<typeof squareProblem>) => {
    if (problem) context.report({ place: item.place, ...problem });
    return !problem;
  };
  const { after, at, fen } = position;
  return {
    ...(at ? { at } : {}),
    ...(fen ? { fen } : {}),
    ...(after
      ? {
          after: readMoves(
            after.text,
            (offset) => context.source.pointAt(after.place.start.offset + offset),
            context,
          ),
        }
      : {}),
    caption: readCaption(body.caption, yaml, context),
    ...(body.alt === undefined ? {} : { alt: body.alt }),
    marks: squares.filter((item) => sound(item, squareProblem(item.text))),
    arrows: arrows.filter((item) => sound(item, arrowProblem(item.text))),
    claims: itemsOf(body.claim, 'claim', yaml),
  };
}

function readCaption(
  caption: string | undefined,
  yaml: YamlResult<unknown>,
  context: BlockContext,
): PhrasingContent[] {
  if (caption === undefined) return [];
  // YAML may have folded or unescaped the text, so its parts have the place of the whole.
  const { start } = yaml.placeOf('caption');
  const parent = { children: readInline(caption, () => start) };
  readTextNodes(parent, context);
  return parent.children;
}

function itemsOf(
  value: string | readonly string[] | undefined,
  key: string,
  yaml: YamlResult<unknown>,
): PlacedText[] {
  if (value === undefined) return [];
  if (typeof value === 'string') return [{ text: value, place: yaml.placeOf(key) }];
  return value.map((text, index) => ({ text, place: yaml.placeOf(key, index) }));
}

function splitItems({ text, place }: PlacedText): PlacedText[] {
  return parseList(text).map((item) => ({ text: item, place }));
}
