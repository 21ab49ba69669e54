import { toHtml } from 'hast-util-to-html';
import type { Course } from '../../../model/index.ts';
import { element } from '../../../render/index.ts';
import { directionOf } from '../../../strings/index.ts';
import type { AssetPaths, SiteFile } from '../../site-data.ts';
import { iconPath } from '../../web-app/icons.ts';
import { boardElement, pageOf, picture } from './embed-elements.ts';
import type { Embed } from './embeds.ts';
import { oEmbedLink } from './oembed.ts';

/** Nothing but the page's own script, picture and type; it may be framed by any site. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'";

/** The pages for frames, one a named position. */
export function makeEmbedPages(
  course: Course,
  embeds: readonly Embed[],
  {
    assets,
    site,
    themeSheet,
  }: {
    readonly assets: AssetPaths;
    readonly site?: string | undefined;
    readonly themeSheet?: string | undefined;
  },
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
      ...(themeSheet === undefined
        ? []
        : [element('link', { rel: ['stylesheet'], href: `../${themeSheet}` }, [])]),
      ...(site === undefined
        ? []
        : [
            element('link', { rel: ['canonical'], href: `${site}/${embed.href}` }, []),
            oEmbedLink(embed, title, site),
          ]),
      element('script', { src: 'board.js', defer: true }, []),
    ]);
    const board = boardElement(embed, '../', [still], { fit: true });
    const body = element('body', {}, [element('main', {}, [board])]);
    const page = element('html', { lang: language, dir: directionOf(language) }, [head, body]);
    const html = toHtml({ type: 'root', children: [{ type: 'doctype' }, page] });
    return { path: decodeURIComponent(pageOf(embed)), content: `${html}\n` };
  });
}
