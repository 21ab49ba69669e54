import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { courseOf } from './testing/course-of.ts';
import { misplaced } from './testing/misplaced.ts';

const san = fc.constantFrom('e4', 'Nf3', 'd5', 'O-O', 'Qh5+', 'Ngf3', 'exd5', 'Kz9', '😀');
const label = fc.constantFrom('a', 'b', 'c');
const comment = fc.oneof(
  label.map((name) => `{:here[${name}]}`),
  label.map((name) => `{see [it](pos:${name}) :same[${name}]}`),
  fc.constantFrom('{*so* :mark[e4] 😀}', '{a:b\n`1.e4`}', '; to the end\n', '{:claim[check]}'),
);
const item = fc.oneof(
  san.map((move) => `1. ${move}`),
  san,
  san.map((move) => `(1. ${move} ${move})`),
  comment,
  fc.constantFrom('$1', '!?', '=', '1...', '(', ')', '{', '*', '\n', '\t'),
);
const movetext = fc.array(item, { maxLength: 12 }).map((items) => items.join(' '));

const block = fc.oneof(
  fc
    .tuple(fc.constantFrom('', ' from="a"', ' from="b"', ' view="black"'), movetext)
    .map(([attributes, text]) => `\`\`\`moves${attributes}\n${text}\n\`\`\``),
  movetext.map((text) => `\`\`\`game\n[Result "1-0"]\n\n${text}\n\`\`\``),
  fc
    .tuple(fc.constantFrom('|', '>'), san, label)
    .map(
      ([style, move, name]) =>
        `\`\`\`exercise at="${name}"\nask: ":mark[e4] ${name}"\nanswer: ${style}\n  1. ${move}\n  ${move}\n\`\`\``,
    ),
  label.map((name) => `\`\`\`diagram at="${name}"\ncaption: ":here[${name}]"\n\`\`\``),
  label.map((name) => `Prose \`1.e4 e5\` :here[${name}] :later[${name}].`),
);

const container = fc.constantFrom(['', ''], ['> ', '> '], ['- ', '  '], ['1. ', '\t']);

const chapter = fc
  .tuple(
    fc.array(fc.tuple(container, block), { maxLength: 6 }),
    fc.constantFrom('\n', '\r\n', '\r'),
  )
  .map(([blocks, end]) =>
    blocks
      .map(([[first = '', others = ''], text]) =>
        text
          .split('\n')
          .map((line, index) => (index === 0 ? first : others) + line)
          .join('\n'),
      )
      .join('\n\n')
      .replaceAll('\n', end),
  );

test('every place of any course lies where its words stand', () => {
  fc.assert(
    fc.property(chapter, chapter, (one, two) => {
      const files = { 'chapters/1.md': one, 'chapters/2.md': two };
      expect(misplaced(courseOf(files), files)).toEqual([]);
    }),
    { numRuns: runs(300) },
  );
});

test('the model survives JSON', () => {
  fc.assert(
    fc.property(chapter, (text) => {
      const course = courseOf(text);
      expect(JSON.parse(JSON.stringify(course))).toEqual(course);
    }),
    { numRuns: runs(100) },
  );
});
