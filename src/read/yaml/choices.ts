import type * as z from 'zod';

/** The keys of a mapping, each with its allowed values; an empty list where any text is allowed. */
export type Choices = Readonly<Record<string, readonly string[]>>;

/** The choices of a schema, for completion in editors. */
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
