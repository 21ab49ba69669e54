import { describe, expect, test } from 'vitest';
import { parseMovetext } from '../parse/parse-movetext.ts';
import type { PlainComment, PlainMovetext } from '../plain.ts';
import { makeMovetext } from './make-movetext.ts';

function rewrite(text: string, options?: Parameters<typeof makeMovetext>[1]): string {
  return makeMovetext(parseMovetext(text), options);
}

function withComment(form: PlainComment['form'], text: string): PlainMovetext {
  const comment = { type: 'comment', form, text } as const;
  const move = { san: { text: 'e4' }, glyphs: [], after: [comment] };
  return { tags: [], line: { before: [], moves: [move, { ...move, after: [] }] } };
}

describe('the export format', () => {
  // The sample game of the PGN standard, section 2.3, written from memory: its text is in export
  // format, so that it must come out as it went in, to the last line break.
  test('gives back the sample game of the standard', () => {
    const sample = `[Event "F/S Return Match"]
[Site "Belgrade, Serbia JUG"]
[Date "1992.11.04"]
[Round "29"]
[White "Fischer, Robert J."]
[Black "Spassky, Boris V."]
[Result "1/2-1/2"]

1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Ba4 Nf6 5. O-O Be7 6. Re1 b5 7. Bb3 d6 8. c3
O-O 9. h3 Nb8 10. d4 Nbd7 11. c4 c6 12. cxb5 axb5 13. Nc3 Bb7 14. Bg5 b4 15.
Nb1 h6 16. Bh4 c5 17. dxe5 Nxe4 18. Bxe7 Qxe7 19. exd6 Qf6 20. Nbd2 Nxd6 21.
Nc4 Nxc4 22. Bxc4 Nb6 23. Ne5 Rae8 24. Bxf7+ Rxf7 25. Nxf7 Rxe1+ 26. Qxe1 Kxf7
27. Qe3 Qg5 28. Qxg5 hxg5 29. b3 Ke6 30. a3 Kd6 31. axb4 cxb4 32. Ra5 Nd5 33.
f3 Bc8 34. Kf2 Bf5 35. Ra7 g6 36. Ra6+ Kc5 37. Ke1 Nf4 38. g3 Nxh3 39. Kd2 Kb5
40. Rd6 Kc5 41. Ra6 Nf2 42. g4 Bd3 43. Re6 1/2-1/2
`;
    expect(parseMovetext(sample).problems).toEqual([]);
    expect(parseMovetext(sample).line.moves).toHaveLength(85);
    expect(rewrite(sample)).toBe(sample);
  });

  test('numbers White, and Black only first or after a comment or variation (8.2.2.2)', () => {
    expect(rewrite('e4 e5 Nf3 {a} Nc6 Bb5 (Bc4 Nf6 (Bc5)) a6 Ba4 ! Nf6')).toBe(
      '1. e4 e5 2. Nf3 {a} 2... Nc6 3. Bb5 (3. Bc4 Nf6 (3... Bc5)) 3... a6 4. Ba4 $1\nNf6\n',
    );
  });

  test('writes suffixes and signs as $n, and a draw as the standard does', () => {
    expect(rewrite('e4!? +- e5 ½-½')).toBe('1. e4 $5 $18 e5 1/2-1/2\n');
  });

  test('escapes quotes and backslashes in tags, and puts a blank line before the moves', () => {
    expect(rewrite('[A "b \\"c\\" \\\\"] e4')).toBe('[A "b \\"c\\" \\\\"]\n\n1. e4\n');
    expect(rewrite('[A "b"]')).toBe('[A "b"]\n');
    expect(rewrite('')).toBe('');
  });

  test('wraps at a given width', () => {
    expect(rewrite('e4 e5 Nf3 {a b} Nc6', { width: 10 })).toBe(
      '1. e4 e5\n2. Nf3 {a\nb} 2...\nNc6\n',
    );
  });
});

