import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { checkCourse } from '../check/index.ts';
import { buildCourse } from '../model/index.ts';
import { type CourseFiles, readCourse } from '../read/index.ts';
import { createWorkspace, type KeptChapter, type KeptSyntax } from './index.ts';
import { fromLines, toLines } from './kept/kept-findings.ts';
import { edit, filesOf, moves, settings } from './testing/edits.ts';

// The tests compare with a fresh run by themselves: once is enough.
beforeAll(() => vi.stubEnv('LINEWRIGHT_COMPARE_FRESH', ''));
afterAll(() => vi.unstubAllEnvs());

const optional = { frontMatter: 'optional' } as const;

/** What a process finds for which nothing is kept. */
function fresh(files: CourseFiles) {
  const course = buildCourse(readCourse(files, optional));
  return { diagnostics: checkCourse(course).diagnostics, course };
}

/** What another process gets of what this one kept: bytes, and nothing that was alive. */
function throughDisk(kept: Iterable<KeptChapter>): KeptChapter[] {
  return fromLines(toLines([...kept]).map((line) => Buffer.from(line)));
}

/** Chapters as they were read, kept as bytes: nothing of them is alive. */
function keptSyntax(): KeptSyntax {
  const lines = new Map<string, string>();
  return {
    get(file, text) {
      const line = lines.get(`${file} ${text}`);
      return line === undefined ? undefined : JSON.parse(line);
    },
    body(file, text) {
      return this.get(file, text)?.syntax.body;
    },
    set: (file, text, read) => lines.set(`${file} ${text}`, JSON.stringify(read)),
    async save(chapters) {
      for (const { file, text, asked, live } of chapters) {
        if (live?.syntax) this.set(file, text, { syntax: live.syntax, asked });
      }
    },
  };
}

const course = {
  'chapters/1.md': `${moves('1. d4 d5 2. c4 {:here[gambit]} e6')}See [there](pos:end).`,
  'chapters/2.md': moves('2... c6 3. Nf3 {:here[end]}', ' from="gambit"'),
  'chapters/3.md': `Words.\n\n${moves('1. e4 e5 2. Nf3 {:claim[attacks e5]} Nc6 =')}`,
};

describe('after one edit', () => {
  const after = (changed: Readonly<Record<string, string>>) => {
    const workspace = createWorkspace(optional);
    expect(workspace.update(filesOf(course)).diagnostics).not.toEqual([]);
    const files = filesOf({ ...course, ...changed });
    const now = workspace.update(files);
    expect(now.diagnostics).toEqual(fresh(files).diagnostics);
    expect(now.course()).toEqual(fresh(files).course);
    return now.work;
  };

  test('nothing is done for what stands as it was', () => {
    expect(after({})).toEqual({ read: [], played: [], checked: [] });
  });

  test('words cost their chapter', () => {
    const own = ['chapters/3.md'];
    const text = course['chapters/3.md'].replace('Words', 'Other words');
    expect(after({ 'chapters/3.md': text })).toEqual({ read: own, played: own, checked: own });
  });

  test('a name that moves costs those who ask for it', () => {
    const text = course['chapters/1.md'].replace('2. c4 {:here[gambit]}', '2. c3 {:here[gambit]}');
    const { read, played } = after({ 'chapters/1.md': text });
    expect(read).toEqual(['chapters/1.md']);
    expect(played).toEqual(['chapters/1.md', 'chapters/2.md']);
  });

  test('advice in a position that another chapter has too costs that one its check', () => {
    const text = course['chapters/1.md']
      .replace('1. d4 d5', '1. c3 d5 2. d4 Nf6')
      .replace('2.', '3.');
    const { read, played, checked } = after({ 'chapters/1.md': text });
    expect(read).toEqual(['chapters/1.md']);
    expect(played).not.toContain('chapters/3.md');
    expect(checked).toContain('chapters/3.md');
  });

  test('a chapter that is put before the others costs what is read of it', () => {
    const workspace = createWorkspace(optional);
    expect(workspace.update(filesOf(course)).diagnostics).not.toEqual([]);
    const files = filesOf({ 'chapters/0.md': 'A foreword.', ...course });
    const now = workspace.update(files);
    expect(now.course()).toEqual(fresh(files).course);
    expect(now.work.read).toEqual(['chapters/0.md']);
    expect(now.work.played).toEqual(['chapters/0.md']);
  });
});

test('a picture that was not there is found when it comes, and missed when it goes', () => {
  const workspace = createWorkspace(optional);
  const chapters = { 'chapters/1.md': '![A plan](media/plan.png)', 'chapters/2.md': 'Words.' };
  const without = filesOf(chapters);
  const withIt = filesOf(chapters, { media: ['media/plan.png'] });
  for (const files of [without, withIt, withIt, without]) {
    expect(workspace.update(files).diagnostics).toEqual(fresh(files).diagnostics);
  }
});

