import { toHtml } from 'hast-util-to-html';
import { visit } from 'unist-util-visit';
import type { Course } from '../../../src/model/index.ts';
import {
  assignAddresses,
  chapterDocument,
  contextOf,
  pageMedium,
  resolve,
} from '../../../src/render/index.ts';
import { renderSite } from '../../../src/site/render/site.ts';
import { shownOn } from '../../../src/site/render/testing/shown-on.ts';
import type { Oracle } from '../case.ts';
import type { CourseRun } from './course-run.ts';
import { type HtmlPart, readHtml } from './html.ts';
import { readXml } from './xml.ts';

export const place = {
  assets: {
    scripts: { free: 'assets/free.js' },
    styles: { embed: 'assets/embed.css', free: 'assets/free.css' },
    fonts: [],
  },
  offline: false,
};

/** A course without errors is published, and its pages are sound and safe. */
export const soundPages: Oracle<CourseRun> = {
  name: 'sound pages',
  *examine({ checked }) {
    if (checked === undefined) return;
    const site = checked.course.settings.site ?? 'https://example.org/course';
    const rendered = renderSite(checked.course, { ...place, site });
    const chapters = shownOn(rendered, 'chapter').map(({ chapter }) => chapter);
    const pages = new Map(chapters.map(({ id, html }) => [`${id}.html`, readHtml(html)]));
    for (const [name, part] of pages) yield* pageFaults(name, part, pages);
    yield* lostBlocks(checked.course, chapters);
    const [print] = shownOn(rendered, 'print');
    const paper = print?.handout.chapters ?? [];
    const handout = paper.flatMap(({ html, answers = '' }) => [html, answers]);
    const own = paper.map(({ number }) => `<i id="c${number}"></i>`).join('');
    yield* pageFaults('handout', readHtml(own + handout.join('')), pages);
    const [changes] = shownOn(rendered, 'changes');
    const news = (changes?.news ?? []).map(
      ({ id, html }) => `<i id="${id.replace(/"/g, '&quot;')}"></i>${html}`,
    );
    yield* pageFaults('news', readHtml(news.join('')), pages);
    for (const { patterns } of shownOn(rendered, 'patterns')) {
      for (const { html } of patterns) yield* pageFaults('patterns', readHtml(html), pages);
    }
    const emblems = shownOn(rendered, 'contents').flatMap((contents) => contents.emblems);
    for (const board of [...chapters.map((chapter) => chapter.board), ...emblems]) {
      yield* readHtml(board ?? '').faults;
    }
    for (const { make } of rendered.files) {
      for (const { path, content } of make()) yield* fileFaults(path, content);
    }
  },
};

/** HTML that an author left open takes no block along. */
function* lostBlocks(
  course: Course,
  pages: readonly { readonly html: string }[],
): Generator<string> {
  for (const [index, chapter] of course.chapters.entries()) {
    let hasHtml = false;
    const body = structuredClone(chapter.body);
    visit(body, 'html', (node) => {
      hasHtml = true;
      node.value = '';
    });
    if (!hasHtml) continue;
    const context = contextOf(course);
    const document = chapterDocument({ ...context, chapter: { ...chapter, body } });
    const page = resolve(document, pageMedium(assignAddresses(course)), context.strings);
    const bare = countBlocks(toHtml(page, { allowDangerousHtml: true }));
    const shown = countBlocks(pages[index]?.html ?? '');
    // An author may call an element of his own so, too.
    if (shown < bare) yield `with HTML a page has ${shown} blocks, without it ${bare}`;
  }
}

const countBlocks = (html: string) =>
  html.match(/<\w+ class="(?:moves|diagram|exercise|game|pattern)[ "]/g)?.length ?? 0;

function* pageFaults(
  name: string,
  { ids, links, references, faults }: HtmlPart,
  pages: ReadonlyMap<string, HtmlPart>,
): Generator<string> {
  yield* faults;
  const there = new Set(ids);
  if (there.size < ids.length) {
    const twice = ids.find((id, index) => ids.indexOf(id) !== index);
    yield `the id “${twice}” stands twice in a page (${name})`;
  }
  for (const id of references) if (!there.has(id)) yield `an attribute speaks of no id “${id}”`;
  for (const { href, ours } of links) {
    const [, page = '', fragment] = /^([^#?]*)#(.+)$/s.exec(href) ?? [];
    if (!ours || fragment === undefined) continue;
    const target = page === '' ? there : new Set(pages.get(decodeURIComponent(page))?.ids ?? []);
    if (!target.has(decodeURIComponent(fragment)))
      yield `a link to ${href} leads nowhere (${name})`;
  }
}

function* fileFaults(path: string, content: string): Generator<string> {
  if (path.endsWith('.html')) {
    const { faults, ids } = readHtml(content, true);
    yield* faults;
    if (new Set(ids).size < ids.length) yield `an id stands twice in ${path}`;
  } else if (/\.(?:xml|svg)$/.test(path)) yield* readXml(content).faults;
  else if (/json|webmanifest/.test(path)) JSON.parse(content);
  else if (path.endsWith('.js')) new Function(content);
  if (/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/.test(content)) {
    yield `half a character in ${path.replace(/.*\./, '.')}`;
  }
}
