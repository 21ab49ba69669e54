import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { blockNames, directiveNames } from '../read/index.ts';
import { encodeTokens } from './answers/tokens.ts';
import { fenceAt } from './complete/fence-at.ts';
import { yamlCursor } from './complete/yaml.ts';
import { applyChanges, layMovetext } from './lay-movetext.ts';
import { chooseEncoding, createPlaces, openText } from './open-text.ts';

describe('laying out movetext', () => {
  const lay = (text: string, more = {}) =>
    applyChanges(
      text,
      layMovetext(text, {
        from: 0,
        to: text.length,
        number: 1,
        color: 'white',
        lineEnd: '\n',
        ...more,
      }),
    );

  test('numbers, spaces, variations on lines of their own', () => {
    expect(lay('1.d4   d5 3 . c4! ( 2.Nf3 Nf6 (2...e6) )\n e6 ; on\nNc3 $14 1-0')).toBe(
      '1. d4 d5 2. c4!\n  ( 2. Nf3 Nf6\n    ( 2... e6 )\n  )\n2... e6 ; on\n3. Nc3 $14 1-0',
    );
  });

  test('comments stay as they are, to the space', () => {
    expect(lay('{a  b} 1.d4 {c\n   d}d5')).toBe('{a  b} 1. d4 {c\n   d} 1... d5');
  });

  test('long lines are broken', () => {
    const line = 'Nf3 Nf6 Ng1 Ng8 '.repeat(12);
    const laid = lay(line);
    expect(Math.max(...laid.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(79);
    expect(lay(laid)).toBe(laid);
  });

  test('what cannot be read in full stays', () => {
    expect(lay('1.d4 (1.e4')).toBe('1.d4 (1.e4');
    expect(lay('1.d4 ??%% d5')).toBe('1.d4 ??%% d5');
  });

  test('Black begins; only what lies within the range', () => {
    expect(lay('2.Nc6  Nf3', { number: 2, color: 'black' })).toBe('2... Nc6 3. Nf3');
    expect(lay('1.d4  d5\n2.c4  e6', { from: 9 })).toBe('1.d4  d5\n2. c4 e6');
  });
});

// LSP 3.17, section "Semantic Tokens", its example: 2,5,3 0,5,4 3,2,7.
test('tokens are counted from each other', () => {
  const token = (
    line: number,
    character: number,
    length: number,
    type: number,
    modifiers: number,
  ) => ({
    line,
    character,
    length,
    type,
    modifiers,
  });
  expect(encodeTokens([token(2, 5, 3, 0, 3), token(2, 10, 4, 1, 0), token(5, 2, 7, 2, 0)])).toEqual(
    [2, 5, 3, 0, 3, 0, 5, 4, 1, 0, 3, 2, 7, 2, 0],
  );
});

describe('positions', () => {
  // LSP 3.17, section "Position": in a𐐀b the b is at 3 in UTF-16, at 5 in UTF-8.
  test.each([
    ['utf-16', 3],
    ['utf-8', 5],
  ] as const)('in %s', (encoding, character) => {
    const places = createPlaces(encoding);
    const text = openText('file:///x', 1, 'x\r\na𐐀b\ry');
    expect(places.toPosition(text, 6)).toEqual({ line: 1, character });
    expect(places.toOffset(text, { line: 1, character })).toBe(6);
    // Past the end is the end of the line; a lone CR ends one.
    expect(places.toOffset(text, { line: 1, character: 99 })).toBe(7);
    expect(places.toPosition(text, 8)).toEqual({ line: 2, character: 0 });
    expect(places.toOffset(text, { line: 99, character: 0 })).toBe(9);
  });

  test('of the encodings that are offered the first that is known', () => {
    expect(chooseEncoding()).toBe('utf-16');
    expect(chooseEncoding(['utf-32', 'utf-8', 'utf-16'])).toBe('utf-8');
    expect(chooseEncoding(['utf-32'])).toBe('utf-16');
  });

  test('several changes at once, each on the result of the one before', () => {
    const places = createPlaces('utf-8');
    const at = (character: number) => ({ line: 0, character });
    const changed = places.change(openText('file:///x', 1, '𐐀b'), 4, [
      { range: { start: at(4), end: at(5) }, text: 'éc' },
      { range: { start: at(6), end: at(7) }, text: 'd' },
    ]);
    expect(changed.document.getText()).toBe('𐐀éd');
    expect(changed.version).toBe(4);
  });
});

test('a block that is half written is found by its text alone', () => {
  const text = 'a\n\n````moves from="x"\n```\n1. e4\n````\nb\n```diagram\nc';
  const at = (words: string) => {
    const found = fenceAt(text, text.indexOf(words) + 1);
    return found && `${found.name} ${found.isOnOpening}`;
  };
  expect(['a', 'from', 'e4', 'b', 'c'].map((words) => at(words === 'c' ? '\nc' : words))).toEqual([
    undefined,
    'moves true',
    'moves false',
    undefined,
    'diagram false',
  ]);
});

test('where a cursor stands in lines of settings', () => {
  const at = (text: string) => yamlCursor(text, text);
  expect(at('title: A\nru')).toMatchObject({ typed: 'ru' });
  expect(at('rules:\n  move-s')).toMatchObject({ under: 'rules', typed: 'move-s' });
  expect(at('rules:\n  move-suffix: o')).toMatchObject({
    key: 'move-suffix',
    under: 'rules',
    typed: 'o',
  });
  expect(at('claim:\n  - isol')).toMatchObject({ key: 'claim', typed: 'isol' });
  expect(at('claim: "isol')).toMatchObject({ key: 'claim', typed: 'isol' });
});

test('the colours of the extension know the words of the language', () => {
  const grammar = (name: string) =>
    readFileSync(
      path.join(import.meta.dirname, `../../editor/syntaxes/${name}.tmLanguage.json`),
      'utf8',
    );
  const directives = /:\(\?:(here[^)]*)\)/.exec(grammar('movetext'))?.[1]?.split('|');
  expect(directives?.sort()).toEqual([...directiveNames].sort());
  const blocks = [...grammar('blocks').matchAll(/\((\w+(?:\|\w+)+)\)\\\\b/g)];
  expect(blocks.flatMap(([, names]) => names?.split('|')).sort()).toEqual([...blockNames].sort());
});
