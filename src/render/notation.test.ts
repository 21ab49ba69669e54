import { toHtml } from 'hast-util-to-html';
import { expect, test } from 'vitest';
import { stringsFor } from '../strings/index.ts';
import { element, text } from './hast.ts';
import { useFigurines } from './notation.ts';

test('plain words get figurines too, and keep their letters for copying; code keeps its text', () => {
  const tree = element('p', {}, [
    text('nach 3...Sc6, oder '),
    element('code', {}, [text('Sc6')]),
    element('em', {}, [text('Lb5')]),
  ]);
  useFigurines(tree, { style: 'letters', strings: stringsFor('de') });
  expect(tree.children).toHaveLength(3);
  useFigurines(tree, { style: 'figurines', strings: stringsFor('de') });
  const kinds = JSON.stringify(tree).match(/"figurine","\w+"/g);
  expect(kinds).toEqual(['"figurine","knight"', '"figurine","bishop"']);
  expect(JSON.stringify(tree)).toContain('"value":"S"');
});

test('no line ends within a move: what touches a figurine stands in one element with it', () => {
  const tree = element('p', {}, [text('castling, Re1 and the knight (7...Nbd2), then b4')]);
  useFigurines(tree, { style: 'figurines', strings: stringsFor('en') });
  const words = tree.children.map((node) => {
    const shown = toHtml(node).replace(/<[^>]*>/g, '');
    return node.type === 'element' ? `[${shown}]` : shown;
  });
  expect(words.join('')).toBe('castling, [Re1] and the knight [(7...Nbd2),] then b4');
});

test('the English letters may be chosen in any language', () => {
  expect(stringsFor('de', 'english').pieceLetters.knight).toBe('N');
  expect(stringsFor('de', 'letters').pieceLetters.knight).toBe('S');
});
