import { describe, expect, test } from 'vitest';
import { applyFixes } from '../diagnostics/index.ts';
import { courseOf } from '../model/testing/course-of.ts';
import {
  addAnswer,
  addLine,
  drawAt,
  EditRefusedError,
  type Edits,
  type NodeInChapter,
  sayAt,
  setGlyph,
  type WrittenChapter,
} from './index.ts';

/** Makes edits at the node of a move in the first block of a chapter; at its start without a move. */
function edit(
  text: string,
  san: string | undefined,
  make: (written: WrittenChapter, at: NodeInChapter) => Edits,
): string {
  const [chapter] = courseOf(text).chapters;
  const block = chapter?.blocks[0];
  if (!chapter || !block) throw new Error('a chapter with a block');
  const node = san ? block.nodes.findIndex(({ written }) => written?.san === san) : 0;
  return applyFixes(text, make({ text, chapter }, { block: block.key, node }));
}

const moves = (text: string) => `\`\`\`moves\n${text}\n\`\`\`\n`;

describe('a line of moves', () => {
  test('goes on where the line ends, before the result and behind what is said there', () => {
    const next = [{ san: 'c5', comment: 'At once.' }, { san: 'e3' }, { san: 'Nf6' }];
    expect(
      edit(moves('1. d4 d5 2. c4 e6 3. Nc3 {Natural.} *'), 'Nc3', (w, at) => addLine(w, at, next)),
    ).toBe(moves('1. d4 d5 2. c4 e6 3. Nc3 {Natural.} 3... c5 {At once.} 4. e3 Nf6 *'));
  });

  test('leaves a sign to its move that stands behind what is said of it', () => {
    const text = moves('1. d4 d5 {Natural.} = 2. c4 e6 {Solid.} ∞');
    expect(edit(text, 'e6', (w, at) => addLine(w, at, [{ san: 'Nc3' }]))).toBe(
      moves('1. d4 d5 {Natural.} = 2. c4 e6 {Solid.} ∞ 3. Nc3'),
    );
    expect(edit(text, 'd4', (w, at) => addLine(w, at, [{ san: 'Nf6' }]))).toBe(
      moves('1. d4 d5 {Natural.} =\n  ( 1... Nf6 )\n2. c4 e6 {Solid.} ∞'),
    );
  });

  test('is a variation where a move stands already, and the next move gets its number', () => {
    const bad = [{ san: 'Bf5', glyphs: [2], comment: 'Leaves b7.' }];
    expect(edit(moves('1. d4 d5 2. c4 e6 3. Nc3'), 'c4', (w, at) => addLine(w, at, bad))).toBe(
      moves('1. d4 d5 2. c4 e6\n  ( 2... Bf5? {Leaves b7.} )\n3. Nc3'),
    );
    const other = [{ san: 'Nf3' }, { san: 'Nf6' }];
    expect(edit(moves('1. d4 d5 2. c4 e6 3. Nc3'), 'd5', (w, at) => addLine(w, at, other))).toBe(
      moves('1. d4 d5 2. c4\n  ( 2. Nf3 Nf6 )\n2... e6 3. Nc3'),
    );
  });

  test('is written as the variations beside it are', () => {
    const line = [{ san: 'Nf6' }];
    expect(
      edit(moves('1.d4 d5 2.c4 e6 (2...c6 {Solid.}) 3.Nc3'), 'c4', (w, at) => addLine(w, at, line)),
    ).toBe(moves('1.d4 d5 2.c4 e6 (2...c6 {Solid.}) ( 2...Nf6 ) 3.Nc3'));
    const deep =
      '1. d4 d5 2. c4 e6\n    ( 2... c6 3. Nf3\n      ( 3. Nc3 )\n    3... Nf6 )\n3. Nc3';
    expect(edit(moves(deep), 'c6', (w, at) => addLine(w, at, [{ san: 'e3' }]))).toBe(
      moves(deep.replace('( 3. Nc3 )', '( 3. Nc3 )\n      ( 3. e3 )')),
    );
    expect(edit(moves(deep), 'Nf6', (w, at) => addLine(w, at, [{ san: 'Nc3' }]))).toBe(
      moves(deep.replace('3... Nf6 )', '3... Nf6 4. Nc3 )')),
    );
  });

  test('keeps the signs of a quotation and the indentation of a list', () => {
    const quoted = '> ```moves\n> 1. d4 d5 2. c4 e6\n> ```\n';
    expect(edit(quoted, 'c4', (w, at) => addLine(w, at, [{ san: 'c6' }]))).toBe(
      '> ```moves\n> 1. d4 d5 2. c4 e6\n>   ( 2... c6 )\n> ```\n',
    );
    const listed = '- ```moves\r\n  1. d4 d5 2. c4 e6\r\n  ```\r\n';
    expect(edit(listed, 'c4', (w, at) => addLine(w, at, [{ san: 'c6' }]))).toBe(
      '- ```moves\r\n  1. d4 d5 2. c4 e6\r\n    ( 2... c6 )\r\n  ```\r\n',
    );
  });

  test('stands behind no comment that goes to the end of its line', () => {
    const text = moves('1. d4 ; the queen’s pawn\n1... d5 2. c4 ; the gambit');
    expect(edit(text, 'c4', (w, at) => addLine(w, at, [{ san: 'e6' }]))).toBe(
      moves('1. d4 ; the queen’s pawn\n1... d5 2. c4 ; the gambit\n2... e6'),
    );
  });

  test('follows what the block has, and refuses what it has whole', () => {
    const text = moves('1. d4 d5 2. c4 e6');
    const line = [{ san: 'd5' }, { san: 'c4' }, { san: 'c6' }];
    expect(edit(text, 'd4', (w, at) => addLine(w, at, line))).toBe(
      moves('1. d4 d5 2. c4 e6\n  ( 2... c6 )'),
    );
    const refused = (san: string, comment?: string) => () =>
      edit(text, 'c4', (w, at) => addLine(w, at, [{ san, comment }]));
    expect(refused('e6')).toThrow('The block has all these moves already');
    expect(refused('e6', 'Solid.')).toThrow('The block has e6 here already');
    expect(refused('e5#')).not.toThrow();
    expect(refused('Nd5')).toThrow(EditRefusedError);
  });
});

