import type { Parent, RootContent } from 'mdast';
import { describe, expect, test } from 'vitest';
import { walkText } from '../../model/walk-text.ts';
import { readChapter } from '../read-chapter.ts';
import { readCourse } from '../read-course.ts';
import { problemsOf, readOne, shape } from '../testing/read-one.ts';

function paragraph(text: string, media: readonly string[] = []): string[] {
  const [first] = readOne(text, media).body.children as (RootContent & Partial<Parent>)[];
  return shape(first?.children ?? []);
}

test.each([
  ['ratio 3:1, White:Black', ['"ratio 3:1, White:Black"']],
  ['a:b[c', ['"a:b[c"']],
  ['::here[x] and :::here', ['"::here[x] and :::here"']],
  ['See [it](pos:main).', ['"See "', 'pos(main: "it")', '"."']],
  ['<pos:main>', ['pos(main: "pos:main")']],
])('%s', (text, expected) => {
  expect(paragraph(text)).toEqual(expected);
});

describe('links by reference', () => {
  test.each(['[text][x]', '[x][]', '[X]'])('%s', (link) => {
    const text = `${link}\n\n[x]: pos:main`;
    expect(paragraph(text)[0]).toMatch(/^pos\(main: /);
    expect(readOne(text).body.children).toHaveLength(1);
  });

  test('the first of two definitions counts, also in a quote', () => {
    expect(paragraph('[a]\n\n> [a]: pos:one\n\n[a]: pos:two')).toEqual(['pos(one: "a")']);
  });

  test('other definitions stay', () => {
    expect(
      readOne('[a]\n\n[a]: https://example.org').body.children.map(({ type }) => type),
    ).toEqual(['paragraph', 'definition']);
  });
});

test.each([
  ['[main](pos:main "pos:main")', 'main'],
  ['[](< pos:main >)', undefined],
  ['[a [main](x)](pos:main)', undefined],
  ['[*main*]( <pos:main> )', 'main'],
  ['<pos:main>', 'main'],
  ['[main]\n\n[main]: pos:main', '[main]'],
  ['[x](pos:m&#97;in)', '[x](pos:m&#97;in)'],
  ['> [two\n> lines](pos:main)', 'main'],
])('the name in %j has a range of its own', (text, expected) => {
  let found: string | undefined;
  walkText(readOne(text).body.children, (node) => {
    if (node.type !== 'positionLink') return;
    found = text.slice(node.labelRange.start.offset, node.labelRange.end.offset);
  });
  expect(found).toBe(expected);
});

describe('moves in inline code', () => {
  test.each([
    ['`7...Be7`', ['moves(7...Be7)']],
    ['`7.Bg2`', ['moves(7.Bg2)']],
    ['`7. Bg2 Be7 8. O-O`', ['moves(7. Bg2 | Be7 | 8. O-O)']],
    ['`12…Nxd4+!`', ['moves(12…Nxd4+!)']],
    ['`1.e8=Q#`', ['moves(1.e8=Q#)']],
    ['`0-0`', ['code(0-0)']],
    ['`Bg2`', ['code(Bg2)']],
    ['`1.5 pawns`', ['code(1.5 pawns)']],
    ['`3.14`', ['code(3.14)']],
    ['`7.Bg2 (7.Be2)`', ['code(7.Bg2 (7.Be2))']],
    ['`7.`', ['code(7.)']],
  ])('%s', (text, expected) => {
    expect(paragraph(text)).toEqual(expected);
  });

  test('are counted on from the first', () => {
    const [{ children }] = readOne('`7...Be7 8.O-O O-O`').body.children as [Parent];
    const [node] = children;
    expect(node?.type === 'proseMoves' && node.moves).toMatchObject([
      { san: 'Be7', number: 7, color: 'black' },
      { san: 'O-O', number: 8, color: 'white' },
      { san: 'O-O', number: 8, color: 'black' },
    ]);
  });
});

describe('pictures', () => {
  const media = ['media/a.png', 'media/deep/b c.png'];

  test.each([
    ['![x](media/a.png)', 'media/a.png'],
    ['![x](../media/a.png)', 'media/a.png'],
    ['![x](../media/./a.png "Title")', 'media/a.png'],
    ['![x](<../media/deep/b c.png>)', 'media/deep/b c.png'],
    ['![x](media/deep/b%20c.png)', 'media/deep/b c.png'],
    ['![x][p]\n\n[p]: media/a.png', 'media/a.png'],
    ['![p]\n\n[p]: <media/deep/b c.png>', 'media/deep/b c.png'],
  ])('%s', (text, path) => {
    expect(paragraph(text, media)).toEqual([`image(${path})`]);
    expect(readOne(text, media).media).toEqual([path]);
  });

  test.each([
    ['../../x.png', 'The picture ../../x.png lies outside the course folder.'],
    ['/etc/x.png', 'The picture /etc/x.png lies outside the course folder.'],
    ['%2e%2e/%2E%2E/x.png', 'The picture %2e%2e/%2E%2E/x.png lies outside the course folder.'],
    ['..\\\\..\\\\x.png', 'The picture ..\\..\\x.png lies outside the course folder.'],
    [
      'media/../course.yaml',
      'There is no picture media/../course.yaml in the media/ folder of the course.',
    ],
    [
      'https://a.example/x.png',
      'The picture https://a.example/x.png would be fetched from another site.',
    ],
    ['//a.example/x.png', 'The picture //a.example/x.png would be fetched from another site.'],
    ['media/b.png', 'There is no picture media/b.png in the media/ folder of the course.'],
    ['%', 'There is no picture % in the media/ folder of the course.'],
  ])('%s is refused', (url, message) => {
    // An escape stands for something else than itself, so the whole picture is the place.
    const place = url.includes('\\') ? `![x](${url})` : url;
    expect(problemsOf(`![x](${url})`, media)).toEqual([`${place}: ${message}`]);
    expect(problemsOf(`![x][r]\n\n[r]: ${url}`, media)).toEqual([`![x][r]: ${message}`]);
  });
});

test('text that is nested too deep is told once', () => {
  expect(problemsOf(`${'**'.repeat(500)}x${'**'.repeat(500)}`)).toEqual([
    expect.stringContaining('This text is nested more than 50 levels deep.'),
  ]);
  expect(problemsOf(`${'>'.repeat(3000)} x`)).toEqual([
    expect.stringContaining('This line could stand in more than 60 quotes and lists'),
  ]);
  expect(problemsOf(`${'>'.repeat(40)} x`)).toEqual([]);
});

describe('what is almost of the course language, and would be shown as text', () => {
  test.each([
    ['So :end', ':end: `:end` has no brackets, so it is only a word.'],
    ['So :claim [mate]', ':claim: `:claim` has no brackets, so it is only a word.'],
    ['::claim[mate]', '::claim[: `:claim[…]` has more than one colon here, so it is only text.'],
    ['*:::here[x]*', ':::here[: `:here[…]` has more than one colon here, so it is only text.'],
    ['[text](pos: x)', '](pos:: This cannot be read as a link, so it is only text.'],
    ['[text]( pos:x', ']( pos: This cannot be read as a link, so it is only text.'],
  ])('%s', (text, expected) => {
    expect(problemsOf(text)).toEqual([expected]);
    const comment = `\`\`\`moves\n1. e4 {${text}} e5\n\`\`\``;
    expect(problemsOf(comment)).toHaveLength(1);
  });

  test.each(['White:here', 'at 10:30', 'a \\:mark', '`::claim[mate]`', 'end: here'])(
    '%s is not',
    (text) => {
      expect(problemsOf(text)).toEqual([]);
    },
  );
});

describe('files of media/', () => {
  const active = { message: 'It has a script.', hint: 'Take it out.' };
  const read = (text: string) =>
    readChapter(
      { path: 'chapters/1.md', text },
      {
        media: new Set(['media/a.png', 'media/a.shtml', 'media/b.svg', 'media/b c.pdf']),
        unfit: new Map([['media/b.svg', active]]),
        chapters: new Set(),
        frontMatter: 'optional',
      },
    );
  const told = (text: string) =>
    read(text).problems.map(
      ({ rule, place, message }) =>
        `${rule} ${text.slice(place.start.offset, place.end.offset)}: ${message}`,
    );

  test.each([
    ['![x](media/b.svg)', '![x](media/b.svg)', 'It has a script.'],
    ['[x](../media/b.svg)', '[x](../media/b.svg)', 'It has a script.'],
    ['![x][y]\n\n[y]: media/b.svg', '![x][y]', 'It has a script.'],
    ['```moves\n1. e4 {![x](media/b.svg)}\n```', '![x](media/b.svg)', 'It has a script.'],
    ['<img src="media/b.svg">', 'src="media/b.svg"', 'It has a script.'],
    ['a <a href="media/b.svg">b</a>', 'href="media/b.svg"', 'It has a script.'],
    ['[x](media/a.shtml)', '[x](media/a.shtml)', expect.stringContaining('end with .shtml')],
  ])('%s is not published', (text, stretch, message) => {
    expect(read(text).problems).toMatchObject([{ rule: 'media-unfit', message }]);
    expect(told(text)[0]).toContain(`media-unfit ${stretch}: `);
    expect(read(text).media).toEqual([]);
  });

  test.each([
    ['<img src="media/a.png" width="90">', ['media/a.png']],
    ['one <img alt="" SRC="media/a.png"> two', ['media/a.png']],
    [
      '<p><a href="media/b%20c.pdf">x</a>\n<img src="media/a.png"></p>',
      ['media/a.png', 'media/b c.pdf'],
    ],
    ['<a href="https://example.org/a.png">x</a> <a href="#x">x</a>', []],
  ])('HTML takes its files along: %s', (text, media) => {
    expect(told(text)).toEqual([]);
    expect(read(text).media).toEqual(media);
  });

  test.each([
    ['<img src="https://example.org/a.png">', 'would be fetched from another site'],
    ['<img src="data:image/gif;base64,AAAA">', 'stands in its address'],
    ['![x](data:image/gif;base64,AAAA)', 'stands in its address'],
    ['<img src="media/z.png">', 'There is no picture media/z.png'],
  ])('a picture that no page could show is told: %s', (text, message) => {
    expect(told(text)).toEqual([expect.stringContaining(message)]);
  });
});

describe('links to files of the course', () => {
  const course = (text: string) =>
    readCourse(
      {
        chapters: [
          { path: 'chapters/1.md', text },
          { path: 'chapters/02-a b.md', text: '' },
        ],
        games: [],
        media: ['media/sheet.pdf'],
        problems: [],
      },
      { frontMatter: 'optional' },
    );
  const problems = (text: string) => course(text).chapters[0]?.problems;

  test.each([
    ['[x](1.md)', 'chapters/1.md'],
    ['[x](02-a%20b.md#plans)', 'chapters/02-a%20b.md#plans'],
    ['[x](<chapters/02-a b.md>)', 'chapters/02-a%20b.md'],
    ['[x][y]\n\n[y]: ./1.md', 'chapters/1.md'],
    ['[x](../media/sheet.pdf)', 'media/sheet.pdf'],
    ['[x](#plans)', '#plans'],
    ['[x](positions.html)', 'positions.html'],
    ['[x](https://example.org/a.md)', 'https://example.org/a.md'],
  ])('%s', (text, url) => {
    const [chapter] = course(text).chapters;
    const [paragraph] = chapter?.body.children ?? [];
    expect(paragraph).toMatchObject({ children: [{ type: 'link', url }] });
    expect(problems(text)).toEqual([]);
    expect(chapter?.media).toEqual(url.startsWith('media') ? [url] : []);
  });

  test.each([
    ['[x](02-ab.md)', '02-ab.md', 'Did you mean `02-a b.md`?'],
    ['[x](media/shet.pdf)', 'media/shet.pdf', 'Did you mean `media/sheet.pdf`?'],
    ['[x](../../etc/passwd)', '../../etc/passwd', /^Name a chapter as/],
    ['[x](%zz.md)', '%zz.md', /^Name a chapter as/],
    ['[x][y]\n\n[y]: games/1.pgn', 'games/1.pgn', /^Name a chapter as/],
  ])('%s leads nowhere', (text, url, hint) => {
    expect(problems(text)).toMatchObject([
      {
        message: `This link leads to ${url}, and nothing of that name is published.`,
        hint: typeof hint === 'string' ? hint : expect.stringMatching(hint),
      },
    ]);
  });
});
