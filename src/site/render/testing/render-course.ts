import { buildCourse } from '../../../model/index.ts';
import { readCourse } from '../../../read/index.ts';
import { renderSite } from '../site.ts';
import { shownOn } from './shown-on.ts';

/** The HTML of the chapters of a course that is given by its texts; file names are `1.md`, `2.md`. */
export function renderCourse(
  chapters: readonly string[],
  {
    side = 'white',
    language = 'en',
    games = [] as readonly string[],
    media = [] as readonly string[],
  } = {},
): string[] {
  const draft = readCourse(
    {
      settings: {
        path: 'course.yaml',
        text: `title: Test\nid: test\nside: ${side}\nlanguage: ${language}\n`,
      },
      chapters: chapters.map((text, index) => ({
        path: `chapters/${index + 1}.md`,
        text: `---\ntitle: Chapter ${'ABC'.charAt(index)}\n---\n\n${text}`,
      })),
      games: games.map((text, index) => ({ path: `games/${index + 1}.pgn`, text })),
      media,
      problems: [],
    },
    { frontMatter: 'optional' },
  );
  const course = buildCourse(draft);
  const site = renderSite(course, {
    assets: { scripts: {}, styles: {}, fonts: [] },
    offline: false,
  });
  return shownOn(site, 'chapter').map(({ chapter }) => chapter.html);
}

/** The text of HTML as a reader sees it, boards left out, spaces joined. */
export function readableText(html: string): string {
  return html
    .replace(/<svg[\s\S]*?<\/svg>/g, '')
    .replace(/<\/?(?:p|div|section|details|summary|ul|li|header|figcaption|h\d)\b[^>]*>/g, '\n')
    .replace(/<[^>]*>/g, '')
    .replaceAll('\u00a0', ' ')
    .replaceAll('&nbsp;', ' ')
    .replace(/[ \t]+/g, ' ')
    .replace(/\s*\n\s*/g, '\n')
    .trim();
}
