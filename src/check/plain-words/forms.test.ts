/** Every form's examples: each says what its sentence states, or that it is left alone. */
import { describe, expect, test } from 'vitest';
import type { Form } from './forms/form.ts';
import { forms } from './forms/index.ts';
import { readSentence } from './testing/read-passage.ts';

const all: [string, Form][] = Object.entries(forms);

describe.each(all)('%s', (name, { examples }) => {
  test.each(examples.map((example) => [example.says || example.moves, example] as const))(
    '%s',
    (_says, { language = 'en', holds, because, ...example }) => {
      const stated = readSentence({ language, ...example }).stated.filter(
        ({ form }) => form === name,
      );
      if (holds === undefined) expect(stated).toEqual([]);
      else {
        expect(stated.map((one) => one.holds)).toEqual(stated.map(() => holds));
        expect(stated.length).toBeGreaterThan(0);
        if (because !== undefined) expect(stated[0]?.because).toBe(because);
      }
    },
  );

  test('is read in three languages, and knows when to be silent', () => {
    const languages = new Set(examples.map(({ language = 'en' }) => language));
    expect([...languages].sort()).toEqual(['de', 'en', 'es']);
    expect(examples.some(({ holds }) => holds === true)).toBe(true);
    expect(examples.some(({ holds }) => holds === false)).toBe(true);
  });
});
