import { expect, test } from 'vitest';
import { aboutDirective } from './typed-directive.ts';

test.each([
  ['The knight is :claim[pinned', 'Claims have buttons below.'],
  ['(:plan[f3-e5]) comes', 'Marks, plans, threats and guards are drawn on the board.'],
  ['Later :here[', 'A name has its own field below.'],
  ['More :later[x]', 'Write directives in the chapter itself.'],
])('%j is told how it is set', (comment, way) => {
  const [, name] = /(:\w+)/.exec(comment) ?? [];
  expect(aboutDirective(comment)).toBe(`What stands behind ${name}[ stays plain text here. ${way}`);
});

test.each(['', 'One thing: [a link](pos:x).', 'At 12:claim[x]', ':claim without brackets'])(
  'nothing is said of %j',
  (comment) => {
    expect(aboutDirective(comment)).toBe('');
  },
);
