import { describe, expect, test } from 'vitest';
import { outline, outlineProblems } from '../testing/outline.ts';
import { parseMovetext } from './parse-movetext.ts';

function read(text: string): string {
  const { line, problems } = parseMovetext(text);
  expect(outlineProblems(text, problems)).toEqual([]);
  return outline(line);
}

function readWithProblems(text: string): [outline: string, ...problems: string[]] {
  const { line, problems } = parseMovetext(text);
  return [outline(line), ...outlineProblems(text, problems)];
}

describe('move numbers, in every legal spelling (PGN standard, 8.2.2.1)', () => {
  test.each([
    ['1.e4', '<1,1>e4'],
    ['1. e4', '<1,1>e4'],
    ['1 e4', '<1,0>e4'],
    ['1e4', '<1,0>e4'],
    ['e4', 'e4'],
    ['1... e5', '<1,3>e5'],
    ['1...e5', '<1,3>e5'],
    ['1. ... e5', '<1,4>e5'],
    ['1 ... e5', '<1,3>e5'],
    ['1 . e4', '<1,1>e4'],
    ['1.. e5', '<1,2>e5'],
    ['1…e5', '<1,3>e5'],
    ['1. … e5', '<1,4>e5'],
    ['1.\n...\ne5', '<1,4>e5'],
    ['1.e4 e5 2.Nf3', '<1,1>e4 e5 <2,1>Nf3'],
    ['1. e4 1. ... e5 2. Nf3', '<1,1>e4 <1,4>e5 <2,1>Nf3'],
    ['12.O-O', '<12,1>O-O'],
    ['12.0-0 0-0-0', '<12,1>0-0 0-0-0'],
    ['12 0-0', '<12,0>0-0'],
    ['12 00 000+', '<12,0>00 000+'],
    ['12.00', '<12,1>00'],
    ['1.♘f3', '<1,1>♘f3'],
    ['1. {first} e4', '{first} <1,1>e4'],
    ['1. e4 1... {then} e5', '<1,1>e4{then} <1,3>e5'],
  ])('%j', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test('an absurd number has a value all the same', () => {
    const { line } = parseMovetext(`${'9'.repeat(400)}. e4`);
    expect(line.moves[0]?.number?.value).toBe(Number.MAX_SAFE_INTEGER);
  });
});

describe('moves, however they are spelled', () => {
  test.each([
    'e4',
    'Nf3',
    'Nbd2',
    'R1xf3',
    'Qh4xe1+',
    'exd5',
    'e8=Q',
    'exd8=N#',
    'O-O',
    'O-O-O+',
    'Qh5#',
    'Bb5+',
    '0-0',
    '0-0-0',
    '0-0+',
    '0–0',
    'o-o',
    'OO',
    'e8Q',
    'e8Q+',
    'e8(Q)',
    'e8=(Q)+',
    'e8/Q',
    'exd6 e.p.',
    'exd6e.p.',
    'exd6 e.p.+',
    'exd6+ e.p.',
    'exd6ep',
    'bxa3 ep',
    'e2-e4',
    'e2–e4',
    'Ng1-f3',
    'Ng1xf3',
    'e2e4',
    'e7e8q',
    '♘f3',
    '♘︎f3',
    '♙e4',
    '--',
    'Z0',
    'Sf3',
    'Dxd5',
    'Lb5',
    'Tad1',
    'Cf3',
    'Кf3',
    'Крg1',
    'Фd8',
    'e:d5',
    'N×f3',
    'ed',
    'exd',
    'ed5',
    'Nxe',
    'PxP',
    'P-K4',
    'N-KB3',
    'Qh5++',
    'Qh5†',
    'Ng9',
    'i5',
    'Pe4',
    'Nf3xd4',
  ])('%s', (san) => {
    const text = `1. ${san} d5`;
    const { line, problems } = parseMovetext(text);
    expect(problems).toEqual([]);
    expect(line.moves.map((move) => move.san.text)).toEqual([san, 'd5']);
    expect(line.moves[0]?.san.span).toEqual({ start: 3, end: 3 + san.length });
  });

  test('only a pawn that captures on the third or sixth rank is followed by e.p.', () => {
    expect(readWithProblems('Nf6 e.p.')).toEqual(['Nf6', 'text-unreadable e.p.']);
    expect(readWithProblems('exd6! e.p.')).toEqual(['exd6$1', 'text-unreadable e.p.']);
  });

  test('words are none, and are reported a line at a time', () => {
    expect(readWithProblems('e4 with the idea Nf5 and\nmore e5')).toEqual([
      'e4 Nf5 e5',
      'text-unreadable with the idea',
      'text-unreadable and',
      'text-unreadable more',
    ]);
  });

  test.each([
    ['1st e4', 'e4', '1st'],
    ['e4, e5', 'e4 e5', ','],
    ['e4,e5', 'e4 e5', ','],
    ['1. e4 ...e5', '<1,1>e4 e5', '...'],
    ['1. e4 e5.', '<1,1>e4 e5', '.'],
    ['e8 =Q Kf7', 'e8 Kf7', '=Q'],
    ['Qh5 + Kf8', 'Qh5 Kf8', '+'],
    ['Qh5!+ Kf8', 'Qh5$1 Kf8', '+'],
    ['e4 [1... c5] e5', 'e4 e5', '[1... c5]'],
    ['e4 % e5', 'e4 e5', '%'],
    ['10-0 e4', 'e4', '10-0'],
    ['e4 <> e5', 'e4 e5', '<>'],
    ['E97 e4', 'e4', 'E97'],
    ['e4 😀 e5', 'e4 e5', '😀'],
    ['N e4', 'e4', 'N'],
    ['1. e4 2. N f3', '<1,1>e4 <2,1>f3', 'N'],
  ])('%j: read on behind what is no move', (text, expected, problem) => {
    expect(readWithProblems(text)).toEqual([expected, `text-unreadable ${problem}`]);
  });

  test('the message fits what stands there', () => {
    const messages = [
      'e4 }',
      'e4 .',
      'e4 +',
      'e8 =Q',
      'e4 N3 e.p.',
      'e4 ,',
      'e4 %',
      'e4 [a]',
      'e4 why',
    ].map((text) => parseMovetext(text).problems.map(({ message }) => message));
    expect(messages).toEqual([
      ['This } closes no comment: the first } after a { ends it, and braces do not nest.'],
      ['Periods stand here without a move number.'],
      ['The sign “+” stands apart from its move.'],
      ['“=Q” stands apart from its move.'],
      ['“e.p.” stands apart from the capture that it belongs to.'],
      ['A comma stands between the moves.'],
      ['A % stands here that is not at the start of a line.'],
      ['“[a]” is neither a move nor a tag.'],
      ['“why” cannot be a move.'],
    ]);
  });

  test('a message repeats at most forty characters of a text', () => {
    const [problem] = parseMovetext(`e4 ${'word '.repeat(30)}`).problems;
    expect(problem?.message).toBe(`“${'word '.repeat(8)}…” cannot be a move.`);
  });
});

describe('results (8.2.6)', () => {
  test.each([
    ['1-0', '1-0'],
    ['0-1', '0-1'],
    ['1/2-1/2', '1/2-1/2'],
    ['½-½', '1/2-1/2'],
    ['1/2', '1/2-1/2'],
    ['1–0', '1-0'],
    ['*', '*'],
  ])('%s', (text, result) => {
    const { line, problems } = parseMovetext(`1. e4 ${text}`);
    expect(problems).toEqual([]);
    expect(line.result).toEqual({ text: result, span: { start: 6, end: 6 + text.length } });
  });

  test('are neither castling with zeros nor numbers', () => {
    expect(read('10.0-0 0-0-0 0-1')).toBe('<10,1>0-0 0-0-0 0-1');
    expect(read('1. e4 e5 1-0')).toBe('<1,1>e4 e5 1-0');
    expect(read('e4*')).toBe('e4 *');
    expect(read('Qh5+1-0')).toBe('Qh5+ 1-0');
  });

  test('end the moves: what follows is left out and reported once, comments are kept', () => {
    expect(readWithProblems('1. e4 1-0 {resigns} e5 (2. d4 {a} (b)) Nf3 $1 *')).toEqual([
      '<1,1>e4{resigns} 1-0',
      'text-after-result e5',
    ]);
    expect(readWithProblems('1. e4 (1. d4 * d5) e5')).toEqual([
      '<1,1>e4(<1,1>d4 *) e5',
      'text-after-result d5',
    ]);
  });
});

describe('comments (5)', () => {
  test('stand anywhere', () => {
    expect(
      read('{a}{b} 1. {c} e4 {d} ;e\n (1. d4 {f}) {g} 1... {h} e5 {i} ( {j} 1... c5) * {k}'),
    ).toBe('{a}{b}{c} <1,1>e4{d};e;(<1,1>d4{f}){g}{h} <1,3>e5{i}({j} <1,3>c5){k} *');
  });

  test('; runs to the end of the line, whatever ends it, and braces over lines', () => {
    expect(read('e4 ; a {b\r\ne5 ;c\rd4 {x\r\n;y} d5;z')).toBe('e4; a {b; e5;c; d4{x\r\n;y} d5;z;');
  });

  test('do not nest: the first } ends one', () => {
    expect(readWithProblems('e4 {a {b} c} e5')).toEqual(['e4{a {b} e5', 'text-unreadable c}']);
    expect(parseMovetext('e4 {a {b} c} e5').problems[0]?.message).toBe(
      'This } closes no comment: the first } after a { ends it, and braces do not nest.',
    );
  });

  test('one that is never closed is reported at its { and kept', () => {
    expect(readWithProblems('e4 {all the rest e5')).toEqual([
      'e4{all the rest e5}',
      'comment-unclosed {',
    ]);
  });

  test('have the place of their text and that with its delimiters', () => {
    const [brace, line] = parseMovetext('e4 {a b} ;c\n').line.moves[0]?.after ?? [];
    expect(brace).toEqual({
      type: 'comment',
      form: 'brace',
      text: 'a b',
      span: { start: 4, end: 7 },
      outer: { start: 3, end: 8 },
    });
    expect(line).toEqual({
      type: 'comment',
      form: 'line',
      text: 'c',
      span: { start: 10, end: 11 },
      outer: { start: 9, end: 11 },
    });
  });

  test('embedded commands are kept as they stand', () => {
    expect(read('e4 {[%clk 0:05:00] a}')).toBe('e4{[%clk 0:05:00] a}');
  });
});

describe('escape lines (6)', () => {
  test('% in column 1 hides the line', () => {
    expect(read('%first\ne4\n% e5 (\r\n%\rd5')).toBe('e4 d5');
    expect(read('\uFEFF%first\ne4')).toBe('e4');
    expect(read('e4 {a\n% b} e5')).toBe('e4{a\n% b} e5');
  });
});

describe('spaces', () => {
  test.each(['\r\n', '\r', '\n', '\t', '\u00A0', '\u202F', '\u200B', '\v', '  '])('%j', (space) => {
    expect(read(`\uFEFF1.${space}e4${space}e5${space}*${space}`)).toBe('<1,1>e4 e5 *');
  });
});

describe('glyphs (8.2.3.8, 8.2.4)', () => {
  test.each([
    ['e4! e5? d4!! d5?? c4!? c5?!', 'e4$1 e5$2 d4$3 d5$4 c4$5 c5$6'],
    ['e4 ! e5 ?!', 'e4$1 e5$6'],
    ['e4‼ e5⁇ d4⁉ d5⁈', 'e4$3 e5$4 d4$5 d5$6'],
    ['e4 $0 $14 $255 e5$7', 'e4$0$14$255 e5$7'],
    ['e4! $14 ± e5', 'e4$1$14$16 e5'],
    ['e4 {a} $1 (d4) ! e5', 'e4$1$1{a}(d4) e5'],
    ['Bb5 N a6N d6 N! 1-0', 'Bb5$146 a6N d6 1-0'],
  ])('%j', (text, expected) => {
    const [line] = readWithProblems(text);
    expect(line).toBe(expected);
  });

  test('have their text and place', () => {
    expect(parseMovetext('Nf3! $14').line.moves[0]?.glyphs).toEqual([
      { nag: 1, text: '!', span: { start: 3, end: 4 } },
      { nag: 14, text: '$14', span: { start: 5, end: 8 } },
    ]);
  });

  // The numbers: PGN standard, section 10. The signs: common practice, no source.
  test.each([
    ['+-', 18],
    ['+−', 18],
    ['+–', 18],
    ['±', 16],
    ['+/-', 16],
    ['⩲', 14],
    ['+=', 14],
    ['+/=', 14],
    ['=', 10],
    ['⩱', 15],
    ['=+', 15],
    ['=/+', 15],
    ['∓', 17],
    ['-/+', 17],
    ['-+', 19],
    ['−+', 19],
    ['∞', 13],
    ['□', 7],
    ['⨀', 22],
    ['⊙', 22],
    ['○', 26],
    ['⟳', 32],
    ['↑', 36],
    ['→', 40],
    ['=∞', 44],
    ['=/∞', 44],
    ['⯹', 44],
    ['⇆', 132],
    ['⇄', 132],
    ['⊕', 138],
    ['⨁', 138],
  ])('the sign %s is $%i, attached or not', (sign, nag) => {
    expect(read(`Nf3 ${sign} Nf6`)).toBe(`Nf3$${nag} Nf6`);
    expect(read(`Nf3${sign} Nf6`)).toBe(`Nf3$${nag} Nf6`);
    expect(read(`Qh5+ ${sign} Kf8`)).toBe(`Qh5+$${nag} Kf8`);
    expect(read(`Qh5#!${sign} *`)).toBe(`Qh5#$1$${nag} *`);
  });

  test.each([
    // A sign is read as long as possible, and the check sign only where it is needed.
    ['Nf3+-', 'Nf3$18'],
    ['Qh5+ -+', 'Qh5+$19'],
    ['Qh5+-+', 'Qh5+$19'],
    ['Qh5++-', 'Qh5+$18'],
    ['Qh5+=', 'Qh5$14'],
    ['Qh5+ =', 'Qh5+$10'],
    ['Qh5+=+', 'Qh5+$15'],
    ['Qh5+/-', 'Qh5$16'],
    ['Qh5++/-', 'Qh5+$16'],
    ['Qh5+-/+', 'Qh5+$17'],
    ['Qh5++', 'Qh5++'],
    ['Qh5+!', 'Qh5+$1'],
    ['Qh5+-!', 'Qh5$18$1'],
    ['e8=Q+', 'e8=Q+'],
    ['e8=Q=', 'e8=Q$10'],
    ['e8=', 'e8$10'],
    ['Be7=8.O-O', 'Be7$10 <8,1>O-O'],
  ])('a + may be a check or begin a sign: %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test.each([
    ['e4!!! e5', 'e4 e5', 'glyph-unreadable !!!'],
    ['e4?!? e5', 'e4 e5', 'glyph-unreadable ?!?'],
    ['e4! ? e5', 'e4$1 e5', 'glyph-unreadable ?'],
    ['e4 $256 e5', 'e4 e5', 'glyph-unreadable $256'],
    ['e4 $ 1 e5', 'e4 <1,0>e5', 'glyph-unreadable $'],
    ['$1 e4', 'e4', 'glyph-misplaced $1'],
    ['e4 (= d4)', 'e4(d4)', 'glyph-misplaced ='],
    ['e4 2. ! e5', 'e4 <2,1>e5', 'glyph-misplaced !'],
  ])('%j', (text, expected, problem) => {
    expect(readWithProblems(text)).toEqual([expected, problem]);
  });
});

