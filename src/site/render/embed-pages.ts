import type { Element } from 'hast';
import { toHtml } from 'hast-util-to-html';
import type { Course } from '../../model/index.ts';
import { element } from '../../render/index.ts';
import { directionOf } from '../../strings/index.ts';
import type { AssetPaths, EmbedChapter, SiteFile } from '../site-data.ts';
import { iconPath } from '../web-app/icons.ts';
import type { Embed } from './embeds.ts';

/** The script that other sites include; its name stays the same. */
export const embedScript = 'boards/board.js';

/** Width of a board as the snippets ask for it, in CSS pixels. */
const width = 400;
/** What a frame needs besides, for the lines under the board. */
const lines = 76;

/** Nothing but the page's own script and picture; it may be framed by any site. */
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'";

/** Where the picture of a named position stands. */
export function positionPicture({ name }: Pick<Embed, 'name'>): string {
  return `images/positions/${encodeURIComponent(name)}.png`;
}

function pageOf({ name }: Embed): string {
  return `boards/${encodeURIComponent(name)}.html`;
}

/** The pages for frames, one a named position. */
export function makeEmbedPages(
  course: Course,
  embeds: readonly Embed[],
  { assets, site }: { readonly assets: AssetPaths; readonly site?: string | undefined },
): SiteFile[] {
  const { language, title } = course.settings;
  return embeds.map((embed) => {
    const still = element('noscript', {}, [picture(embed, '../')]);
    const meta = (properties: Record<string, string>) => element('meta', properties, []);
    const head = element('head', {}, [
      meta({ charset: 'utf-8' }),
      meta({ 'http-equiv': 'Content-Security-Policy', content: policy }),
      meta({ name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      // The chapter is the page to be found.
      meta({ name: 'robots', content: 'noindex' }),
      meta({ name: 'color-scheme', content: 'light dark' }),
      element('title', {}, [`${embed.words} – ${title}`]),
      // Browsers ask a host for an icon unless they are given one.
      element('link', { rel: ['icon'], href: `../${iconPath('icon.svg')}` }, []),
      element('link', { rel: ['stylesheet'], href: `../${assets.styles.embed ?? ''}` }, []),
      ...(site === undefined
        ? []
        : [element('link', { rel: ['canonical'], href: `${site}/${embed.href}` }, [])]),
      element('script', { src: 'board.js', defer: true }, []),
    ]);
    const board = boardElement(embed, '../', [still], { fit: true });
    const body = element('body', {}, [element('main', {}, [board])]);
    const page = element('html', { lang: language, dir: directionOf(language) }, [head, body]);
    const html = toHtml({ type: 'root', children: [{ type: 'doctype' }, page] });
    return { path: decodeURIComponent(pageOf(embed)), content: `${html}\n` };
  });
}

/** What the author copies, chapter by chapter. Without an address of the site it stays to be put in. */
export function makeSnippets(
  course: Course,
  embeds: readonly Embed[],
  site: string | undefined,
): EmbedChapter[] {
  const root = `${site ?? 'ADDRESS'}/`;
  return course.chapters.flatMap((chapter): EmbedChapter[] => {
    const entries = embeds
      .filter((embed) => embed.chapter === chapter.file)
      .map((embed) => ({
        label: embed.label,
        words: embed.words,
        href: embed.href,
        page: pageOf(embed),
        frame: toHtml(frame(embed, root)),
        element: toHtml(boardElement(embed, root, [picture(embed, root)])),
        picture: toHtml(picture(embed, root)),
      }));
    return entries.length === 0 ? [] : [{ title: chapter.title, entries }];
  });
}

/** The line that loads the script, for a page that shows boards without frames. */
export function scriptSnippet(site: string | undefined): string {
  return toHtml(element('script', { src: `${site ?? 'ADDRESS'}/${embedScript}`, defer: true }, []));
}

function frame(embed: Embed, root: string): Element {
  const height = width + lines;
  const style = `border:0;width:${width}px;max-width:100%;height:auto;aspect-ratio:${width}/${height}`;
  const src = root + pageOf(embed);
  return element('iframe', { src, width, height, style, loading: 'lazy', title: embed.words }, []);
}

function picture(embed: Embed, root: string): Element {
  const src = root + positionPicture(embed);
  return element('a', { href: root + embed.href, target: root === '../' ? '_top' : undefined }, [
    element('img', { src, alt: embed.alt, width, height: width }, []),
  ]);
}

function boardElement(
  embed: Embed,
  root: string,
  inside: readonly Element[],
  more: Readonly<Record<string, boolean>> = {},
): Element {
  return element('course-board', { ...more, ...embed.attributes, href: root + embed.href }, inside);
}
