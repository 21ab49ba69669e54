import * as z from 'zod';
import { isLabel, labelHint, piecePlace } from '../names.ts';
import type { PatternPiece, PlacedText } from '../types.ts';
import { choicesOf } from '../yaml/choices.ts';
import type { BlockContext } from './block-context.ts';
import type { Fence } from './fence.ts';
import {
  itemsInSan,
  listOf,
  namesInSan,
  namesOf,
  readBody,
  readBodyText,
  textValue,
} from './read-body.ts';

const pieces = listOf('squares and pieces such as `d4 e3 Bd3 Nf3`').optional();

const schema = z.strictObject(
  {
    title: textValue,
    white: pieces,
    black: pieces,
    empty: listOf('squares such as `e5 f4`').optional(),
    at: listOf('names of positions').optional(),
    reversed: z.boolean({ error: '`true` or `false`' }).optional(),
    advice: listOf('a move such as `Nb4`, or a list of moves').optional(),
    claim: listOf('a claim, or a list of claims').optional(),
    text: textValue.optional(),
    except: listOf('names of positions').optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** The names that its lines may have, for completion in editors. */
export const patternChoices = choicesOf(schema);

/** Reads a `pattern`: a placement that positions share. */
export function readPattern(fence: Fence, context: BlockContext) {
  const { body, yaml } = readBody('pattern', fence, schema, context);
  const placed = (['white', 'black'] as const).flatMap((color) =>
    namesInSan(body[color], color, yaml, context).flatMap((item): PatternPiece[] => {
      const piece = piecePlace(item.text);
      if (piece) return [{ ...piece, color, place: item.place }];
      context.report({
        place: item.place,
        message: `\`${item.text}\` is no piece on a square.`,
        hint: 'Write a pawn as its square, `d4`, and a piece with its letter, `Nf3`.',
      });
      return [];
    }),
  );
  const empty = namesOf(body.empty, 'empty', yaml).filter((item) =>
    keep(
      item,
      piecePlace(item.text)?.kind === 'pawn',
      'is no square of the board',
      'Name squares from a1 to h8.',
      context,
    ),
  );
  const labels = (key: 'at' | 'except') =>
    namesOf(body[key], key, yaml).filter((item) =>
      keep(item, isLabel(item.text), 'is no name for a position', labelHint, context),
    );
  if (yaml.value && placed.length === 0) {
    context.report({
      place: fence.opening,
      message: 'This pattern places no piece, so every position would match it.',
      hint: 'Name squares with `white: …` and `black: …`.',
    });
  }
  reportImpossible(placed, empty, context);
  return {
    title: body.title ?? '',
    pieces: placed,
    empty,
    at: labels('at'),
    reversed: body.reversed ?? false,
    advice: namesInSan(body.advice, 'advice', yaml, context),
    claims: itemsInSan(body.claim, 'claim', yaml, context),
    text: readBodyText(body.text, 'text', yaml, context),
    except: labels('except'),
  };
}

function keep(
  item: PlacedText,
  sound: boolean,
  what: string,
  hint: string,
  { report }: BlockContext,
): boolean {
  if (!sound) report({ place: item.place, message: `\`${item.text}\` ${what}.`, hint });
  return sound;
}

/** Reports placements that no position can have: such a pattern would never match. */
function reportImpossible(
  pieces: readonly PatternPiece[],
  empty: readonly PlacedText[],
  { report }: BlockContext,
): void {
  const taken = new Set<string>();
  for (const { square, kind, color, place } of pieces) {
    if (taken.has(square)) {
      report({
        place,
        message: `Two pieces of this pattern stand on ${square}.`,
        hint: 'Keep one of them.',
      });
    } else if (kind === 'pawn' && /[18]$/.test(square)) {
      report({
        place,
        message: `No pawn can stand on ${square}.`,
        hint: 'A bare square is a pawn; name a piece with its letter, such as `Rd1`.',
      });
    } else if (
      kind === 'king' &&
      pieces.some(
        (other) => other.kind === kind && other.color === color && taken.has(other.square),
      )
    ) {
      report({
        place,
        message: `This pattern has two kings of ${color === 'white' ? "White's" : "Black's"}.`,
        hint: 'Keep one of them.',
      });
    }
    taken.add(square);
  }
  for (const { text, place } of empty) {
    if (!taken.has(text)) continue;
    report({
      place,
      message: `${text} must be empty in this pattern, and a piece of it stands there.`,
      hint: 'Take the square out of one of the two lists.',
    });
  }
}
