import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyString } from '../../tests/setup/any-string.ts';
import { runs } from '../../tests/setup/runs.ts';
import { buildCourse } from '../model/index.ts';
import { readCourse } from './read-course.ts';

/** Pieces of the course language, sound and broken, to be put together at random. */
const pieces = [
  '---\ntitle: One\n---\n',
  '```moves\n',
  '```moves from="x" view="up"\n',
  '```diagram after="1. e4 (1. d4"\n',
  '```exercise at="x"\nask: a: b\n',
  '```game\n[Result "1-0"]\n',
  '```pattern\nwhite: e4 Zz9\n',
  '\n```\n',
  '1. e4 e5 2. Nf3 ',
  '( 1... c5 ',
  ') ',
  '{:here[x] :mark[z9] :claim[isolated] *a* ',
  '} ',
  ':same[x] :later[] [a](pos:x) `2.Nf3 Nc6`',
  '![p](../../p.png) <script>',
  '> - ',
  '\r\n\t',
  '\u2028😀\uFEFF',
];

const course = (text: string) =>
  buildCourse(
    readCourse({ chapters: [{ path: 'chapters/1.md', text }], games: [], media: [], problems: [] }),
  );

describe('any text can be read', () => {
  const anyText = fc.oneof(
    anyString(400),
    fc.array(fc.constantFrom(...pieces), { maxLength: 25 }).map((list) => list.join('')),
  );

  test('without an exception, and every problem has a place in it', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const { place, message, hint } of course(text).problems) {
          expect(place.start.offset).toBeGreaterThanOrEqual(0);
          expect(place.end.offset).toBeGreaterThanOrEqual(place.start.offset);
          expect(place.end.offset).toBeLessThanOrEqual(text.length);
          expect(message).toMatch(/[.?]$/);
          expect(hint).not.toBe('');
        }
      }),
      { numRuns: runs(400) },
    );
  });

  test('and the model is plain data', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const made = course(text);
        expect(JSON.parse(JSON.stringify(made))).toEqual(
          JSON.parse(JSON.stringify(structuredClone(made))),
        );
      }),
      { numRuns: runs(60) },
    );
  });
});
