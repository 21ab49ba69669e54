import { describe, expect, test } from 'vitest';
import { checkCourse, type PreviewedCourse, previewCourse, rules } from '../../check/index.ts';
import { filesOfExample } from '../../check/testing/run-example.ts';
import { buildCourse } from '../../model/index.ts';
import { readCourse, type SourceFile } from '../../read/index.ts';
import { buildSite } from '../index.ts';
import { pagePart } from '../render/chapter-page.ts';
import { deskFindings } from './desk-findings.ts';
import { markedParts } from './marked-parts.ts';

function previewOf(files: readonly SourceFile[]): PreviewedCourse {
  const inFolder = (name: string) => files.filter(({ path }) => path.startsWith(name));
  const settings = files.find(({ path }) => path === 'course.yaml');
  const draft = readCourse({
    ...(settings && { settings }),
    chapters: inFolder('chapters/'),
    games: inFolder('games/'),
    news: inFolder('news/'),
    media: inFolder('media/').map(({ path }) => path),
    problems: [],
  });
  const course = buildCourse(draft);
  return previewCourse(course, checkCourse(course).diagnostics);
}

/** The pages of the chapters, by their files. */
function pagesOf(previewed: PreviewedCourse, files: readonly SourceFile[]) {
  const parts = markedParts(previewed, (path) => files.find((each) => each.path === path)?.text);
  return new Map(
    previewed.course.chapters.map((chapter) => [chapter.file, parts.of(pagePart, chapter).html]),
  );
}

const fence = '```';

function pageOf(text: string): string {
  const files = filesOfExample({
    title: '',
    course: `---\ntitle: A\n---\n\n${text}`,
    findings: [],
  });
  return (pagesOf(previewOf(files), files).get('chapters/1.md') ?? '')
    .replace(/<svg[\s\S]*?<\/svg>/g, '')
    .replace(/ (?:lang|dir|role|tabindex|type|title|data-\w+|aria-label)="[^"]*"/g, '')
    .replace(/<section class="answers">[\s\S]*/, '');
}

test.each(rules.map((rule) => [rule.id, rule] as const))(
  'every example of %s is shown, each of its findings once, beside its place',
  (_, { examples }) => {
    for (const example of examples) {
      const files = filesOfExample(example);
      const previewed = previewOf(files);
      const pages = pagesOf(previewed, files);
      for (const { id, file, message } of deskFindings(previewed)) {
        const page = pages.get(file);
        if (page === undefined) continue;
        expect(page.split(`id="${id}"`).length - 1, message).toBe(1);
      }
    }
  },
);

test('a move that cannot be played and those behind it are text, with the sign behind the first', () => {
  const page = pageOf(`${fence}moves\n1. e4 e5 2. Ke3 Nc6 {Words.} =\n${fence}\n`);
  expect(page).toMatch(
    /<span class="move fault desk-at desk-error">.*?e3<\/span><a class="desk-sign desk-error" href="#(desk-\w+)"><\/a> <span class="move fault">.*Words\..*<\/p><div class="desk-note desk-error" id="\1">/,
  );
});

test('a false claim is marked where it stands between the words', () => {
  const page = pageOf(`${fence}moves\n1. e4 {Before. :claim[mate] Behind.} e5 =\n${fence}\n`);
  expect(page).toMatch(/Before\.<a class="desk-sign desk-error" href="#desk-\w+"><\/a> Behind\./);
});

test('words that are wrong are underlined, and no more of the sentence', () => {
  const page = pageOf('Read [the other](chapters/9.md) and `9.Qh5` now.\n');
  expect(page).toMatch(
    /Read <a href="[^"]*" class="desk-at desk-error">the other<\/a><a class="desk-sign/,
  );
  expect(page).toMatch(/and <span class="desk-at desk-error">9\..*h5<\/span><a class="desk-sign/);
});

test('an unknown name in a link is marked, its words stay', () => {
  const page = pageOf(`${fence}moves\n1. e4 {See [there](pos:nowhere).} e5 =\n${fence}\n`);
  expect(page).toMatch(/See <span class="desk-at desk-error">there<\/span><a class="desk-sign/);
});

test('an exercise without a right answer is shown, with the note behind it', () => {
  const page = pageOf(
    `${fence}moves\n1. e4 {:here[a]} e5 =\n${fence}\n\n${fence}exercise at="a"\nask: What now?\nanswer: Qh8\n${fence}\n`,
  );
  expect(page).toMatch(/What now\?[\s\S]*<\/section>\s*<div class="desk-note desk-error"/);
});

test('a block that cannot be shown is shown as it is written, once, in its place', () => {
  const page = pageOf(
    `Before.\n\n${fence}diagram at="nowhere"\ncaption: C\nodd: 1\n${fence}\n\nBehind.\n`,
  );
  expect(page.match(/<pre class="desk-unshown">/g)).toHaveLength(1);
  expect(page).toMatch(
    /Before\.<\/p>\s*<pre class="desk-unshown"><code>```diagram at="nowhere"\ncaption: C\nodd: 1\n```<\/code><\/pre>(?:<div class="desk-note.*?<\/div>){2}\s*<p>Behind/,
  );
});

test('front matter that cannot be read is told at the head of the chapter', () => {
  const files = filesOfExample({
    title: '',
    course: '---\ntitle: [A\n---\n\nWords.\n',
    findings: [],
  });
  const page = pagesOf(previewOf(files), files).get('chapters/1.md') ?? '';
  expect(page.trim()).toMatch(/^<div class="desk-note desk-error".*Words\./s);
});

test('words of the author in a finding are no HTML', () => {
  const page = pageOf(
    `${fence}moves\n1. e4 {:claim[<img src=x onerror=alert(1)>]} e5 =\n${fence}\n`,
  );
  expect(page).toContain('desk-note');
  expect(page).not.toMatch(/<img/);
});

describe('a course that is previewed', () => {
  test('is no course that is published: that does not compile', () => {
    const publish = (previewed: PreviewedCourse) =>
      // @ts-expect-error: only the check makes what `buildSite` takes.
      buildSite(previewed, { out: 'nowhere' });
    expect(publish).toBeTypeOf('function');
  });
});
