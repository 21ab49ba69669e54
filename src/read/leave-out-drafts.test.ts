import { expect, test } from 'vitest';
import { readChapter } from './index.ts';
import { leaveOutDrafts } from './leave-out-drafts.ts';

const written: Readonly<Record<string, string>> = {
  plain: '---\ntitle: A\n---\n\nA draft, said in words.\n',
  draft: '---\ntitle: A\ndraft: true\n---\n\nText.\n',
  'a draft with CRLF': '---\r\ntitle: A\r\ndraft: true\r\n---\r\n\r\nText.\r\n',
  'a quoted key': '---\n"draft": true # soon\ntitle: A\n---\n',
  'no draft': '---\ntitle: A\ndraft: false\n---\n',
  'a word that is no truth value': '---\ntitle: A\ndraft: yes please\n---\n',
  'a setting that does not exist': '---\ntitle: A\ndrafts: true\n---\n',
  'a draft with another fault': '---\ndraft: true\nlearn: much\n---\n\n---\n',
  'a title that speaks of it': '---\ntitle: "draft: true"\n---\n',
  'front matter that is never closed': '---\ntitle: A\ndraft: true\n\nText.\n',
  'front matter below words': 'Words.\n\n---\ndraft: true\n---\n',
};

test.each(Object.entries(written))('%s is left out as it is read', (_, text) => {
  const chapter = { path: 'chapters/1.md', text };
  const other = { path: 'chapters/2.md', text: '---\ntitle: B\n---\n' };
  const files = { chapters: [chapter, other], games: [], media: [], problems: [] };
  const isDraft = readChapter(chapter, { media: new Set() }).draft === true;
  expect(leaveOutDrafts(files).chapters).toEqual(isDraft ? [other] : [chapter, other]);
});
