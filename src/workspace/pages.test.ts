import { describe, expect, test } from 'vitest';
import { type CurrentCourse, createWorkspace } from './index.ts';
import { filesOf, moves } from './testing/edits.ts';

const front = (title: string, more = '') => `---\ntitle: ${title}\n${more}---\n\n`;
const chapter = `${front('One')}${moves('1. d4 d5 2. c4 {:here[gambit]} e6 {:end[x]}')}`;

function current(files: Readonly<Record<string, string>>): CurrentCourse {
  return createWorkspace().update(filesOf({ 'chapters/1.md': chapter, ...files }));
}

function found(files: Readonly<Record<string, string>>): readonly string[] {
  return current(files).diagnostics.map(
    ({ rule, place }) => `${place.file}:${place.start.line}:${place.start.column} ${rule}`,
  );
}

describe('a page', () => {
  test('is no chapter: its positions are in no graph and its moves no advice', () => {
    const now = current({
      'pages/about.md': `${front('About', 'in: head\nmenu: We\nletter: link\nbook: yes\n')}${moves('1. e4 {:option[x] :here[ours]} e5 {:end[x]}')}`,
    });
    expect(now.diagnostics).toEqual([]);
    const { chapters, pages, labels, graph } = now.course();
    expect([now.chapters, now.positions]).toEqual([1, 5]);
    expect(chapters.map(({ file }) => file)).toEqual(['chapters/1.md']);
    expect(pages.map(({ id, page }) => [id, page])).toEqual([
      ['about', { in: 'head', menu: 'We', letter: 'link', book: true }],
    ]);
    // Chapters may lead to its positions all the same.
    expect(labels.ours?.ref.chapter).toBe('pages/about.md');
    expect(Object.keys(graph)).toHaveLength(5);
  });

  test('says by itself that it is linked in the foot and stands in no letter and no book', () => {
    expect(current({ 'pages/a.md': front('A') }).course().pages[0]?.page).toEqual({
      in: 'foot',
      book: false,
    });
  });

  test('is checked as a chapter is, with all that the others say', () => {
    expect(
      found({
        'pages/a.md': `${front('A')}${moves('1. d4 Nf6 {:end[x]} (1... d5 2. Nf3 {:end[x]} )')}[x](pos:gone) [y](b.md) :claim[loose d4]\n`,
      }),
    ).toEqual([
      'pages/a.md:6:33 advice-conflict',
      'pages/a.md:9:9 label-unknown',
      'pages/a.md:9:19 chapter-unreadable',
      'pages/a.md:9:32 claim-false',
    ]);
  });

  test('leads to chapters and is led to by them', () => {
    const files = {
      'chapters/2.md': `${front('Two')}[About us](../pages/about.md#us), and [its board](pos:ours).\n`,
      'pages/about.md': `${front('About')}## Us\n\n[One](../chapters/1.md), [there](pos:gambit)\n\n${moves('2... c6 {:here[ours] :end[x]}', ' from="gambit"')}`,
    };
    expect(found(files)).toEqual([]);
    expect(found({ ...files, 'pages/about.md': front('About') })).toEqual([
      'chapters/2.md:5:29 link-unknown',
      'chapters/2.md:5:55 label-unknown',
    ]);
  });

  test('costs itself alone when its words change', () => {
    const workspace = createWorkspace();
    const files = { 'chapters/1.md': chapter, 'pages/a.md': front('A'), 'pages/b.md': front('B') };
    expect(workspace.update(filesOf(files)).diagnostics).toEqual([]);
    const { work } = workspace.update(filesOf({ ...files, 'pages/b.md': `${front('B')}Words.` }));
    const own = ['pages/b.md'];
    expect(work).toEqual({ read: own, played: own, checked: own });
  });

  test('that is a draft is checked and not published', () => {
    const files = { 'pages/a.md': `${front('A', 'draft: true\n')}${moves('1. Ke2')}` };
    expect(found(files)).toEqual(['pages/a.md:7:4 move-illegal']);
    const now = createWorkspace({ drafts: 'left out' }).update(
      filesOf({ 'chapters/1.md': chapter, ...files }),
    );
    expect([now.diagnostics, now.course().pages]).toEqual([[], []]);
  });
});

describe('each fault of a page has one finding', () => {
  const message = (files: Readonly<Record<string, string>>) =>
    current(files).diagnostics.map(({ message }) => message);

  test('an address that a chapter has', () => {
    expect(
      message({ 'chapters/2-prices.md': front('Two'), 'pages/prices.md': front('P') }),
    ).toEqual(['This page would be published as prices.html, as chapters/2-prices.md is.']);
  });

  test('an address that the site has', () => {
    const taken =
      'This page would be published as search.html, and the site has a page or folder of that name.';
    expect(message({ 'pages/02-search.md': front('S') })).toEqual([taken]);
    expect(message({ 'pages/02-search.md': front('S', 'id: find-us\n') })).toEqual([]);
  });

  test.each([
    ['learn: all', 'The front matter has no `learn`.'],
    ['in: header', '`in` must be `head`, `foot` or `nowhere`.'],
    [
      'menu: A title that is much too long for a menu',
      '`menu` must be a title of up to 30 letters.',
    ],
    ['letter: [yes]', '`letter` must be `yes`, `link` or `no`.'],
    ['book: 3', '`book` must be `yes` or `no`.'],
  ])('%s', (line, said) => {
    const files = { 'pages/a.md': front('A', `${line}\n`) };
    expect(
      current(files).diagnostics.map(({ message, place }) => [message, place.start.line]),
    ).toEqual([[said, 3]]);
  });
});
