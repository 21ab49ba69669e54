/** Letters, read with other people's tools: an HTML validator, an e-mail parser, a rules library. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseBoardFen } from 'chessops/fen';
import { HtmlValidate } from 'html-validate';
import PostalMime, { type Email } from 'postal-mime';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { loadCourse } from '../../src/cli/load-course.ts';
import {
  type Letter,
  type LetterChoice,
  type LetterOptions,
  makeLetter,
} from '../../src/publish/index.ts';
import { writeMixedCourse } from './mixed-course.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-letter-'));
const mixed = path.join(work, 'mixed');
afterAll(() => rmSync(work, { recursive: true, force: true }));

const date = new Date('2026-03-01T12:00:00Z');

async function letterOf(
  folder: string,
  choice: LetterChoice,
  options: Partial<LetterOptions> = {},
): Promise<Letter> {
  const { checked, diagnostics } = await loadCourse(folder);
  if (checked === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const cacheDir = path.join(inject('runFolder'), 'cache');
  return makeLetter(checked, choice, { folder, date, cacheDir, ...options });
}

/** A whole chapter in German; positions of the example course; a section of it with links. */
const letters = new Map<string, Letter>();
const letter = (name: string): Letter => {
  const found = letters.get(name);
  if (!found) throw new Error(`there is no letter ${name}`);
  return found;
};

beforeAll(async () => {
  writeMixedCourse(mixed);
  const to = 'Verein <verein@club.example>';
  letters.set(
    'chapter',
    await letterOf(mixed, { chapter: 'erste' }, { from: '"Müller, Eva" <eva@club.example>', to }),
  );
  letters.set('positions', await letterOf('demo-course', { positions: ['tabiya', 'iqp'] }));
  const section = { chapter: '1', section: 'What the pawn gives, and what it costs' };
  const addresses = { site: 'https://club.example/t', images: 'https://club.example/i' };
  letters.set('section', await letterOf('demo-course', section, addresses));
});

describe.each(['chapter', 'positions', 'section'])('%s', (name) => {
  test('the HTML is valid', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:standard'],
      rules: {
        // Layout tables: mail programs for desktops read their attributes and no style for them.
        'no-deprecated-attr': 'off',
      },
    });
    const { results } = await validator.validateString(letter(name).html);
    const said = results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message, line }) => `${line}: ${ruleId}: ${message}`),
    );
    expect(said).toEqual([]);
  });

  test('the message holds text, HTML and every picture that the HTML names', async () => {
    const { html, text, message, pictures } = letter(name);
    const mail = await PostalMime.parse(message);
    expect(mail.text?.trimEnd()).toBe(text.trimEnd());
    const named = [...(mail.html ?? '').matchAll(/src="cid:([^"]+)"/g)].map(([, id]) => `<${id}>`);
    expect(new Set(named)).toEqual(new Set(mail.attachments.map(({ contentId }) => contentId)));
    const attached = name === 'section' ? 0 : pictures.size;
    expect(mail.attachments.map(({ mimeType }) => mimeType.split('/')[0])).toEqual(
      Array(attached).fill('image'),
    );
    expect(mail.html?.replace(/cid:([^"@]+)@[^"]+/g, 'images/$1').trim()).toBe(html.trim());
  });

  test('lines of the plain text fit into 72 columns', () => {
    const long = letter(name)
      .text.split('\n')
      .filter((line) => line.length > 72 && !line.includes('http'));
    expect(long).toEqual([]);
  });

  test('every picture has words', () => {
    const pictures = letter(name).html.match(/<img[^>]*>/g) ?? [];
    expect(pictures.length).toBeGreaterThan(0);
    for (const picture of pictures) expect(picture).toMatch(/ alt="[^"]+"/);
  });
});

/** In a page of the demo that says `letter: yes`. */
const imprintLink = 'mailto:club@lantern-street.example';

test('pages of the author end a letter with their text', () => {
  const { text, html } = letter('positions');
  const foot = text.slice(text.indexOf('\n-- \n') + 1 || text.indexOf('\n--\n'));
  expect(foot).toContain(
    'Imprint\n\nResponsible for this site:\n\nLantern Street Chess Club\n4 Lantern',
  );
  expect(html).toMatch(/<b[^>]*>Imprint<\/b>/);
  expect(html).toContain(imprintLink);
  // What is not asked into letters stands in none.
  expect(foot).not.toContain('About the club');
});

test('news links to the boards of the site, and names its own place there', async () => {
  const site = 'https://club.example/t';
  const made = await letterOf('demo-course', { news: '2026-11-25.md' }, { site });
  const { html, text, name } = made;
  // Its board is a picture, and letters in plain text.
  expect([...made.pictures.keys()]).toEqual([expect.stringMatching(/^images\/board-\w+\.png$/)]);
  expect(text).toContain('    h g f e d c b a\n');
  expect(name).toBe('news-2026-11-25');
  const links = [...html.matchAll(/href="([^"]*)"/g)].map(([, url]) => url);
  expect(links).toContain(`${site}/isolated-pawn.html#forgot-knight`);
  expect(links).toContain(`${site}/changes.html#2026-11-25`);
  expect(links.filter((url) => !url?.startsWith(site))).toEqual([imprintLink]);
  expect(text).toContain('Two exercises are new.');
});

