import { toHtml } from 'hast-util-to-html';
import { expect, test } from 'vitest';
import { element } from '../hast.ts';
import { escapeValue, writeHtml, writeInPieces } from './write-html.ts';

test('leaves raw nodes as they are', () => {
  expect(writeHtml([{ type: 'raw', value: '<svg/>' }, element('p', {}, ['R&D'])])).toBe(
    '<svg/><p>R&#x26;D</p>',
  );
});

test('cuts at ids, and leaves their text as HTML has it', () => {
  const tree = [element('p', { id: 'a"b', lang: 'de' }, [element('a', { id: 'c' }, ['d'])])];
  expect(writeInPieces(tree)).toEqual(['<p', 'a&#x22;b', ' lang="de"><a', 'c', '>d</a></p>']);
  const [start, id, rest] = writeInPieces([element('i', { id: 'x' }, [])]);
  expect(`${start} id="${id}"${rest}`).toBe(toHtml(element('i', { id: 'x' }, [])));
});

test('a value is what stands between the quotes of an id', () => {
  expect(escapeValue('a"b')).toBe(writeInPieces([element('i', { id: 'a"b' }, [])])[1]);
});
