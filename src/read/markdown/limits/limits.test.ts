/**
 * What is refused, where and with which words, and that a text within the limits is read as ever. That
 * the work of hostile texts grows no faster than they do is counted in tests/growth/growth.test.ts.
 */
import fc from 'fast-check';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { describe, expect, test } from 'vitest';
import { runs } from '../../../../tests/setup/runs.ts';
import { soundCourses } from '../../../../tests/sound-courses.ts';
import { findFiles } from '../../files/find-files.ts';
import { problemsOf } from '../../testing/read-one.ts';
import { fromMarkdownExtensions, plainExtensions, tables } from '../markdown.ts';
import { limitLines, lineLimits } from './limit-lines.ts';
import { limitSigns, mayExceedSigns, signLimitFromMarkdown, signLimits } from './limit-signs.ts';

/** Texts of one limit: one that is just within, and one beyond, with what is said at which words. */
const cases: Readonly<
  Record<string, { within: string; beyond: string; at: string; says: string }>
> = {
  'brackets of a paragraph': {
    within: `${'[a] '.repeat(150)}\n\n${'[a] '.repeat(150)}`,
    beyond: `One.\n\n${'[a] '.repeat(151)}\n\nTwo.`,
    at: '[a]',
    says: 'From here on this paragraph is not read: it has more than 300 brackets, stars and underscores.',
  },
  'stars of a heading': {
    within: `# ${'*a* '.repeat(150)}`,
    beyond: `# ${'*a* '.repeat(151)}`,
    at: '*a*',
    says: 'From here on this paragraph is not read: it has more than 300 brackets',
  },
  'brackets of a cell': {
    within: `| a |\n| - |\n| ${'[a] '.repeat(150)} |\n| ${'[a] '.repeat(150)} |`,
    beyond: `| a |\n| - |\n| ${'[a] '.repeat(151)} |`,
    at: '[a]',
    says: 'From here on this paragraph is not read',
  },
  'brackets of a comment': {
    within: `\`\`\`moves\n1. e4 {${'[a] '.repeat(150)}} e5 {${'[a] '.repeat(150)}}\n\`\`\``,
    beyond: `\`\`\`moves\n1. e4 {${'[a] '.repeat(151)}} e5\n\`\`\``,
    at: '[a] ',
    says: 'From here on this paragraph is not read',
  },
  'backticks that are not closed': {
    within: Array.from({ length: 50 }, (_, index) => '`'.repeat(index + 1)).join(' a '),
    beyond: Array.from({ length: 51 }, (_, index) => '`'.repeat(index + 1)).join(' a '),
    at: '`'.repeat(51),
    says: 'From here on this paragraph is not read: more than 50 backticks and angle brackets in it are not closed.',
  },
  'HTML that is not closed': {
    within: 'a <!-- '.repeat(50),
    beyond: 'a <!-- '.repeat(51),
    at: '<!-- ',
    says: 'more than 50 backticks and angle brackets',
  },
  'lists on one line': {
    within: '- '.repeat(20),
    beyond: `${'- '.repeat(61)}a`,
    at: `${'- '.repeat(61)}a`,
    says: 'This line could stand in more than 60 quotes and lists, so it is not read.',
  },
  'tags that are left open': {
    within: `${'<div>'.repeat(100)}\n\n${'</div>'.repeat(100)}<br><p>a<li>`,
    beyond: `${'<div>'.repeat(99)}\n\n<div>\n\n<div>`,
    at: '<div>',
    says: 'HTML in this chapter leaves more than 100 tags open.',
  },
  'cells of tables': {
    within: `|${' a |'.repeat(100)}\n|${' - |'.repeat(100)}\n${'a\n'.repeat(999)}`,
    beyond: `|${' a |'.repeat(100)}\n|${' - |'.repeat(100)}\n${'a\n'.repeat(1000)}`,
    at: '| a',
    says: 'The tables of this chapter have more than 100,000 cells; this one is not read.',
  },
};

