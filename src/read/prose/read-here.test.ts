import { describe, expect, test } from 'vitest';
import { longestTitle, readHere } from './read-here.ts';

describe('a name with a title', () => {
  test('has the place of the title, without its marks', () => {
    const written = ' na5-qb6  "The  knight\ngoes to the rim" ';
    const read = readHere(written);
    if (!('label' in read)) throw new Error(read.message);
    expect(read.label).toBe('na5-qb6');
    expect(read.title?.text).toBe('The knight goes to the rim');
    expect(written.slice(read.title?.start, read.title?.end)).toBe('The  knight\ngoes to the rim');
    expect(read.problem).toBeUndefined();
  });

  test('may hold what looks like markup: it is plain text', () => {
    expect(readHere('x "A *big* [day] at 10:30"')).toMatchObject({
      title: { text: 'A *big* [day] at 10:30' },
    });
  });

  test.each([
    ['x ""', 'The title of `x` is empty.'],
    ['x "  "', 'The title of `x` is empty.'],
    ['x "One" "Two"', '`x` has two titles.'],
    ['x "One" and more', 'Behind the title of `x` stands something more.'],
    ['x “One”', 'The title of `x` does not stand between two straight quotation marks.'],
    ['x "One', 'The title of `x` does not stand between two straight quotation marks.'],
    [
      `x "${'é'.repeat(longestTitle + 1)}"`,
      `The title of \`x\` has ${longestTitle + 1} characters; ${longestTitle} are the most.`,
    ],
  ])('%s is a fault of the title, and the name holds', (written, message) => {
    const read = readHere(written);
    expect(read).toMatchObject({ label: 'x', problem: { message } });
    expect(read).not.toHaveProperty('title');
  });

  test('as long as may be', () => {
    expect(readHere(`x "${'é'.repeat(longestTitle)}"`)).not.toHaveProperty('problem');
  });

  test.each(['', '"Only a title"', 'two words', 'a? "Title"'])('%s gives no name', (written) => {
    expect(readHere(written)).toMatchObject({
      message: `\`${written}\` is no name for a position.`,
    });
  });
});
