import { expect, test } from 'vitest';
import { createWorkspace } from './index.ts';
import { filesOf, moves } from './testing/edits.ts';

const front = (title: string, more = '') => `---\ntitle: ${title}\n${more}---\n\n`;
const first = `${front('One')}${moves('1. d4 d5 2. c4 {:here[gambit]} e6 3. Nc3')}`;
const draft = (text: string) => front('Two', 'draft: true\n') + text;

function found(
  chapters: Readonly<Record<string, string>>,
  drafts: 'shown' | 'left out',
): readonly string[] {
  const { diagnostics } = createWorkspace({ drafts }).update(filesOf(chapters));
  return diagnostics.map(({ rule, place, message }) => `${place.file} ${rule}: ${message}`);
}

test('what is wrong in a draft is told to its author and stops nobody else', () => {
  const chapters = {
    'chapters/1.md': first,
    'chapters/2.md': draft(moves('1. d4 d5 2. Ke4')),
  };
  expect(found(chapters, 'shown')).toEqual([
    'chapters/2.md move-illegal: 2.Ke4 cannot be played: the king on e1 moves one square only, and e4 is further away.',
  ]);
  const now = createWorkspace({ drafts: 'left out' }).update(filesOf(chapters));
  expect(now.diagnostics).toEqual([]);
  expect(now.checked()).toBeDefined();
  expect(now.course().chapters.map(({ title }) => title)).toEqual(['One']);
});

test('what leads to a draft is told before it is missing', () => {
  const chapters = {
    'chapters/1.md': `${first}\n[Later](pos:quiet) and [there](2.md).\n`,
    'chapters/2.md': draft(moves('2... c6 {:here[quiet]} 3. Nf3', ' from="gambit"')),
  };
  const findings = found(chapters, 'shown');
  expect(findings.map((line) => line.split('.md ')[1]?.slice(0, 50))).toEqual([
    'label-unknown: Without the drafts: No position of ',
    'chapter-unreadable: Without the drafts: This link ',
  ]);
  expect(found(chapters, 'left out')).toEqual(findings);
});

test('an exception that only the draft needs is not called unused', () => {
  const chapters = {
    'chapters/1.md': `${front('One')}${moves('1. d4 d5 2. c4 e6 3. Nc3 {:here[here]} Nf6 4. Bg5')}`,
    'chapters/2.md': `${front('Three')}${moves('1. c4 e6 2. Nc3 d5 3. d4 Nf6 {:allow[transposition-untold said in the talk]} 4. Bg5')}`,
  };
  const withDraft = {
    'chapters/1.md': chapters['chapters/1.md'].replace('title: One', 'title: One\ndraft: true'),
    'chapters/2.md': chapters['chapters/2.md'],
  };
  const unused = (lines: readonly string[]) =>
    lines.filter((line) => line.includes('allow-unused'));
  expect(unused(found({ 'chapters/2.md': chapters['chapters/2.md'] }, 'left out'))).toHaveLength(1);
  expect(unused(found(chapters, 'shown'))).toEqual([]);
  expect(unused(found(withDraft, 'shown'))).toEqual([]);
  expect(unused(found(withDraft, 'left out'))).toEqual([]);
});

test('a course of drafts alone can be checked, and has nothing to publish', () => {
  const chapters = { 'chapters/2.md': draft(moves('1. d4 d5 2. c4 =')) };
  expect(found(chapters, 'shown')).toEqual([]);
  expect(found(chapters, 'left out')).toEqual([
    'chapters/2.md course-setting: Every chapter is a draft, so there is nothing to publish.',
  ]);
});

test('a chapter that becomes a draft, and one that is finished, cost themselves', () => {
  const finished = draft(moves('1. d4 d5 2. c4 c6 3. Nf3')).replace('draft: true\n', '');
  const workspace = createWorkspace();
  workspace.update(filesOf({ 'chapters/1.md': first, 'chapters/2.md': finished }));
  expect([...workspace.kept()]).toHaveLength(2);
  const before = workspace.update(
    filesOf({
      'chapters/1.md': first,
      'chapters/2.md': finished.replace('Two', 'Two\ndraft: true'),
    }),
  );
  expect(before.work.read).toEqual(['chapters/2.md']);
  expect(before.course().chapters[1]?.draft).toBe(true);
});