describe('beyond a limit there is one finding, and none within', () => {
  test.each(Object.entries(cases))('%s', (_, { within, beyond, at, says }) => {
    expect(problemsOf(within)).toEqual([]);
    const [problem = '', ...others] = problemsOf(beyond);
    expect(problem.startsWith(at), problem.slice(0, 80)).toBe(true);
    expect(problem).toContain(`: ${says}`);
    expect(others).toEqual([]);
  });

  // Their limits are of whole chapters, so that texts within them are long.
  test.each([
    ['copied', 'a\n===\n\n'.repeat(15), 'too many underlined headings'],
    ['definitions', '[a]: b\n\n> [^c]: d\n'.repeat(100), 'defines more than 2,000 addresses'],
    ['lookedBack', `> a\n${'b\n'.repeat(40)}`, 'go on with a quote or a list without its sign'],
  ] as const)('%s', (limit, text, says) => {
    expect(limitLines(text, { ...lineLimits, [limit]: 1000 })).toEqual({ text, excess: [] });
    const limited = limitLines(text, { ...lineLimits, [limit]: 100 });
    expect(limited.excess).toMatchObject([{ message: expect.stringContaining(says) }]);
    expect(limited.text.length).toBe(text.length);
    expect(limited.text.replace(/ +(?=\n)/g, '')).not.toBe(text);
  });

  test('formatting that is begun again in each paragraph', () => {
    const text = `${'<b>'.repeat(100)}\n\n${'a\n\n'.repeat(2100)}`;
    expect(problemsOf(text)).toEqual([
      expect.stringContaining('leaves tags open that are begun again in each paragraph'),
    ]);
    expect(problemsOf(text.slice(0, 3000))).toEqual([]);
  });

  // Without tokens for their ends, the tokenizer went on for ever, or threw.
  test.each([
    ['brackets', `${'['.repeat(34)}${']'.repeat(270)}\na`],
    ['lines that end with CR LF', `x ${'[ '.repeat(400)}\r\nb\r\nc`],
    ['what is not closed', `${'<'.repeat(300)}\n${'`'.repeat(7)} z`],
    ['a quote', `> ${'[ '.repeat(400)}\n> b\n\nAfter`],
    ['a list', `- a\n  ${'_b '.repeat(400)}\n  c`],
    ['a comment', `\`\`\`moves\n1. e4 {${'['.repeat(400)}\nb}\n\`\`\``],
  ])('what is beyond may go on for lines: %s', (_, text) => {
    expect(problemsOf(text).join('\n')).toContain('From here on this paragraph is not read');
  });

  test('what is beyond is told once, and the rest of the chapter is read', () => {
    const bad = `${'- '.repeat(70)}a\n`;
    const text = `${bad}\n${bad}\n\`\`\`moves\n1. Ke5\n\`\`\`\n\n:mate\n\n:here\n`;
    expect(problemsOf(text)).toEqual([
      expect.stringContaining(':here: `:here` has no brackets'),
      expect.stringContaining('This line could stand in'),
    ]);
  });

  test('a rule across the page is no list, and a long line of code no quote', () => {
    for (const text of ['* '.repeat(300), '-'.repeat(300), `    ${'- '.repeat(300)}`]) {
      expect(limitLines(text).excess).toEqual([]);
    }
    // Lines end as they do in CommonMark.
    for (const end of ['\n', '\r\n', '\r']) {
      const text = `a${end}${'> '.repeat(70)}b${end}c`;
      const { excess } = limitLines(text);
      expect(excess).toMatchObject([{ position: { start: { line: 2, column: 1 } } }]);
      expect(limitLines(text).text).toBe(`a${end}${' '.repeat(141)}${end}c`);
    }
  });
});

const extensions = [...plainExtensions, tables];
const withLimits = (limits = signLimits) => ({
  extensions: [...extensions, limitSigns(limits)],
  mdastExtensions: [...fromMarkdownExtensions, signLimitFromMarkdown],
});
/** The last extension of the list is the limit. */
const withoutLimits = {
  extensions,
  mdastExtensions: fromMarkdownExtensions.slice(0, -1),
};

describe('within the limits nothing changes', () => {
  test('texts of signs are read as without limits', () => {
    const sign = fc.constantFrom(
      ...['[', ']', '(', ')', '![', '*', '**', '_', '`', '``', '<', '>', '<b>', '</b>', '<!--'],
      ...[
        '\\',
        ':a',
        ':a[',
        '[^1]',
        '\n',
        '\n\n',
        '> ',
        '- ',
        '|',
        '&amp;',
        'a',
        'b c',
        ' ',
        '://x',
      ],
    );
    fc.assert(
      fc.property(fc.array(sign, { maxLength: 40 }), (signs) => {
        const text = signs.join('');
        expect(fromMarkdown(text, withLimits())).toEqual(fromMarkdown(text, withoutLimits));
        expect(limitLines(text)).toEqual({ text, excess: [] });
        const few = { signs: 4, unclosed: 2 };
        if (mayExceedSigns(text, few)) return;
        expect(fromMarkdown(text, withLimits(few))).toEqual(fromMarkdown(text, withoutLimits));
      }),
      { numRuns: runs(300) },
    );
  });

  // A fifth: a course would have to be five times as dense before it met one of them.
  test.each(soundCourses)('$name is not near any of them', async ({ folder }) => {
    const { chapters, news = [] } = await findFiles(folder);
    const fifth = (limits: Readonly<Record<string, number>>) =>
      Object.fromEntries(Object.entries(limits).map(([name, most]) => [name, most / 5])) as never;
    expect(chapters.length).toBeGreaterThan(0);
    for (const { text } of [...chapters, ...news]) {
      expect(limitLines(text, fifth(lineLimits)).excess).toEqual([]);
      expect(fromMarkdown(text, withLimits(fifth(signLimits)))).toEqual(
        fromMarkdown(text, withoutLimits),
      );
    }
  });
});