describe('variations (8.2.5)', () => {
  test('nest and follow one another', () => {
    expect(read('1. e4 e5 (1... c5 2. Nf3 (2. c3) d6) (1... e6) 2. Nf3')).toBe(
      '<1,1>e4 e5(<1,3>c5 <2,1>Nf3(<2,1>c3) d6)(<1,3>e6) <2,1>Nf3',
    );
  });

  test('have places with and without parentheses', () => {
    const [variation] = parseMovetext('e4 ( d4 ) e5').line.moves[0]?.after ?? [];
    expect(variation?.span).toEqual({ start: 3, end: 9 });
    expect(variation).toHaveProperty('line.span', { start: 4, end: 8 });
  });

  test.each([
    ['(1. d4 d5) 1. e4', ['<1,1>e4', 'variation-without-move (']],
    ['1. e4 ((1. d4) 1. c4) e5', ['<1,1>e4(<1,1>c4) e5', 'variation-without-move (']],
    [
      '((((',
      [
        '',
        'variation-without-move (',
        'variation-unclosed (',
        'variation-unclosed (',
        'variation-unclosed (',
        'variation-unclosed (',
      ],
    ],
    ['1. e4 ( ) e5', ['<1,1>e4 e5', 'variation-empty ( )']],
    ['1. e4 ({a}) e5', ['<1,1>e4{a} e5', 'variation-empty ({a})']],
    ['1. e4 ) e5', ['<1,1>e4 e5', 'variation-unopened )']],
    [
      '1. e4 (1. d4 (1. c4',
      ['<1,1>e4(<1,1>d4(<1,1>c4))', 'variation-unclosed (', 'variation-unclosed ('],
    ],
    ['1. e4 (1. d4 d5 1-0', ['<1,1>e4(<1,1>d4 d5) 1-0', 'variation-unclosed (']],
    [
      '1. e4 (1. d4 {d5) e5',
      ['<1,1>e4(<1,1>d4{d5) e5})', 'variation-unclosed (', 'comment-unclosed {'],
    ],
  ])('%j', (text, expected) => {
    expect(readWithProblems(text)).toEqual(expected);
  });

  test('the problem of one left open stands at its (, and says what to do', () => {
    expect(parseMovetext('e4 (d4').problems).toEqual([
      {
        kind: 'variation-unclosed',
        span: { start: 3, end: 4 },
        message: 'This variation is opened here and never closed.',
        hint: 'Put ) after its last move.',
      },
    ]);
  });
});