test('what a text says of a position that another chapter shows is checked there', () => {
  const workspace = createWorkspace(optional);
  const says = (claim: string) => ({
    'chapters/1.md': moves('1. e4 e5 {:here[open]} 2. Nf3 Nc6 ='),
    'chapters/2.md': `\`\`\`diagram at="open"\ncaption: x\n\`\`\`\n\n:claim[${claim}] :mark[e5]`,
  });
  for (const claim of ['loose e5', 'not loose e5', 'loose e5']) {
    const files = filesOf(says(claim));
    const now = workspace.update(files);
    expect(now.diagnostics).toEqual(fresh(files).diagnostics);
    expect(now.course()).toEqual(fresh(files).course);
    const [block] = now.course().chapters[0]?.blocks ?? [];
    expect(block?.nodes[2]).toMatchObject({ marks: ['e5'], statements: [{ argument: claim }] });
  }
});

describe('what one chapter asks of another is asked again', () => {
  const other = 'chapters/2.md';
  test.each([
    ['a name that a link leads to', '1. e4 {:here[a]} e5 =', '1. e4 e5 =', '[there](pos:a)'],
    [
      'the last move before a position that stays',
      '1. Nf3 Nc6 2. Nc3 {:here[a]} e5 =',
      '1. Nc3 Nc6 2. Nf3 {:here[a]} e5 =',
      '```diagram at="a"\ncaption: x\n```',
    ],
    [
      'the replies that the course has',
      '1. e4 e5 (1... c5 2. Nf3 =) 2. Nf3 =',
      '1. e4 e5 2. Nf3 =',
      moves('1. e4 {:claim[replies 3]} e6 2. d4 ='),
    ],
    [
      'a line that is told to its end',
      '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 =',
      '1. e4 e5 2. Nf3 Nc6 3. Bb5 d6 =',
      moves('1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 ='),
    ],
    [
      'a castling on the way',
      '1. e4 e5 2. Nf3 Nf6 3. Bc4 Bc5 4. O-O {:here[a]} =',
      '1. e4 e5 2. Nf3 Nf6 3. Bc4 Bc5 4. Kf1 {:here[a]} =',
      moves('4... a6 {:claim[lost-castling white]} 5. h3 =', ' from="a"'),
    ],
    [
      'the positions that have a pattern',
      '1. e4 e5 2. Nf3 Nc6 3. d4 =',
      '1. e4 e5 2. Nf3 Nc6 3. Bc4 =',
      '```pattern\ntitle: P\nwhite: d4 e4\n```',
    ],
    [
      'the advice in a position that has a pattern',
      '1. e4 e5 2. Nf3 Nc6 3. d4',
      '1. e4 e5 2. Nf3 Nc6 3. Bc4',
      '```pattern\ntitle: P\nwhite: e4\nblack: Nc6\nadvice: d4\n```',
    ],
    [
      'what is said of a move',
      '1. e4 e5 2. Nf3 (2. f4?) 2... Nc6 =',
      '1. e4 e5 2. Nf3 (2. f4) 2... Nc6 =',
      '```exercise after="1. e4 e5"\nask: What?\nanswer: Nf3\nalso: f4\n```',
    ],
    [
      'a position that differs in its turn alone',
      '1. e4 e5 2. Nf3 =',
      '1. e4 e5 2. Nc3 =',
      '```diagram fen="rnbqkbnr/pppp1ppp/8/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq - 0 1"\n```',
    ],
    [
      'the way in which a position is reached',
      '1. d4 d5 2. c4 e6 =',
      '1. c4 e6 2. d4 d5 =',
      moves('1. d4 d5 2. c4 e6 3. Nc3 ='),
    ],
  ])('%s', (_what, before, after, text) => {
    const workspace = createWorkspace(optional);
    const filesWith = (line: string) => filesOf({ 'chapters/1.md': moves(line), [other]: text });
    const found = [before, after, before].map((line) => {
      const files = filesWith(line);
      const now = workspace.update(files);
      expect(now.diagnostics).toEqual(fresh(files).diagnostics);
      expect(now.course()).toEqual(fresh(files).course);
      expect(now.work.read).not.toEqual([other]);
      return JSON.stringify([now.diagnostics, now.course().chapters[1]]);
    });
    // The case would show nothing if both were alike.
    expect(found[0]).not.toBe(found[1]);
    expect(found[2]).toBe(found[0]);
  });
});

test('a position is asked again through a chapter between', () => {
  const filesWith = (line: string) =>
    filesOf({
      'chapters/1.md': moves(`${line} {:here[a]}`),
      'chapters/2.md': moves('2... Nf6 {:here[b]}', ' from="a"'),
      'chapters/3.md': moves('3. g3 =', ' from="b"'),
    });
  const workspace = createWorkspace(optional);
  for (const line of ['1. d4 d5 2. c4', '1. d4 d5 2. Nf3', '1. d4 d5 2. c4']) {
    const files = filesWith(line);
    expect(workspace.update(files).course()).toEqual(fresh(files).course);
  }
});

