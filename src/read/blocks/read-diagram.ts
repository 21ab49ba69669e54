import * as z from 'zod';
import { choicesOf } from '../yaml/choices.ts';
import { type BlockContext, pickAttribute } from './block-context.ts';
import type { Fence } from './fence.ts';
import {
  arrowList,
  itemsInSan,
  listOf,
  readBody,
  readBodyText,
  readDrawn,
  squareList,
  textValue,
} from './read-body.ts';
import { readPosition } from './read-position.ts';

const schema = z.strictObject(
  {
    caption: textValue.optional(),
    alt: textValue.optional(),
    mark: squareList,
    plan: arrowList,
    threat: arrowList,
    guard: arrowList,
    claim: listOf('a claim, or a list of claims').optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** The names that its lines may have, for completion in editors. */
export const diagramChoices = choicesOf(schema);

/** Reads a `diagram`: a still board. */
export function readDiagram(fence: Fence, context: BlockContext) {
  const { body, yaml } = readBody('diagram', fence, schema, context);
  return {
    ...readPosition(
      'diagram',
      fence,
      pickAttribute(fence, ['at', 'fen', 'after'], context),
      context,
    ),
    caption: readBodyText(body.caption, 'caption', yaml, context),
    ...(body.alt === undefined ? {} : { alt: body.alt }),
    ...readDrawn(body, yaml, context),
    claims: itemsInSan(body.claim, 'claim', yaml, context),
  };
}
