import { expect, test } from 'vitest';
import { createWorkspace } from '../index.ts';
import { withUnsaved } from './unsaved.ts';

const files = {
  settings: { path: 'course.yaml', text: 'title: A\nid: a\nside: white\n' },
  chapters: [
    { path: 'chapters/1.md', text: '---\ntitle: One\n---\n\n```moves\n1. e4 e5 =\n```\n' },
    { path: 'chapters/3.md', text: '---\ntitle: Three\n---\n' },
  ],
  games: [],
  media: [],
  problems: [],
};

test('what an editor has not saved stands for what is on the disk', () => {
  const text = '\uFEFF---\ntitle: One\n---\n\n```moves\n1. e4 e4 =\n```\n';
  const workspace = createWorkspace();
  expect(workspace.update(files).diagnostics).toEqual([]);
  const now = workspace.update(withUnsaved(files, new Map([['chapters/1.md', text]])));
  expect(now.diagnostics.map(({ rule, place }) => `${rule} ${place.start.line}`)).toEqual([
    'move-illegal 6',
  ]);
  expect(now.work.read).toEqual(['chapters/1.md']);
  // Closed without saving.
  expect(workspace.update(withUnsaved(files, new Map())).diagnostics).toEqual([]);
});

test('a chapter that is only in the editor is there, in its place; other files are none', () => {
  const { chapters } = withUnsaved(
    files,
    new Map([
      ['chapters/2.md', 'x'],
      ['chapters/deep/2.md', 'x'],
      ['notes.md', 'x'],
    ]),
  );
  expect(chapters.map(({ path }) => path)).toEqual([
    'chapters/1.md',
    'chapters/2.md',
    'chapters/3.md',
  ]);
});

test('settings that are not saved count', () => {
  const now = createWorkspace().update(
    withUnsaved(files, new Map([['course.yaml', 'title: A\nid: a\nside: grey\n']])),
  );
  expect(now.diagnostics.map(({ rule }) => rule)).toEqual(['course-setting']);
});

test('a translation that is not saved counts as well', () => {
  const path = 'translations/de/chapters/1.md';
  const translation = { tag: 'de', folder: 'translations/de', pages: [], news: [] };
  const saved = { ...files, translations: [{ ...translation, chapters: [{ path, text: 'x' }] }] };
  const { translations = [] } = withUnsaved(saved, new Map([[path, 'y']]));
  expect(translations[0]?.chapters).toEqual([{ path, text: 'y' }]);
});