describe('numbers without a move', () => {
  test.each([
    ['1. e4 e5 2.', ['<1,1>e4 e5', 'number-without-move 2.']],
    ['1. 2. e4', ['<2,1>e4', 'number-without-move 1.']],
    ['1. e4 2. (1. d4)', ['<1,1>e4(<1,1>d4)', 'number-without-move 2.']],
    ['1. e4 (1. d4 2.) e5', ['<1,1>e4(<1,1>d4) e5', 'number-without-move 2.']],
    ['1. e4 2... *', ['<1,1>e4 *', 'number-without-move 2...']],
  ])('%j', (text, expected) => {
    expect(readWithProblems(text)).toEqual(expected);
  });
});

describe('tags (8.1.1)', () => {
  test('of a pasted game, with escapes, stand before the moves', () => {
    const text =
      '{top}\n[Event "A \\"big\\" one"] [Site "C:\\\\x"]\n[ White"O\'Neil; {x}" ]\n\n1. e4 *';
    const { tags, line, problems } = parseMovetext(text);
    expect(problems).toEqual([]);
    expect(tags.map(({ name, value }) => [name, value])).toEqual([
      ['Event', 'A "big" one'],
      ['Site', 'C:\\x'],
      ['White', "O'Neil; {x}"],
    ]);
    expect(tags.map(({ valueSpan }) => text.slice(valueSpan.start, valueSpan.end))).toEqual([
      'A \\"big\\" one',
      'C:\\\\x',
      "O'Neil; {x}",
    ]);
    expect(outline(line)).toBe('{top} <1,1>e4 *');
  });

  test.each([
    ['[Event "The "Big" Open"]\ne4', 'The "Big" Open', '[Event "The "Big" Open"]'],
    ['[Event "open]\ne4', 'open', '[Event "open]'],
    ['[Event "open"\ne4', 'open', '[Event "open"'],
    ['[Event "', '', '[Event "'],
  ])('%j is broken; its value is what was probably meant', (text, value, place) => {
    const { tags, problems } = parseMovetext(text);
    expect(tags.map((tag) => tag.value)).toEqual([value]);
    expect(outlineProblems(text, problems)).toEqual([`tag-unreadable ${place}`]);
  });

  test('a bracket before the moves that is no tag pair', () => {
    expect(readWithProblems('[Event]\ne4')).toEqual(['e4', 'tag-unreadable [Event]']);
  });

  test('after a move they are left out and reported together', () => {
    expect(readWithProblems('e4 [A "b"]\n[C "d"] e5')).toEqual([
      'e4 e5',
      'tag-misplaced [A "b"]\n[C "d"]',
    ]);
  });
});

