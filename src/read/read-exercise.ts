import * as z from 'zod';
import type { Place } from '../diagnostics/index.ts';
import { type BlockContext, pickAttribute } from './block-context.ts';
import type { Fence } from './fence.ts';
import { itemsOf, listOf, readBody, readBodyText, textValue } from './read-body.ts';
import { isEmpty, readMoves } from './read-moves.ts';
import { readPosition } from './read-position.ts';
import type { YamlResult } from './read-yaml.ts';
import type { TreeSyntax } from './types.ts';

const lines = 'a line of moves such as `7... Nb4 8. Qb1`, or a list of lines';

const schema = z.strictObject(
  {
    ask: textValue,
    answer: listOf(lines),
    also: listOf(lines).optional(),
    wrong: listOf(lines).optional(),
    hint: textValue.optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** Reads an `exercise`: a question that the student answers on the board. */
export function readExercise(fence: Fence, context: BlockContext) {
  const { body, yaml } = readBody('exercise', fence, schema, context);
  const moves = (key: 'answer' | 'also' | 'wrong') => readLines(body[key], key, yaml, context);
  return {
    ...readPosition(
      'exercise',
      fence,
      pickAttribute(fence, ['at', 'fen', 'after'], context),
      context,
    ),
    ask: readBodyText(body.ask, 'ask', yaml, context),
    answer: moves('answer'),
    also: moves('also'),
    wrong: moves('wrong'),
    hint: readBodyText(body.hint, 'hint', yaml, context),
  };
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
