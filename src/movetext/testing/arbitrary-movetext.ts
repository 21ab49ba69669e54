import fc from 'fast-check';
import { anyString } from '../../../tests/setup/any-string.ts';
import type { PlainComment, PlainLine, PlainMovetext } from '../plain.ts';

/** SAN of the PGN standard, as other programs read it too. */
export const regularMoves = ['e4', 'Nf3', 'exd5', 'O-O', 'O-O-O+', 'R1xe4', 'Qh4e1#', 'e8=Q+'];

/** What else counts as a move before spelling is judged. */
const otherMoves = [
  '0-0',
  '0-0-0#',
  '00',
  'exd6 e.p.',
  'e8Q',
  'e8(Q)',
  'e2-e4',
  '♘f3',
  '--',
  'Z0',
  'Sf3',
];

/** Text of comments: anything, with what is special in movetext more often than by chance. */
const anyText = fc
  .array(
    fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 12 }),
      fc.constantFrom(
        ' ',
        '  ',
        '{',
        ')',
        ';',
        '%',
        '[%clk 0:01:00]',
        '\t',
        'a few words',
        ':mark[e4]',
      ),
    ),
    { maxLength: 24 },
  )
  .map((parts) => parts.join(''));

/** Comments as people write them: words of at most 12 characters, single spaces. */
export const proseText = fc
  .array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 40 })
  .map((words) => words.join(' '));

function arbitraryComment(
  commentText: fc.Arbitrary<string>,
  forms: readonly PlainComment['form'][],
): fc.Arbitrary<PlainComment> {
  return fc
    .record({ form: fc.constantFrom(...forms), text: commentText })
    .map(({ form, text }) => ({
      type: 'comment' as const,
      form,
      text: form === 'brace' ? text.replaceAll('}', '') : text.replace(/[\r\n]/g, ''),
    }));
}

export interface ArbitraryMovetextOptions {
  readonly moves?: readonly string[];
  readonly forms?: readonly PlainComment['form'][];
  readonly text?: fc.Arbitrary<string>;
}

/** Trees of any shape that movetext can hold. */
export function arbitraryMovetext(
  options: ArbitraryMovetextOptions = {},
): fc.Arbitrary<PlainMovetext> {
  const comment = arbitraryComment(options.text ?? anyText, options.forms ?? ['brace', 'line']);
  const result = fc.constantFrom('1-0', '0-1', '1/2-1/2', '*').map((text) => ({ text }));
  const { line } = fc.letrec<{ line: PlainLine; move: PlainLine['moves'][number] }>((tie) => ({
    move: fc.record({
      san: fc
        .constantFrom(...(options.moves ?? [...regularMoves, ...otherMoves]))
        .map((text) => ({ text })),
      glyphs: fc.array(
        fc.integer({ min: 0, max: 255 }).map((nag) => ({ nag })),
        { maxLength: 2 },
      ),
      after: fc.array(
        fc.oneof(
          { depthSize: 'small' },
          comment,
          tie('line').map((variation) => ({ type: 'variation' as const, line: variation })),
        ),
        { maxLength: 3 },
      ),
    }),
    line: fc.record(
      {
        before: fc.array(comment, { maxLength: 2 }),
        moves: fc.array(tie('move'), { minLength: 1, maxLength: 5 }),
        result,
      },
      { requiredKeys: ['before', 'moves'] },
    ),
  }));
  const tag = fc.record({
    name: fc.stringMatching(/^[A-Za-z0-9_]{1,10}$/),
    value: fc.string({ unit: 'grapheme' }).map((value) => value.replace(/[\r\n]/g, ' ')),
  });
  return fc.record({ tags: fc.array(tag, { maxLength: 3 }), line });
}

const fragments = [
  '1. ',
  '1... ',
  '1.',
  '2 ',
  '12…',
  '. ',
  'e4',
  'Nf3',
  'O-O',
  '0-0',
  '0-1',
  '1-0',
  '1/2-1/2',
  '½-½',
  '*',
  '(',
  ')',
  ' ( ',
  ' ) ',
  '{',
  '}',
  '{ words }',
  ';',
  '; words\n',
  '%',
  '\n%x\n',
  '\n',
  '\r\n',
  '\r',
  '\n\n',
  ' ',
  '\u00A0',
  '\t',
  '\uFEFF',
  '!',
  '?',
  '!!',
  '!!!',
  '+',
  '-',
  '#',
  '=',
  '/',
  '+-',
  '±',
  '∞',
  '$',
  '$1',
  '$256',
  'N',
  '=Q',
  '(Q)',
  'e.p.',
  ' e.p.',
  'exd6',
  '--',
  'Z0',
  'words',
  'a ',
  ',',
  '[',
  ']',
  '"',
  '\\',
  '[Event "x"]\n',
  '\n\n[Event "',
  '[Site "a\\"b"]',
  '♘',
  '½',
  '😀',
  '\uD83D',
  'é',
  'Кр',
];

/** Texts that look like movetext gone wrong in every way. */
export const arbitraryText: fc.Arbitrary<string> = fc
  .array(fc.oneof(fc.constantFrom(...fragments), anyString(3)), {
    maxLength: 60,
  })
  .map((parts) => parts.join(''));