describe('the main line', () => {
  test.each([
    ['', 0, 0],
    ['  \n', 3, 3],
    ['  e4 e5 \n', 2, 7],
    ['[A "b"]\n\n{c} e4 *\n', 9, 17],
  ])('%j reaches from %i to %i', (text, start, end) => {
    expect(parseMovetext(text).line.span).toEqual({ start, end });
  });
});

describe('a word that is nearly a move', () => {
  test.each([
    ['1. e4 e5 2. Rel! Nf6 3. d4', ['e4', 'e5', 'Rel', 'Nf6', 'd4'], []],
    ['1. e4 Nc 2. d4', ['e4', 'Nc', 'd4'], []],
    ['1. Nf33 e5', ['Nf33', 'e5'], []],
    ['1. el e5', ['el', 'e5'], []],
    ['1. e4 el e5', ['e4', 'e5'], ['“el” cannot be a move.']],
    ['1. e4 e5 2. Be careful Nf6', ['e4', 'e5', 'Nf6'], ['“Be careful” cannot be a move.']],
    ['Rel', ['Rel'], []],
    [
      '10. e4 e5 1O. d4',
      ['e4', 'e5', 'd4'],
      ['“1O.” has a letter where a digit of the move number should stand.'],
    ],
  ])('%s', (text, sans, told) => {
    const { line, problems } = parseMovetext(text);
    expect(line.moves.map(({ san }) => san.text)).toEqual(sans);
    expect(problems.map(({ message }) => message)).toEqual(told);
  });
});
