import type { Element } from 'hast';
import { toHtml } from 'hast-util-to-html';
import type { Course } from '../../../model/index.ts';
import { element } from '../../../render/index.ts';
import type { SiteFile } from '../../site-data.ts';
import { frame, frameSize, positionPicture, positionPictureSize } from './embed-elements.ts';
import type { Embed } from './embeds.ts';

/**
 * What a site that is given the address of a board's page asks for (oEmbed 1.0, section 2.3.4.4, type `rich`).
 * A file cannot heed `maxwidth` and `maxheight`, as an address with a program behind it must (2.2): so the
 * board is small, and its frame shrinks with the column that it stands in.
 */
export function oEmbedFiles(course: Course, embeds: readonly Embed[], site: string): SiteFile[] {
  const { title, author } = course.settings;
  return embeds.map((embed) => {
    const answer = {
      version: '1.0',
      type: 'rich',
      title: titleOf(embed, title),
      ...(author !== undefined && { author_name: author }),
      provider_name: title,
      provider_url: `${site}/`,
      html: toHtml(frame(embed, `${site}/`)),
      ...frameSize,
      thumbnail_url: `${site}/${positionPicture(embed)}`,
      thumbnail_width: positionPictureSize,
      thumbnail_height: positionPictureSize,
    };
    return { path: decodeURIComponent(pathOf(embed)), content: `${JSON.stringify(answer)}\n` };
  });
}

/** By which it is found (section 4). */
export function oEmbedLink(embed: Embed, course: string, site: string): Element {
  const href = `${site}/${pathOf(embed)}`;
  const type = 'application/json+oembed';
  return element('link', { rel: ['alternate'], type, href, title: titleOf(embed, course) }, []);
}

function pathOf({ name }: Embed): string {
  return `boards/${encodeURIComponent(name)}.json`;
}

function titleOf({ words }: Embed, course: string): string {
  return `${words} – ${course}`;
}