test('a diagram of a name of another chapter is known by that name, whether that chapter was kept or not', () => {
  const chapters = {
    'chapters/1.md': moves('1. e4 e5 {:here[a]} ='),
    'chapters/2.md': '```diagram at="a"\ncaption: x :here[d]\n```\n',
  };
  const workspace = createWorkspace(optional);
  workspace.update(filesOf(chapters));
  const files = filesOf({ ...chapters, 'chapters/2.md': `${chapters['chapters/2.md']}\nMore.\n` });
  expect(workspace.update(files).course()).toEqual(fresh(files).course);
  expect(fresh(files).course.chapters[1]?.names).toMatchObject([{ name: 'd', from: 'a' }]);
});

test('a chapter whose syntax was released has its body for whoever looks, and can be played again', () => {
  const syntaxes = keptSyntax();
  const workspace = createWorkspace({ ...optional, syntaxes, releaseSyntax: true });
  const files = filesOf(course);
  const now = workspace.update(files);
  expect(now.diagnostics).toEqual(fresh(files).diagnostics);
  expect([...workspace.kept()].map(({ live }) => live?.syntax)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect(now.course()).toEqual(fresh(files).course);
  // The second chapter starts from a name of the first, whose place becomes another.
  const text = course['chapters/1.md'].replace('2. c4', '2. c3');
  const changed = filesOf({ ...course, 'chapters/1.md': text });
  const then = workspace.update(changed);
  expect(then.course()).toEqual(fresh(changed).course);
  expect(then.work.read).toEqual(['chapters/1.md']);
});

test('any mixture of kept and fresh chapters gives what a fresh run gives', () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 8 }), (edits) => {
      const texts = new Map<string, string>();
      let workspace = createWorkspace(optional);
      const syntaxes = keptSyntax();
      for (const { file, text, restart, media, side } of edits) {
        if (text === undefined) texts.delete(file);
        else texts.set(file, text);
        const chapters = Object.fromEntries([...texts].sort());
        const files = filesOf(chapters, {
          media,
          settings: { ...settings, text: settings.text.replace('white', side) },
        });
        if (restart) {
          const kept = [...workspace.kept()];
          void syntaxes.save(kept);
          // As in a build.
          const releaseSyntax = true;
          workspace = createWorkspace({
            ...optional,
            kept: throughDisk(kept),
            syntaxes,
            releaseSyntax,
          });
        }
        const now = workspace.update(files);
        const { diagnostics, course } = fresh(files);
        const [here, there] = [
          { diagnostics: now.diagnostics, course: now.course() },
          { diagnostics, course },
        ];
        if (JSON.stringify(here) !== JSON.stringify(there)) expect(here).toEqual(there);
      }
    }),
    { numRuns: runs(80) },
  );
});

describe('what an engine said', () => {
  const chapters = {
    'chapters/1.md': moves('1. e4 e5 2. Nf3 f6 3. Bc4'),
    'chapters/2.md': moves('1. e4 c5 2. Nf3'),
  };
  const key = 'rnbqkbnr/pppp2pp/5p2/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq -';
  const factsWith = (score: string) => ({
    facts: [
      { path: 'facts/engine.tsv', text: `${key}\tE 1\tdepth 9\t9\t+1.90 Nxe5; ${score} Bc4\n` },
    ],
  });
  const rulesOf = ({ diagnostics }: { diagnostics: readonly { rule: string }[] }) =>
    diagnostics.flatMap(({ rule }) => (rule.startsWith('engine-') ? [rule] : []));

  test('is asked again where it changed, and the rest is kept', () => {
    const workspace = createWorkspace(optional);
    const update = (more: Partial<CourseFiles>) => workspace.update(filesOf(chapters, more));
    expect(rulesOf(update({}))).toEqual([]);
    expect(rulesOf(update(factsWith('+0.20')))).toEqual(['engine-advice']);
    const changed = update(factsWith('+1.80'));
    expect(rulesOf(changed)).toEqual([]);
    expect(changed.work).toEqual({ read: [], played: [], checked: ['chapters/1.md'] });
    expect(update(factsWith('+1.80')).work.checked).toEqual([]);
    expect(rulesOf(update(factsWith('+0.30')))).toEqual(['engine-advice']);
    expect(rulesOf(update({}))).toEqual([]);
  });

  test('counts by the margins that the course sets', () => {
    const workspace = createWorkspace(optional);
    const update = (margin: number) =>
      workspace.update({
        ...filesOf(chapters, factsWith('+0.20')),
        settings: { ...settings, text: `${settings.text}engine:\n  margin: ${margin}\n` },
      });
    expect([0.5, 2, 1].map((margin) => rulesOf(update(margin)))).toEqual([
      ['engine-advice'],
      [],
      ['engine-advice'],
    ]);
  });

  test('is told of where a line of it cannot be read', () => {
    const files = filesOf(chapters, { facts: [{ path: 'facts/engine.tsv', text: '# a\n\nx\n' }] });
    const { diagnostics } = createWorkspace(optional).update(files);
    const told = diagnostics.filter(({ rule }) => rule === 'facts-unreadable');
    expect(told.map(({ place, severity }) => [place.file, place.start.line, severity])).toEqual([
      ['facts/engine.tsv', 3, 'warning'],
    ]);
  });
});