describe('what is said of a position', () => {
  const here = { directives: [{ name: 'here', argument: 'slav "The Slav"' }] } as const;

  test('goes to the end of the comment that is there, else into a new one', () => {
    const text = moves('1. d4 d5 2. c4 c6 {Solid.} 3. Nf3');
    expect(edit(text, 'c6', (w, at) => sayAt(w, at, here))).toBe(
      moves('1. d4 d5 2. c4 c6 {Solid. :here[slav "The Slav"]} 3. Nf3'),
    );
    expect(edit(text, 'c4', (w, at) => sayAt(w, at, { comment: 'The gambit.' }))).toBe(
      moves('1. d4 d5 2. c4 {The gambit.} 2... c6 {Solid.} 3. Nf3'),
    );
    expect(edit(text, undefined, (w, at) => sayAt(w, at, { comment: 'We begin.' }))).toBe(
      moves('{We begin.}\n1. d4 d5 2. c4 c6 {Solid.} 3. Nf3'),
    );
  });

  test('breaks out of nothing', () => {
    const comment = 'A } and\n```\n:claim[mate] \\:end[x] \\';
    expect(edit(moves('1. d4'), 'd4', (w, at) => sayAt(w, at, { comment }))).toBe(
      moves('1. d4 {A &#125; and ``` \\:claim[mate] \\:end[x] \\\\}'),
    );
    const argument = 'x] :claim[mate';
    const claim = { directives: [{ name: 'claim', argument }] } as const;
    expect(() => edit(moves('1. d4'), 'd4', (w, at) => sayAt(w, at, claim))).toThrow(
      EditRefusedError,
    );
  });
});

test('a glyph takes the place of the one that says the same kind of thing, or goes', () => {
  const glyph = (text: string, nag: number) =>
    edit(moves(text), 'c6', (w, at) => setGlyph(w, at, nag));
  expect(glyph('1. d4 c6 2. c4', 6)).toBe(moves('1. d4 c6?! 2. c4'));
  expect(glyph('1. d4 c6! ± 2. c4', 6)).toBe(moves('1. d4 c6?! ± 2. c4'));
  expect(glyph('1. d4 c6! ± 2. c4', 10)).toBe(moves('1. d4 c6! = 2. c4'));
  expect(glyph('1. d4 c6 ± 2. c4', 1)).toBe(moves('1. d4 c6! ± 2. c4'));
  expect(glyph('1. d4 c6! ± 2. c4', 16)).toBe(moves('1. d4 c6! 2. c4'));
  expect(glyph('1. d4 c6 2. c4', 146)).toBe(moves('1. d4 c6 $146 2. c4'));
});

test('marks and arrows join those of their kind, and go again', () => {
  const draw = (text: string, kind: 'mark' | 'plan', item: string) =>
    edit(moves(text), 'd5', (w, at) => drawAt(w, at, { kind, item }));
  expect(draw('1. d4 d5 2. c4', 'mark', 'e4')).toBe(moves('1. d4 d5 {:mark[e4]} 2. c4'));
  expect(draw('1. d4 d5 {Held. :mark[e4]}', 'mark', 'c4')).toBe(
    moves('1. d4 d5 {Held. :mark[e4 c4]}'),
  );
  expect(draw('1. d4 d5 {:plan[c7-c6, e7-e6] Held.}', 'plan', 'c7-c6')).toBe(
    moves('1. d4 d5 {:plan[e7-e6] Held.}'),
  );
  expect(draw('1. d4 d5 {:mark[e4]} 2. c4', 'mark', 'e4')).toBe(moves('1. d4 d5 2. c4'));
});

describe('an exercise', () => {
  const exercise = (body: string) =>
    `\`\`\`exercise after="1. d4 d5 2. c4"\nask: What now?\n${body}\n\`\`\`\n`;
  const add = (body: string, key: 'answer' | 'also' | 'wrong', comment?: string) =>
    edit(exercise(body), undefined, (w, { block }) =>
      addAnswer(w, block, key, [{ san: 'c6', comment }]),
    );

  test('gets a line more, in the form that its list has', () => {
    expect(add('answer: e6', 'also')).toBe(exercise('answer: e6\nalso: 2... c6'));
    expect(add('answer: e6\nhint: Solid.', 'answer')).toBe(
      exercise('answer:\n  - e6\n  - 2... c6\nhint: Solid.'),
    );
    expect(add('answer: e6\nwrong:\n- Bf5\n- Nc6 {Not\n  now.}', 'wrong', 'No: it is')).toBe(
      exercise("answer: e6\nwrong:\n- Bf5\n- Nc6 {Not\n  now.}\n- '2... c6 {No: it is}'"),
    );
  });

  test('refuses what it has, and a list that it cannot add to', () => {
    expect(() => add('answer: c6', 'wrong')).toThrow('The exercise has c6 already');
    expect(() => add('answer: >\n  e6', 'answer')).toThrow(
      'in a form that nothing can be added to',
    );
  });
});
