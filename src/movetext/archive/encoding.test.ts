import { describe, expect, test } from 'vitest';
import { createUtf8Stream, decodeGame, utf16Of } from './encoding.ts';

const game = '[White "Müller, Žofie"]\n\n1. e4 {für 🙂} *\n';
const little = (text: string) => Buffer.from(text, 'utf16le');
const big = (text: string) => little(text).swap16();

describe('UTF-16 is told from all else', () => {
  test.each<[string, Uint8Array, ReturnType<typeof utf16Of>]>([
    ['by its mark, little-endian', little(`\uFEFF${game}`), 'utf-16le'],
    ['by its mark, big-endian', big(`\uFEFF${game}`), 'utf-16be'],
    ['without a mark', little(game), 'utf-16le'],
    ['without a mark, big-endian', big(game), 'utf-16be'],
    ['in Cyrillic', little('---\ntitle: Защита\n---\n\nЭто ход 1. e4 и план.\n'), 'utf-16le'],
    ['a short one', little('1. e4'), 'utf-16le'],
    ['a mark and nothing else', little('\uFEFF'), 'utf-16le'],
    ['UTF-8', Buffer.from(game), undefined],
    ['UTF-8 with a mark', Buffer.from(`\uFEFF${game}`), undefined],
    ['Latin-1', Buffer.from(game, 'latin1'), undefined],
    ['UTF-8 with a zero', Buffer.from(`${game}\0`), undefined],
    ['UTF-32', Buffer.from('fffe0000310000002e000000', 'hex'), undefined],
    [
      'a PNG',
      Buffer.from('89504e470d0a1a0a0000000d4948445200000020000000200800000000', 'hex'),
      undefined,
    ],
    ['nothing', Buffer.from(''), undefined],
  ])('%s', (_, bytes, expected) => {
    expect(utf16Of(bytes)).toBe(expected);
  });
});

test('a game is UTF-8, else Latin-1', () => {
  expect(decodeGame(Buffer.from(`\uFEFF${game}`))).toBe(game);
  expect(decodeGame(Buffer.from('Müller \u0096', 'latin1'))).toBe('Müller –');
});

describe('a file becomes UTF-8 as it comes', () => {
  function passed(bytes: Uint8Array, size: number): string {
    const stream = createUtf8Stream();
    const pieces: Uint8Array[] = [];
    for (let at = 0; at < bytes.length; at += size) {
      pieces.push(stream.push(bytes.subarray(at, at + size)));
    }
    return Buffer.concat([...pieces, stream.end()]).toString('latin1');
  }
  const long = game.repeat(100);

  test.each([1, 3, 1023, 4096, 1_000_000])('in pieces of %i bytes', (size) => {
    const expected = Buffer.from(long).toString('latin1');
    expect(passed(little(`\uFEFF${long}`), size)).toBe(expected);
    expect(passed(big(long), size)).toBe(expected);
    expect(passed(Buffer.from(long), size)).toBe(expected);
    expect(passed(Buffer.from(long, 'latin1'), size)).toBe(
      Buffer.from(long, 'latin1').toString('latin1'),
    );
    expect(passed(little(game), size)).toBe(Buffer.from(game).toString('latin1'));
    expect(passed(Buffer.from(''), size)).toBe('');
  });
});
