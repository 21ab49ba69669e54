import type { PhrasingContent } from 'mdast';
import * as z from 'zod';
import { noteLetters, wordsInSan } from '../moves/in-san.ts';
import { arrowProblem, parseList, squareProblem } from '../names.ts';
import { readInlineText } from '../prose/read-text-nodes.ts';
import type { PlacedText } from '../types.ts';
import { readYaml, type YamlResult } from '../yaml/read-yaml.ts';
import type { BlockContext } from './block-context.ts';
import type { Fence } from './fence.ts';

/** Schemas for the bodies of blocks; each message says what the value must be. */
export const textValue = z.string({ error: 'a text (in quotes if it contains `: `)' });

export function listOf(what: string) {
  return z.union([z.string(), z.array(z.string({ error: what }), { error: what })], {
    error: what,
  });
}

export const squareList = listOf('squares such as `e5 f4`').optional();
export const arrowList = listOf('arrows such as `f3-e5`').optional();

/** Reads the YAML body of a block and reports its problems. */
export function readBody<T extends z.ZodObject>(
  name: string,
  fence: Fence,
  schema: T,
  context: BlockContext,
): { body: Partial<z.output<T>>; yaml: YamlResult<z.output<T>> } {
  const yaml = readYaml(
    {
      file: context.source.file,
      text: fence.content,
      pointAt: fence.pointAt,
      name: `this ${name}`,
    },
    schema,
  );
  for (const problem of yaml.problems) context.report(problem);
  return { body: yaml.sound, yaml };
}

type ListValue = string | readonly string[] | undefined;

/** A value that is one text or a list of them, each with its place. */
export function itemsOf(value: ListValue, key: string, yaml: YamlResult<unknown>): PlacedText[] {
  if (value === undefined) return [];
  if (typeof value === 'string') return [{ text: value, place: yaml.placeOf(key) }];
  return value.map((text, index) => ({ text, place: yaml.placeOf(key, index) }));
}

/** The same, with moves and pieces in the letters of SAN. */
export function itemsInSan(
  value: ListValue,
  key: string,
  yaml: YamlResult<unknown>,
  context: BlockContext,
): PlacedText[] {
  return itemsOf(value, key, yaml).map(({ text, place }, index) => {
    const pointAt = typeof value === 'string' ? yaml.locatorOf(key) : yaml.locatorOf(key, index);
    noteLetters(text, pointAt, context);
    return { text: wordsInSan(text, context.pieces), place };
  });
}

/** The names in such a value, with pieces in the letters of SAN. */
export function namesInSan(
  value: ListValue,
  key: string,
  yaml: YamlResult<unknown>,
  context: BlockContext,
): PlacedText[] {
  const { pointAt } = context.source;
  return namesOf(value, key, yaml).map(({ text, place }) => {
    noteLetters(text, (at) => pointAt(place.start.offset + at), context);
    return { text: wordsInSan(text, context.pieces), place };
  });
}

/** The names in such a value, in one string or in several, each with its own place. */
export function namesOf(value: ListValue, key: string, yaml: YamlResult<unknown>): PlacedText[] {
  return itemsOf(value, key, yaml).flatMap(({ text, place: { file } }, index) => {
    const pointAt = typeof value === 'string' ? yaml.locatorOf(key) : yaml.locatorOf(key, index);
    let end = 0;
    return parseList(text).map((item) => {
      const start = text.indexOf(item, end);
      end = start + item.length;
      return { text: item, place: { file, start: pointAt(start), end: pointAt(end) } };
    });
  });
}

interface Drawn {
  readonly mark?: ListValue;
  readonly plan?: ListValue;
  readonly threat?: ListValue;
  readonly guard?: ListValue;
}

/** Marks and arrows. Whatever is no square or arrow is reported and left out. */
export function readDrawn(body: Drawn, yaml: YamlResult<unknown>, context: BlockContext) {
  const sound = (item: PlacedText, problem: ReturnType<typeof squareProblem>) => {
    if (!problem) return true;
    const { message, hint } = problem;
    context.report({ place: item.place, message, hint });
    return false;
  };
  const arrows = (['plan', 'threat', 'guard'] as const).flatMap((meaning) =>
    namesOf(body[meaning], meaning, yaml).map((item) => ({ ...item, meaning })),
  );
  return {
    marks: namesOf(body.mark, 'mark', yaml).filter((item) => sound(item, squareProblem(item.text))),
    arrows: arrows.filter((item) => sound(item, arrowProblem(item.text))),
  };
}

/** A text of a body as inline Markdown. */
export function readBodyText(
  text: string | undefined,
  key: string,
  yaml: YamlResult<unknown>,
  context: BlockContext,
): PhrasingContent[] {
  return text === undefined ? [] : readInlineText(text, yaml.locatorOf(key), context);
}