test('head and addresses survive in any language', async () => {
  const mail: Email = await PostalMime.parse(letter('chapter').message);
  expect(mail.subject).toBe('Spanisch: & mehr: Läufer & <Springer>');
  expect(mail.from).toEqual({ name: 'Müller, Eva', address: 'eva@club.example' });
  expect(mail.to).toEqual([{ name: 'Verein', address: 'verein@club.example' }]);
  expect(mail.date).toBe('2026-03-01T12:00:00.000Z');
  expect(mail.messageId).toMatch(/^<[0-9a-f]{32}@club\.example>$/);
});

// RFC 5322, 2.3: CR and LF come only together.
test('lines of a message end with CRLF throughout', () => {
  for (const name of ['chapter', 'positions'] as const) {
    const message = Buffer.from(letter(name).message).toString('latin1');
    expect(message.match(/(?<!\r)\n|\r(?!\n)/g) ?? []).toEqual([]);
  }
});

// RFC 2369, 3.2; RFC 8058, 3.1.
test('a reader can leave the list, and knows who writes', async () => {
  const unsubscribe = 'https://club.example/leave?list=t';
  const sender = 'Lantern Street Chess Club, Lantern Street 5';
  const choice = { positions: ['tabiya'] };
  const left = await letterOf('demo-course', choice, { unsubscribe, sender });
  const headersOf = async (message: Uint8Array) =>
    Object.fromEntries(
      (await PostalMime.parse(message)).headers.map(({ key, value }) => [key, value]),
    );
  const headers = await headersOf(left.message);
  expect(headers['list-unsubscribe']).toBe(`<${unsubscribe}>`);
  expect(headers['list-unsubscribe-post']).toBeUndefined();
  expect(left.html).toContain(`href="${unsubscribe}"`);
  for (const words of [left.html, left.text]) expect(words).toContain(sender);
  const button = await letterOf('demo-course', choice, { unsubscribe, oneClick: true });
  expect((await headersOf(button.message))['list-unsubscribe-post']).toBe(
    'List-Unsubscribe=One-Click',
  );
  const wrong = [
    { unsubscribe: 'http://club.example' },
    { unsubscribe: 'leave us' },
    { unsubscribe: 'mailto:a@club.example', oneClick: true },
    { oneClick: true },
  ];
  for (const options of wrong) {
    await expect(letterOf('demo-course', choice, options)).rejects.toThrow(/unsubscribe|one-click/);
  }
});

// Words in the place of a picture stand on its ground, which dark mode leaves light.
test('words for a board that is not loaded are dark on light', () => {
  for (const picture of letter('positions').html.match(/<img class="board"[^>]*>/g) ?? []) {
    expect(picture).toMatch(/style="[^"]*[; ]color: #1d1b18/);
  }
});

test('nothing of a page that needs its script is left', () => {
  expect(letter('chapter').html).not.toContain('course-board');
});

test('the same letter on the same day has the same bytes', async () => {
  const again = await letterOf('demo-course', { positions: ['tabiya', 'iqp'] });
  expect(Buffer.compare(again.message, letter('positions').message)).toBe(0);
});

describe('boards of letters', () => {
  test('are the positions, as another program reads them', () => {
    const boards = [...letter('positions').text.matchAll(/ {2}\+-+\+\n((?:\d \| .*\n){8})/g)].map(
      ([, board = '']) => board,
    );
    // From Black's side: turned round it is the order of a FEN.
    const placements = boards.map((board) =>
      board
        .trimEnd()
        .split('\n')
        .map((rank) => [...rank.slice(4, 19).replaceAll(' ', '')].reverse().join(''))
        .reverse()
        .map((rank) => rank.replaceAll(/\.+/g, (empty) => String(empty.length)))
        .join('/'),
    );
    // The moves stand in the letter too; from the start they lead to these boards.
    expect(placements).toEqual([
      'r1bq1rk1/pp2bppp/2n2n2/2pp4/3P4/2N2NP1/PP2PPBP/R1BQ1RK1',
      'r1bq1rk1/pp2bppp/2n2n2/3p2B1/3N4/2N3P1/PP2PPBP/R2Q1RK1',
    ]);
    for (const placement of placements) expect(parseBoardFen(placement).isOk).toBe(true);
  });

  test('have the letters of the language, told once', () => {
    const { text } = letter('chapter');
    expect(text.match(/K König, D Dame, T Turm, L Läufer, S Springer, B\s+Bauer/g)).toHaveLength(1);
    expect(text).toContain('8 | t . l d k l s t |');
    expect(text).toContain('5 | . . . . b . . . |');
    expect(text).toContain('Drohung: f3-e5');
  });
});

