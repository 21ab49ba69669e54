import { expect, test } from 'vitest';
import { addressAfter } from '../contract/testing/address-after.ts';
import { courseOf } from '../model/testing/course-of.ts';
import { chapterIds } from './chapter-ids.ts';
import { resolveFragment } from './resolve-fragment.ts';

function chapterOf(text: string) {
  const [chapter] = courseOf(text).chapters;
  if (chapter === undefined) throw new Error('no chapter');
  return chapter;
}

/** The ids of all nodes of all blocks. */
function idsOf(text: string): string[][] {
  const chapter = chapterOf(text);
  const ids = chapterIds(chapter);
  return chapter.blocks.map((block) => block.nodes.map(({ index }) => ids.ofNode(block, index)));
}

test('a move has the address of its position, a named one its name', () => {
  expect(idsOf('```moves\n1. e4 e5 {:here[open]} 2. Nf3\n```')).toEqual([
    [addressAfter(''), addressAfter('e4'), 'open', addressAfter('e4 e5 Nf3')],
  ]);
});

test('where a position stands again, the line that it stands in tells the place', () => {
  const one = '```moves\n1. e4 e5 2. Nf3\n```';
  const two = '```moves\n1. e4 e5 2. Nc3\n```';
  const three = '```moves\n1. e4 c5\n```';
  const [, second] = idsOf(`${one}\n\n${two}`);
  const [, , afterThree] = idsOf(`${one}\n\n${three}\n\n${two}`);
  expect(second?.[1]).toMatch(new RegExp(`^${addressAfter('e4')}\\.[a-z0-9]{4}$`));
  expect(second?.[3]).toBe(addressAfter('e4 e5 Nc3'));
  // What is inserted before it changes nothing.
  expect(afterThree).toEqual(second);
  // Nothing tells two equal lines apart but their order.
  const [, again] = idsOf(`${one}\n\n${one}`);
  const [, , third] = idsOf(`${one}\n\n${one}\n\n${one}`);
  expect(third?.[1]).toBe(`${again?.[1]}-2`);
});

test('a game only illustrates: the lesson has the address, whichever stands first', () => {
  const game = '```game\n[Result "*"]\n\n1. e4 e5 *\n```';
  const [played, taught] = idsOf(`${game}\n\n\`\`\`moves\n1. e4 c5\n\`\`\``);
  expect(taught?.[1]).toBe(addressAfter('e4'));
  expect(played?.[1]).toMatch(/\.[a-z0-9]{4}$/);
  expect(played?.[2]).toBe(addressAfter('e4 e5'));
});

test('diagrams, exercises and patterns are known by what stands on their boards', () => {
  const text =
    '```diagram after="1. e4"\n```\n\n```exercise after="1. e4 e5"\nask: Which?\nanswer: 2. Nf3\n```\n\n' +
    '```pattern\ntitle: A pawn\nwhite: e4\n```';
  const position = addressAfter('e4').slice('at-'.length);
  const chapter = chapterOf(text);
  const [diagram, exercise, pattern] = chapter.blocks.map((block) =>
    chapterIds(chapter).ofNode(block, 0),
  );
  expect(diagram).toBe(`diagram-${position}`);
  expect(exercise).toBe(`exercise-${addressAfter('e4 e5').slice('at-'.length)}`);
  expect(pattern).toBe('pattern-8-8-8-8-4P3-8-8-8');
  // A link to a position that only a diagram shows leads to the diagram.
  expect(resolveFragment(chapter, addressAfter('e4'))).toBe(diagram);
});

test('what follows the # of a link: headings, names, positions, ids of HTML and of earlier editions', () => {
  const chapter = chapterOf(
    '# 1\n\n## Marks\n\n<p id="mine">x</p>\n\nNote[^1]\n\n[^1]: This.\n\n```moves\n1. e4 {:here[first]} e5 2. Nf3\n```',
  );
  const found = (fragment: string) => resolveFragment(chapter, fragment);
  for (const id of ['marks', 'mine', 'first', 'note-fn-1', addressAfter('e4 e5')]) {
    expect(found(id)).toBe(id);
  }
  expect(found(addressAfter('e4'))).toBe('first');
  expect(found('b1-1b-e5')).toBe(addressAfter('e4 e5'));
  expect(found('b1')).toBe(addressAfter(''));
  for (const id of ['1', 'Marks', 'b1-1b-c5', 'b2', addressAfter('d4')])
    expect(found(id)).toBeUndefined();
});

test('a chapter of ten thousand moves gets its ids in steps in proportion to it', () => {
  const steps = (blocks: number) => {
    const text = '```moves\n1. e4 e5 2. Nf3 Nc6\n```\n\n'.repeat(blocks);
    const chapter = chapterOf(text);
    let reads = 0;
    const counted = chapter.blocks.map((block) =>
      Object.defineProperty({ ...block }, 'nodes', {
        get: () => {
          reads += 1;
          return block.nodes;
        },
      }),
    );
    chapterIds({ ...chapter, blocks: counted });
    return reads;
  };
  expect(steps(200)).toBe(2 * steps(100));
});
