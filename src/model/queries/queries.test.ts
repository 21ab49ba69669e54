import { describe, expect, test } from 'vitest';
import { courseOf } from '../testing/course-of.ts';
import type { Course } from '../types.ts';
import { nameUses } from './name-uses.ts';
import { chapterAt, nodeAt } from './node-at.ts';
import { pathTo } from './path-to.ts';
import { standsAt } from './stands-at.ts';

const text = [
  '```moves',
  '1. d4 d5 2. c4 {:here[gambit] See [the end](pos:end).} ( 2. Nf3 ) e6',
  '```',
  '',
  'So `2.c4 e6` it is: :claim[attacks c4 d5].',
  '',
  '```moves from="gambit"',
  '2... c6 3. Nf3 {:here[end]}',
  '```',
  '',
  '```exercise at="end"',
  'ask: Which move?',
  'answer: Nf6',
  '```',
  '',
].join('\n');

const file = 'chapters/1.md';

/** What stands where the words stand first, a sign within them. */
function at(course: Course, words: string, chapter = text) {
  const there = chapterAt(course, { chapter: file });
  return there && standsAt(there, chapter.indexOf(words) + 1);
}

describe('what stands at a place', () => {
  const course = courseOf(text);
  const sanAt = (words: string) => {
    const found = at(course, words);
    return found?.kind === 'move' ? found.node.move?.san : found?.kind;
  };

  test.each([
    ['d4 d5', 'd4'],
    ['c4 {', 'c4'],
    ['Nf3 )', 'Nf3'],
    ['c6 3', 'c6'],
    ['Nf6', 'Nf6'],
    [':here[gambit]', 'directive'],
    ['[the end]', 'link'],
    ['`2.c4', 'moves-in-text'],
    ['from="gambit"', 'block'],
    ['Which', 'block'],
    ['it is', undefined],
  ])('%s', (words, expected) => {
    expect(sanAt(words)).toBe(expected);
  });

  test('a directive with the position that it speaks of', () => {
    const found = at(course, ':claim');
    const of = found?.kind === 'directive' ? found.of : undefined;
    expect(of && nodeAt(course, of)?.move?.san).toBe('e6');
  });

  test('a move of a block with its reference, one of an exercise without', () => {
    const here = at(course, 'c6 3');
    const ref = here?.kind === 'move' ? here.ref : undefined;
    expect(ref && nodeAt(course, ref)?.move?.san).toBe('c6');
    const asked = at(course, 'Nf6');
    expect(asked?.kind === 'move' && asked.ref).toBeUndefined();
  });

  test('a link to a position holds its label', () => {
    const found = at(course, '[the end]');
    expect(found?.kind === 'link' ? found.link.label : '').toBe('end');
  });
});

describe('the way to a node', () => {
  const sans = (course: Course, name: string) => {
    const ref = course.labels[name]?.ref;
    return ref && pathTo(course, ref).map(({ move }) => move?.san);
  };

  test('goes through the blocks that it starts from', () => {
    expect(sans(courseOf(text), 'end')).toEqual(['d4', 'd5', 'c4', 'c6', 'Nf3']);
  });

  test('ends in blocks that start from each other', () => {
    const circle =
      '```moves from="b"\n1. d4 {:here[a]}\n```\n\n```moves from="a"\n1... d5 {:here[b]}\n```\n';
    expect(sans(courseOf(circle), 'a')).toHaveLength(2);
  });
});

test('the uses of a name, and what uses it', () => {
  const chapter = chapterAt(courseOf(text), { chapter: file });
  const uses = chapter && nameUses(chapter).map(({ name, by }) => `${name} by ${by}`);
  expect(uses?.sort()).toEqual(['end by block', 'end by link', 'gambit by block']);
});