test('a question comes without its answer; the answer stands at the end', () => {
  for (const words of [letter('chapter').html, letter('chapter').text]) {
    const text = words.replaceAll(/<[^>]*>/g, '').replaceAll('\u00a0', ' ');
    expect(text.indexOf('Was spielt Schwarz?')).toBeGreaterThan(0);
    expect(text.match(/1\.\.\. f6/g)).toHaveLength(1);
    expect(text.indexOf('1... f6')).toBeGreaterThan(text.indexOf('Lösungen'));
  }
});

test('without a site links into the course are text, others stay', () => {
  const links = [...letter('chapter').html.matchAll(/<a [^>]*href="([^"]+)"/g)].map(
    ([, href]) => href,
  );
  expect(links).toEqual(['https://example.org/a?b&#x26;c']);
});

test('with a site links lead to its places', () => {
  const { html, text } = letter('section');
  expect(html).toContain('href="https://club.example/t/isolated-pawn.html#tabiya"');
  expect(html).toContain(
    'href="https://club.example/t/isolated-pawn.html#what-the-pawn-gives-and-what-it-costs"',
  );
  expect(html.replace(imprintLink, 'https:')).not.toMatch(/href="(?!https:)/);
  expect(html).toMatch(/src="https:\/\/club\.example\/i\/board-[0-9a-f]{12}\.png"/);
  expect(text).toContain('https://club.example/t/isolated-pawn.html');
});

test('a section is told with its own notes and no others', () => {
  const { text } = letter('section');
  expect(text).toContain('[1]');
  expect(text).toContain('The rule of thumb at our club');
  expect(text).not.toContain('Every Thursday');
  expect(text).not.toContain('12. Rc1');
});

test('a section of a chapter has the answers to its own exercises only', async () => {
  const { text } = await letterOf('demo-course', { chapter: '1', section: 'the quiet ninth' });
  expect(text).not.toContain('Answers');
});

test('a letter that would be cut off is told, with the parts to send instead', async () => {
  const long = path.join(work, 'long');
  const part = `${'The pawn is weak, and the knight is strong. '.repeat(20)}\n\n`.repeat(65);
  mkdirSync(path.join(long, 'chapters'), { recursive: true });
  writeFileSync(path.join(long, 'course.yaml'), 'title: Long\nid: long\nside: white\n');
  writeFileSync(
    path.join(long, 'chapters/1.md'),
    `---\ntitle: One\n---\n\n## First half\n\n${part}## Second half\n\n${part}`,
  );
  const whole = await letterOf(long, { chapter: '1' });
  expect(whole.findings).toMatchObject([
    {
      rule: 'letter-long',
      severity: 'warning',
      place: { file: 'chapters/1.md' },
      message: `This letter has ${Math.ceil(Buffer.byteLength(whole.html) / 1000)} KB of HTML, and mail programs cut off what goes beyond 102 KB.`,
      hint: 'Send it in parts with --section: "First half", "Second half".',
    },
  ]);
  const half = await letterOf(long, { chapter: '1', section: 'Second half' });
  expect(half.findings).toEqual([]);
});

test('pictures that mail programs do not show are told, and become words', () => {
  const { findings, html, pictures } = letter('chapter');
  expect(
    findings.map(({ rule, place }) => `${rule} ${place.start.line}:${place.start.column}`),
  ).toEqual(['letter-picture 13:40', 'letter-picture 13:79']);
  expect(html).toContain('Ein neues Format');
  // It is as narrow as a phone.
  expect(html).toMatch(
    /<img src="images\/picture-1\.gif"[^>]* style="[^"]*width: 100%; max-width: 1px/,
  );
  expect([...pictures.keys()].filter((file) => !file.includes('board'))).toEqual([
    'images/picture-1.gif',
  ]);
});

test.each([
  [{ chapter: 'erstes' }, 'there is no chapter `erstes`', 'did you mean `erste`?'],
  [
    { chapter: 'erste', section: '1. Die Zuge' },
    'the chapter “Läufer & <Springer>” has no heading `1. Die Zuge`',
    'did you mean `1. Die Züge`?',
  ],
  [
    { news: undefined },
    'the course has no news',
    'write a file in `news/`, or let `linewright changes OLD NEW --write` begin one',
  ],
  [{ positions: ['stam'] }, 'no position of the course is named `stam`', 'did you mean `stamm`?'],
  [
    { positions: ['toString'] },
    'no position of the course is named `toString`',
    'the named positions are `anfang`, `stamm`, `ruy2`',
  ],
])('what is not there: %j', async (choice, message, hint) => {
  await expect(letterOf(mixed, choice)).rejects.toMatchObject({ message, hint });
});

test.each(['nobody', 'A. Coach <>', ''])('no mailbox: %j', async (from) => {
  const made = letterOf(mixed, { positions: ['stamm'] }, { from });
  await expect(made).rejects.toMatchObject({ name: 'PublishError' });
});
