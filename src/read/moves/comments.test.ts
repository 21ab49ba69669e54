/** A comment is inline Markdown: blocks and HTML mean nothing in it, directives do. */
import { expect, test } from 'vitest';
import { firstComment, problemsOf, readOne } from '../testing/read-one.ts';

const inMoves = (comment: string) => `\`\`\`moves\n1. d4 {${comment}} d5\n\`\`\``;
const comment = (text: string) => firstComment(readOne(inMoves(text)));

test.each([
  ['Plain words.', ['"Plain words."']],
  ['  spaces around  ', ['"spaces around"']],
  [
    '*so* and **more** and `code`',
    ['emphasis("so")', '" and "', 'strong("more")', '" and "', 'code(code)'],
  ],
  ['[text](https://example.org)', ['link("text")']],
  ['[the start](pos:main-line)', ['pos(main-line: "the start")']],
  ['[a *b*](pos:x)', ['pos(x: "a " emphasis("b"))']],
  ['[a](pos:caf%C3%A9)', ['pos(café: "a")']],
  ['1. is no list', ['"1. is no list"']],
  ['- nor this', ['"- nor this"']],
  ['# no heading', ['"# no heading"']],
  ['> no quote', ['"> no quote"']],
  ['    no code', ['"no code"']],
  ['***', ['"***"']],
  ['one\ntwo', ['"one\\ntwo"']],
  ['title\n===', ['"title\\n==="']],
  ['one\n\n*two*', ['"one\\n"', 'emphasis("two")']],
  ['<b>bold</b>', ['"<b>bold</b>"']],
  ['<script>alert(1)</script>', ['"<script>alert(1)</script>"']],
  ['<img src=x onerror=alert(1)>', ['"<img src=x onerror=alert(1)>"']],
  ['&amp; &eacute; \\*', ['"& é *"']],
  ['', []],
])('%j', (text, expected) => {
  expect(comment(text)).toEqual(expected);
});

test.each([
  [':here[main]', [':here(main)']],
  ['so :mark[e5  f4], :plan[f3-e5,e5-g6]', ['"so "', ':mark(e5 f4)', '", "', ':plan(f3-e5,e5-g6)']],
  [':claim[attacks\nc5 d4]', [':claim(attacks c5 d4)']],
  ['*:here[a]*', ['emphasis(:here(a))']],
  ['White:Black, 3:1, 10:30, a:b', ['"White:Black, 3:1, 10:30, a:b"']],
  ['no \\:here[x]', ['"no :here[x]"']],
])('directives in %j', (text, expected) => {
  expect(comment(text)).toEqual(expected);
});

test('a directive over two lines of a quote leaves the quote out', () => {
  const draft = readOne('> ```moves\n> 1. d4 {:claim[attacks\n> e5]}\n> ```');
  expect(firstComment(draft)).toEqual([':claim(attacks e5)']);
  expect(readOne('> :end[one\n> two]').body.children).toMatchObject([
    { children: [{ children: [{ type: 'courseDirective', argument: 'one two' }] }] },
  ]);
});

test.each([
  [':hear[x]', ':hear[x]: There is no directive `:hear[…]`.'],
  [':here[two words]', 'two words: `two words` is no name for a position.'],
  [':mark[e9]', 'e9: `e9` is no square of the board.'],
  [':mark[ e4 x4 x ]', 'x4: `x4` is no square of the board.'],
  [':mark[]', ':mark[]: No square is named here.'],
  [':plan[e4]', 'e4: `e4` is no arrow on the board.'],
  [':threat[e4-e4]', 'e4-e4: `e4-e4` is no arrow on the board.'],
  [':claim[]', ':claim[]: This claim says nothing.'],
  [':end[ ]', ':end[ ]: `:end[]` gives no reason.'],
  [':allow[x]', 'x: `:allow[…]` needs the id of a rule and a reason.'],
  ['[a](pos:)', '[a](pos:): `` is no name for a position.'],
])('%s is told at its place', (text, expected) => {
  expect(problemsOf(inMoves(`Text ${text} more`))).toEqual([expected]);
});

test('in prose a brace behind a directive is told', () => {
  expect(problemsOf('Text :mark[e5]{color=red}.')).toEqual([
    ':mark[e5]{color=red}: `:mark[…]` takes nothing in braces.',
  ]);
});

test.each([
  ['[%clk 0:05:00]', ['"[%clk 0:05:00]"']],
  ['[%csl Gd5] A *pawn*.', ['"[%csl Gd5] A "', 'emphasis("pawn")', '"."']],
  ['100% [so](pos:a) :mark[e4]', ['"100% "', 'pos(a: "so")', '" "', ':mark(e4)']],
])('commands between programs stay text: %s', (text, expected) => {
  expect(comment(text)).toEqual(expected);
  const { problems } = readOne(inMoves(`[%clk 0:05:00] :mark[z9]`));
  expect(problems[0]?.place.start.column).toBe(29);
});