describe('numbering starts', () => {
  test.each([
    ['at 1 for White', 'e4 e5', {}, '1. e4 e5\n'],
    ['at the first written number', '7. e4 e5 8. d4', {}, '7. e4 e5 8. d4\n'],
    ['at that of Black', '7...e5 8. d4', {}, '7... e5 8. d4\n'],
    ['as the FEN tag says', '[FEN "8/8/8/8/8/8/8/8 b - - 0 12"] e5 d4', {}, '12... e5 13. d4\n'],
    [
      'as a FEN without counters says',
      '[FEN "8/8/8/8/8/8/8/8 b - -"] e5 d4',
      {},
      '1... e5 2. d4\n',
    ],
    ['as a broken FEN does not say', '[FEN "x y z 0 0 -3"] e5 d4', {}, '1. e5 d4\n'],
    ['as the options say', '7. e4 e5', { number: 3, color: 'black' as const }, '3... e4 4. e5\n'],
  ])('%s', (_, text, options, expected) => {
    expect(rewrite(text, options).replace(/^\[.*\n\n/, '')).toBe(expected);
  });
});

describe('comments', () => {
  test('keep their form, and their text to the character', () => {
    expect(rewrite('{a  b} e4 ; c }  \n e5 {}')).toBe('{a  b} 1. e4 ; c }  \n1... e5 {}\n');
  });

  test('a variation after a ; comment, or one that ends with it, is closed on the next line', () => {
    expect(rewrite('e4 (;a\n d4 ;b\n) e5')).toBe('1. e4 (;a\n1. d4 ;b\n) 1... e5\n');
  });

  test('with a } in braces become ; comments', () => {
    expect(makeMovetext(withComment('brace', 'a } b'))).toBe('1. e4 ;a } b\n1... e4\n');
  });

  test('of several lines after a ; become braces', () => {
    expect(makeMovetext(withComment('line', 'a\nb'))).toBe('1. e4 {a\nb} 1... e4\n');
  });

  test('with both become one ; comment a line', () => {
    expect(makeMovetext(withComment('brace', 'a }\r\nb\rc'))).toBe('1. e4 ;a }\n;b\n;c\n1... e4\n');
  });

  test('are not broken within embedded commands, nor before % and fences of code', () => {
    const text = 'aaaa [%clk 0:00:01] %bb ``` ~~~ `cc` ~d ee';
    expect(makeMovetext(withComment('brace', text), { width: 5 })).toBe(
      '1. e4\n{aaaa\n[%clk 0:00:01] %bb ``` ~~~\n`cc`\n~d\nee}\n1...\ne4\n',
    );
  });

  test('are broken where the next word has no room', () => {
    const text = 'a bb ccc dddd eeeee ffffff ggggggg hh i jj kkk';
    const words = `1. e4 {${text}} 1... e4`.split(' ');
    const widths = Array.from({ length: 40 }, (_, index) => index + 1);
    const lines = widths.map((width) => makeMovetext(withComment('brace', text), { width }));
    const expected = widths.map((width) => {
      const fill = (line: string, word: string) =>
        `${line}${line.length - line.lastIndexOf('\n') + word.length <= width ? ' ' : '\n'}${word}`;
      return `${words.reduce(fill)}\n`;
    });
    expect(lines).toEqual(expected);
  });

  test('of a variation without moves are kept, its parentheses are not', () => {
    const { line } = withComment('brace', 'a');
    const [move] = line.moves;
    const empty = { before: move?.after as PlainComment[], moves: [] };
    const moves = [
      { san: { text: 'e4' }, glyphs: [], after: [{ type: 'variation', line: empty } as const] },
    ];
    expect(makeMovetext({ tags: [], line: { before: [], moves } })).toBe('1. e4 {a}\n');
  });
});

test('glyphs as the signs that are read as the same again', () => {
  const all = Array.from({ length: 256 }, (_, nag) => nag);
  const text = all.map((nag) => `${nag % 2 ? 'e5' : 'e4'} $${nag}`).join(' ');
  const written = makeMovetext(parseMovetext(text), { signs: true });
  expect(written).toContain('e5! ');
  expect(written).toContain('⩲');
  const glyphs = parseMovetext(written).line.moves.map((move) => move.glyphs.map(({ nag }) => nag));
  expect(glyphs).toEqual(all.map((nag) => [nag]));
});
