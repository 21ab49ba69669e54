import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import type { CourseFiles } from '../read/index.ts';
import { createWorkspace } from '../workspace/index.ts';
import { createOwnChecks } from './index.ts';

const importRules =
  "import { defineClaim, defineCourseRule, kingOf, readBoard, verdict } from 'linewright/rules';\n";

const chapter = '---\ntitle: One\n---\n\nSome words.\n\n```moves\n1. e4 e5 2. Nf3\n```\n';

/** A course whose `rules/` has these files, all of which are run unless said. */
function courseWith(
  code: Readonly<Record<string, string>>,
  {
    chapters = { '1': chapter },
    named = Object.keys(code),
    settings = '',
  }: {
    readonly chapters?: Readonly<Record<string, string>>;
    readonly named?: readonly string[];
    readonly settings?: string;
  } = {},
): CourseFiles {
  const own = named.map((name) => `  - ${name}\n`).join('');
  return {
    settings: {
      path: 'course.yaml',
      text: `title: Test\nid: test\nside: white\nown-rules:\n${own}${settings}`,
    },
    chapters: Object.entries(chapters).map(([name, text]) => ({
      path: `chapters/${name}.md`,
      text,
    })),
    games: [],
    media: [],
    rules: Object.entries(code).map(([name, text]) => ({
      path: `rules/${name}`,
      text: importRules + text,
    })),
    problems: [],
  };
}

const ownChecks = createOwnChecks({ limits: { load: 60_000, call: 60_000 } });
const workspace = () => createWorkspace({ ownChecks });
afterAll(() => ownChecks.stop());

function findingsIn(files: CourseFiles): string[] {
  return workspace()
    .update(files)
    .diagnostics.map(
      ({ rule, severity, place, message }) =>
        `${place.file}:${place.start.line}:${place.start.column} ${severity} ${rule}: ${message}`,
    );
}

/** The examples of the handbook, as an author would copy them. */
const handbook = readFileSync(
  new URL('../../content/handbook/chapters/06-own-rules.md', import.meta.url),
  'utf8',
);
const [longChapter = '', kingOut = ''] = [...handbook.matchAll(/```js\n(.*?)```/gs)].map(
  ([, code = '']) => code.replace(/^import .*\n/, ''),
);

describe('a rule', () => {
  const long = { '1': `${chapter}\n${'word '.repeat(130 * 50)}\n`, '2': '---\ntitle: Two\n---\n' };

  test('finds what it says, in the chapter that has it', () => {
    const found = findingsIn(courseWith({ 'a.mjs': longChapter }, { chapters: long }));
    expect(found).toEqual([
      'chapters/1.md:1:1 error reading-time: This chapter takes 50 minutes; the club allows 40.',
    ]);
  });

  test('is set, excepted and switched off by its id, as ours are', () => {
    const set = (level: string) => ({
      chapters: long,
      settings: `rules:\n  reading-time: ${level}\n`,
    });
    expect(findingsIn(courseWith({ 'a.mjs': longChapter }, set('warning')))[0]).toContain(
      'warning',
    );
    expect(findingsIn(courseWith({ 'a.mjs': longChapter }, set('off')))).toEqual([]);
  });

  test('sees moves, texts and names with their places, and asks the course', () => {
    const code = `export default defineCourseRule({
      id: 'looker', severity: 'warning', finds: 'x',
      *inChapter({ chapter: { blocks, texts, words }, course }) {
        const [block] = blocks;
        const last = block.trees[0].at(-1);
        yield {
          message: [words, texts[0].text, last.name, last.color, course.side, course.advice(block.position.key),
            course.covered(block.position.key).join()].join(' '),
          place: last.place,
        };
      },
      async *inCourse({ chapters }) { yield { message: chapters.map(({ moves }) => moves).join() }; },
    });`;
    expect(findingsIn(courseWith({ 'a.mjs': code }))).toEqual([
      'chapters/1.md:8:13 warning looker: 2 Some words. 2.Nf3 white white e4 e4',
      'course.yaml:1:1 warning looker: 3',
    ]);
  });

  test('of a course is not run where nobody runs code, and its names are let pass', () => {
    const text = chapter.replace(
      '2. Nf3',
      '2. Nf3 {:claim[king-out black] :allow[reading-time we know]}',
    );
    const files = courseWith(
      { 'a.mjs': longChapter },
      { chapters: { '1': text }, settings: 'rules:\n  reading-time: off\n' },
    );
    expect(createWorkspace().update(files).diagnostics).toEqual([]);
    expect(
      createWorkspace().update({
        ...files,
        settings: { path: 'course.yaml', text: 'title: T\nid: t\nside: white\n' },
      }).diagnostics,
    ).toHaveLength(2);
  });
});

