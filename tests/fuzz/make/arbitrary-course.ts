/** Courses of any shape, made from the grammar of the course language. Many have no errors. */
import fc from 'fast-check';
import { rules } from '../../../src/check/index.ts';
import { isFenFault, type Position, parseFen } from '../../../src/chess/index.ts';
import type { Files } from '../case.ts';
import { legalMovetext } from './arbitrary-moves.ts';
import { fragments, labels, moveWords, squares } from './words.ts';

const fragment = fc.oneof(...fragments.map((list) => fc.constantFrom(...list)));
const label = fc.constantFrom(...labels);
const text = fc.string({ unit: 'grapheme', maxLength: 12 });
const plain = fc.constantFrom(
  'White wins a pawn.',
  'See below.',
  'Why?',
  '*Now* **this**.',
  '`x` & <',
  'a:b',
);
const square = fc.constantFrom(...squares.slice(0, 8));

const directive = fc.oneof(
  label.map((name) => `:here[${name}]`),
  label.map((name) => `[there](pos:${name})`),
  fc.tuple(square, square).map(([from, to]) => `:plan[${from}-${to}] :mark[${from}]`),
  label.map((name) => `:same[${name}]`),
  fc.constantFrom(
    ':end[done]',
    ':option[also]',
    ':judge[2025-11-01 fair]',
    ':later[main]',
    ':claim[not check]',
    ':claim[check]',
  ),
);

const comment = fc
  .array(fc.oneof({ weight: 3, arbitrary: plain }, directive, text, fragment), { maxLength: 3 })
  .map((parts) => parts.join(' ').replaceAll('\n', ' '));

const fens = [
  'r1bqkbnr/pppp1ppp/2n5/4p3/2B1P3/5Q2/PPPP1PPP/RNB1K1NR w KQkq - 0 4',
  '4k3/P7/8/3pP3/8/8/7p/R3K2R w KQ d6 0 9',
  '8/8/8/8/8/5k2/5p2/5K2 w - - 0 60',
  '7k/5Q2/6K1/8/8/8/8/8 b - - 0 1',
];

const startOf = (fen: string): Position => {
  const position = parseFen(fen);
  if (isFenFault(position)) throw new RangeError(fen);
  return position;
};

const movesBlock = fc.oneof(
  { weight: 4, arbitrary: legalMovetext(comment).map((moves) => `\`\`\`moves\n${moves}\n\`\`\``) },
  fc
    .constantFrom(...fens)
    .chain((fen) =>
      legalMovetext(comment, startOf(fen)).map(
        (moves) => `\`\`\`moves fen="${fen}"\n${moves}\n\`\`\``,
      ),
    ),
  fc
    .array(fc.constantFrom(...moveWords), { maxLength: 12 })
    .map((words) => `\`\`\`moves\n${words.join(' ')}\n\`\`\``),
);

const line = legalMovetext(fc.constant('')).map((moves) => moves.replace(/[{(].*/s, '').trim());
const value = fc.oneof(plain, text, fragment).map((words) => JSON.stringify(words));

const otherBlock = fc.oneof(
  fc
    .tuple(line, value, square)
    .map(
      ([moves, caption, mark]) =>
        `\`\`\`diagram after="${moves}"\ncaption: ${caption}\nmark: ${mark}\n\`\`\``,
    ),
  fc.tuple(label, value).map(([name, alt]) => `\`\`\`diagram at="${name}"\nalt: ${alt}\n\`\`\``),
  fc
    .tuple(value, legalMovetext(comment), value)
    .map(
      ([ask, answer, hint]) =>
        `\`\`\`exercise fen="rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1"\nask: ${ask}\nanswer: ${JSON.stringify(answer)}\nhint: ${hint}\n\`\`\``,
    ),
  fc
    .tuple(legalMovetext(comment), text, fc.constantFrom('1-0', '*', '0-1', '1/2-1/2'))
    .map(
      ([moves, name, result]) =>
        `\`\`\`game\n[White ${JSON.stringify(name)}]\n[Result "${result}"]\n\n${moves} ${result}\n\`\`\``,
    ),
  fc
    .tuple(value, square, square)
    .map(
      ([title, white, black]) =>
        `\`\`\`pattern\ntitle: ${title}\nwhite: ${white}\nblack: K${black}\n\`\`\``,
    ),
);

const prose = fc
  .array(fc.oneof({ weight: 3, arbitrary: plain }, text, directive, fragment), {
    minLength: 1,
    maxLength: 5,
  })
  .map((parts) => parts.join(' '));

const container = fc.constantFrom(
  ['', ''],
  ['', ''],
  ['', ''],
  ['> ', '> '],
  ['- ', '  '],
  ['1. ', '   '],
);

const paragraph = fc
  .tuple(
    container,
    fc.oneof({ weight: 3, arbitrary: prose }, { weight: 3, arbitrary: movesBlock }, otherBlock),
  )
  .map(([[first = '', rest = ''], block]) =>
    block
      .split('\n')
      .map((written, index) => (index === 0 ? first : rest) + written)
      .join('\n'),
  );

const chapter = fc
  .tuple(value, fc.array(paragraph, { minLength: 1, maxLength: 6 }))
  .map(
    ([title, parts]) =>
      `---\ntitle: ${title === '""' ? 'One' : title}\n---\n\n${parts.join('\n\n')}\n`,
  );

/** Rules that only an author can satisfy: with them off, more courses are published. */
const lenient = rules
  .filter(({ always }) => !always)
  .map(({ id }) => `  ${id}: off\n`)
  .join('');

const settings = fc
  .record({
    title: value.map((title) => (/^"\s*"$/.test(title) ? 'T' : title)),
    side: fc.constantFrom('white', 'black', 'both'),
    language: fc.constantFrom('en', 'de', 'es', 'ar', 'pt-BR'),
    rest: fc.constantFrom(
      '',
      '',
      'notation: letters\n',
      'site: https://example.org/c\n',
      'author: "A\\"B"\nlicence: x\n',
    ),
    rules: fc.constantFrom(`rules:\n${lenient}`, `rules:\n${lenient}`, ''),
  })
  .map(
    ({ title, side, language, rest, rules }) =>
      `title: ${title}\nside: ${side}\nlanguage: ${language}\n${rest}${rules}`,
  );

export const arbitraryCourse: fc.Arbitrary<Files> = fc
  .record({
    settings,
    chapters: fc.array(chapter, { minLength: 1, maxLength: 3 }),
    game: fc.option(legalMovetext(comment)),
    news: fc.option(prose),
  })
  .map(({ settings, chapters, game, news }) => ({
    'course.yaml': settings,
    ...Object.fromEntries(chapters.map((written, index) => [`chapters/${index + 1}.md`, written])),
    ...(game === null ? {} : { 'games/1.pgn': `[Event "x"]\n\n${game} *\n` }),
    ...(news === null
      ? {}
      : { 'news/1.md': `---\ntitle: News\ndate: 2026-11-25\n---\n\n${news}\n` }),
    'media/dot.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
    'media/a b.png': '',
  }));
