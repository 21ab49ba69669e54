import type { PhrasingContent } from 'mdast';
import * as z from 'zod';
import type { Place } from '../../diagnostics/index.ts';
import { isEmpty, readMoves } from '../moves/read-moves.ts';
import { readInlineText } from '../prose/read-text-nodes.ts';
import type { TreeSyntax } from '../types.ts';
import { choicesOf } from '../yaml/choices.ts';
import type { YamlResult } from '../yaml/read-yaml.ts';
import { type BlockContext, pickAttribute } from './block-context.ts';
import type { Fence } from './fence.ts';
import { appendMove, readBefore } from './read-before.ts';
import { itemsOf, listOf, readBody, readBodyText, textValue } from './read-body.ts';
import { readPosition } from './read-position.ts';

const lines = 'a line of moves such as `7... Nb4 8. Qb1`, or a list of lines';

const schema = z.strictObject(
  {
    ask: textValue,
    answer: listOf(lines),
    also: listOf(lines).optional(),
    wrong: listOf(lines).optional(),
    before: textValue.optional(),
    hint: listOf('a text, or a list of texts').optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** The names that its lines may have, for completion in editors. */
export const exerciseChoices = choicesOf(schema);

/** Reads an `exercise`: a question that the student answers on the board. */
export function readExercise(fence: Fence, context: BlockContext) {
  const { body, yaml } = readBody('exercise', fence, schema, context);
  const moves = (key: 'answer' | 'also' | 'wrong') => readLines(body[key], key, yaml, context);
  const given = pickAttribute(fence, ['at', 'fen', 'after'], context);
  const position = readPosition('exercise', fence, given, context);
  const before = readBefore(fence, body.before, yaml, context);
  return {
    ...position,
    ...(before && { before: true as const, after: appendMove(position.after, before) }),
    ask: readBodyText(body.ask, 'ask', yaml, context),
    answer: moves('answer'),
    also: moves('also'),
    wrong: moves('wrong'),
    hints: readHints(body.hint, yaml, context),
  };
}

/** Each item of a list is a hint, and so is each line of a text that has several. */
function readHints(
  value: string | readonly string[] | undefined,
  yaml: YamlResult<unknown>,
  context: BlockContext,
): PhrasingContent[][] {
  if (value === undefined) return [];
  const texts =
    typeof value === 'string'
      ? [{ text: value, locator: yaml.locatorOf('hint') }]
      : value.map((text, index) => ({ text, locator: yaml.locatorOf('hint', index) }));
  return texts.flatMap(({ text, locator }) =>
    [...text.matchAll(/[^\n]*\S[^\n]*/g)].map(({ 0: line, index }) =>
      readInlineText(line, (offset) => locator(index + offset), context),
    ),
  );
}

function readLines(
  value: string | readonly string[] | undefined,
  key: string,
  yaml: YamlResult<unknown>,
  context: BlockContext,
): TreeSyntax[] {
  const items = itemsOf(value, key, yaml);
  if (value !== undefined && items.length === 0) reportEmpty(yaml.placeOf(key), key, context);
  return items.map(({ text, place }, index) => {
    const locator = typeof value === 'string' ? yaml.locatorOf(key) : yaml.locatorOf(key, index);
    const line = readMoves(text, locator, context);
    if (isEmpty(line)) reportEmpty(place, key, context);
    return line;
  });
}

function reportEmpty(place: Place, key: string, { report }: BlockContext): void {
  report({
    place,
    message: `No move stands under \`${key}\` here.`,
    hint: `Write ${lines}.`,
  });
}