describe('a claim', () => {
  const claiming = (claim: string) => ({
    chapters: { '1': chapter.replace('2. Nf3', `2. Nf3 {:claim[${claim}]}`) },
  });

  test('is judged on the board, joined with ours, denied and spoken of what would be', () => {
    const found = findingsIn(
      courseWith({ 'a.mjs': kingOut }, claiming('king-out black or open e')),
    );
    expect(found[0]).toContain('for `king-out black`, the king stands on e8');
    const right = 'not king-out white and after Ke7 Nxe5 Ke6: king-out black';
    expect(findingsIn(courseWith({ 'a.mjs': kingOut }, claiming(right)))).toEqual([]);
  });

  test('refuses words that it does not know, at their place', () => {
    expect(findingsIn(courseWith({ 'a.mjs': kingOut }, claiming('king-out green')))).toEqual([
      'chapters/1.md:8:34 error claim-unreadable: The claim `king-out green` cannot be read: `green` is no side: write `white` or `black`.',
    ]);
  });

  test('with an example that is not so is told', () => {
    const wrong = kingOut.replace('holds: true', 'holds: false');
    expect(findingsIn(courseWith({ 'a.mjs': wrong }))).toEqual([
      'rules/a.mjs:1:1 error own-rule: The example `king-out black` of the claim `king-out` is not as it says: it holds.',
    ]);
  });
});

describe('code that goes wrong is named, and the rest goes on', () => {
  const other = { 'z.mjs': longChapter.replace('> 40', '> 0') };
  const rest =
    'chapters/1.md:1:1 error reading-time: This chapter takes 1 minutes; the club allows 40.';
  const rule = (id: string, body: string) =>
    `export default defineCourseRule({ id: '${id}', severity: 'error', finds: 'x',\n  *inChapter({ chapter }) { ${body} } });`;

  test('what throws, gives nonsense, takes a name of ours, cannot be read or reaches out of its folder', () => {
    const files = courseWith(
      {
        'throws.mjs': rule('thrower', 'null.x;'),
        'gives.mjs': rule('giver', 'yield 5;'),
        'returns.mjs': rule('returner', 'return 42;').replace('*inChapter', 'inChapter'),
        'points.mjs': rule(
          'pointer',
          "yield { message: 'x', place: { ...chapter.place, file: 'a' } };",
        ),
        'takes.mjs': rule('move-illegal', ''),
        'parse.mjs': 'const a = ;',
        'empty.mjs': '',
        'reaches.mjs': "import '../../x.mjs';",
        ...other,
      },
      {
        named: [
          'throws.mjs',
          'gives.mjs',
          'returns.mjs',
          'points.mjs',
          'takes.mjs',
          'parse.mjs',
          'empty.mjs',
          'reaches.mjs',
          'gone.mjs',
          'z.mjs',
        ],
      },
    );
    expect(findingsIn(files)).toEqual([
      rest,
      'course.yaml:13:5 error own-rule: There is no file rules/gone.mjs.',
      'rules/empty.mjs:1:1 error own-rule: rules/empty.mjs failed: Error: rules/empty.mjs has no default export, such as `export default defineCourseRule({ … })`.',
      'rules/gives.mjs:1:1 error own-rule: `giver` does not do what a rule does: it gave 5, which is no finding: one has a `message`, and a `place` that the rule was given.',
      "rules/parse.mjs:2:11 error own-rule: rules/parse.mjs failed: SyntaxError: Unexpected token ';'.",
      'rules/points.mjs:1:1 error own-rule: `pointer` does not do what a rule does: it gave a finding with a place in a file that it was not given.',
      'rules/reaches.mjs:1:1 error own-rule: rules/reaches.mjs failed: Error: `../../x.mjs` cannot be imported: only `linewright/rules`, modules of Node and `.mjs` files of rules/ can.',
      'rules/returns.mjs:1:1 error own-rule: `returner` does not do what a rule does: it gave 42, which is no finding: one has a `message`, and a `place` that the rule was given.',
      'rules/takes.mjs:1:1 error own-rule: Something that rules/takes.mjs defines is left out: there is a rule `move-illegal` already.',
      "rules/throws.mjs:3:34 error own-rule: `thrower` failed: TypeError: Cannot read properties of null (reading 'x').",
    ]);
  });

  test('what hangs, and what ends its thread: said each time, and nothing of it is kept', () => {
    const impatient = createOwnChecks({ limits: { load: 60_000, call: 800 } });
    const now = createWorkspace({ ownChecks: impatient });
    const files = courseWith({
      'a.mjs': rule('hanger', 'for (;;);'),
      'b.mjs': rule('quitter', 'process.exit(0);'),
      ...other,
    });
    const all = () =>
      now.update(files).diagnostics.map(({ place, message }) => `${place.file} ${message}`);
    const expected = [
      'chapters/1.md This chapter takes 1 minutes; the club allows 40.',
      'rules/a.mjs `hanger` gave no answer within 0.8 seconds and was stopped.',
      'rules/b.mjs `quitter` gave no answer within 0.8 seconds and was stopped.',
    ];
    expect(all()).toEqual(expected);
    expect(all()).toEqual(expected);
    expect(now.update(files).work.checked).toEqual(['chapters/1.md']);
    impatient.stop();
  });
});

test('what was found is kept until the code changes', () => {
  const now = workspace();
  const before = courseWith({ 'a.mjs': longChapter });
  expect(now.update(before).diagnostics).toEqual([]);
  expect(now.update(before).work.checked).toEqual([]);
  const after = courseWith({ 'a.mjs': longChapter.replace('> 40', '> 0') });
  expect(now.update(after).diagnostics).toHaveLength(1);
});
