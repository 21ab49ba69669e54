import type * as z from 'zod';

/** The names that a list of settings may have, each with the words that it takes; none where it takes any text. */
export type Choices = Readonly<Record<string, readonly string[]>>;

/** What a schema takes, for whoever offers names and values while they are typed. */
export function choicesOf({ shape }: z.ZodObject): Choices {
  return Object.fromEntries(
    Object.entries(shape).map(([name, value]) => [name, wordsOf(value as z.core.$ZodType)]),
  );
}

function wordsOf({ _zod: { def } }: z.core.$ZodType): readonly string[] {
  if (def.type === 'boolean') return ['true', 'false'];
  if (def.type === 'enum' && 'entries' in def) return Object.values(def.entries as object);
  if ('innerType' in def) return wordsOf(def.innerType as z.core.$ZodType);
  if (def.type === 'record' && 'valueType' in def) return wordsOf(def.valueType as z.core.$ZodType);
  return [];
}
