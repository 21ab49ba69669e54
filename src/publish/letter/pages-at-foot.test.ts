import { expect, test } from 'vitest';
import { createWorkspace } from '../../workspace/index.ts';
import { filesOf } from '../../workspace/testing/edits.ts';
import { linksAtFoot, pagesAtFoot } from './pages-at-foot.ts';

const page = (title: string, letter: string) => `---\ntitle: ${title}\nletter: ${letter}\n---\n`;
const course = createWorkspace()
  .update(
    filesOf({
      'chapters/1.md': '---\ntitle: One\n---\n',
      'pages/1-imprint.md': page('Imprint', 'yes'),
      'pages/2-privacy.md': page('Privacy', 'link'),
      'pages/3-about.md': page('About', 'no'),
    }),
  )
  .course();

test('a page is linked where a site is known, and else stands there as text', () => {
  const titles = (site: string | undefined) => {
    const { texts, links } = pagesAtFoot(course, site, []);
    return [texts.map(({ title }) => title), links.map(({ title }) => title)];
  };
  expect(titles('https://club.example')).toEqual([['Imprint'], ['Privacy']]);
  expect(titles(undefined)).toEqual([['Imprint', 'Privacy'], []]);
});

test('a page that is sent as a letter does not end itself', () => {
  const { texts } = pagesAtFoot(course, undefined, course.pages.slice(0, 1));
  expect(texts.map(({ title }) => title)).toEqual(['Privacy']);
});

test('links stand in one line', () => {
  const { links } = pagesAtFoot(course, 'https://club.example', []);
  expect(JSON.stringify(linksAtFoot(links, 'https://club.example'))).toContain(
    '"href":"https://club.example/privacy.html"',
  );
  expect(linksAtFoot([], undefined)).toEqual([]);
});
