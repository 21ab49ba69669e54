import type { Element } from 'hast';
import { element } from '../../../render/index.ts';
import type { Embed } from './embeds.ts';

/** The script that other sites include; its name stays the same. */
export const embedScript = 'boards/board.js';

/** Width of a board as the snippets ask for it, in CSS pixels. */
const width = 400;
/** What a frame needs besides, for the lines under the board. */
const lines = 76;

/** The size of a frame, in CSS pixels. */
export const frameSize = { width, height: width + lines };

/** Where the picture of a named position stands, and its width and height in pixels. */
export function positionPicture({ name }: Pick<Embed, 'name'>): string {
  return `images/positions/${encodeURIComponent(name)}.png`;
}
export const positionPictureSize = 560;

export function pageOf({ name }: Pick<Embed, 'name'>): string {
  return `boards/${encodeURIComponent(name)}.html`;
}

/** A board in a frame. @param root address of the site, with a final `/`. */
export function frame(embed: Embed, root: string): Element {
  const { height } = frameSize;
  const style = `border:0;width:${width}px;max-width:100%;height:auto;aspect-ratio:${width}/${height}`;
  const src = root + pageOf(embed);
  return element('iframe', { src, width, height, style, loading: 'lazy', title: embed.words }, []);
}

/** A picture that leads into the course. @param root as of `frame`; or a relative way to the site. */
export function picture(embed: Embed, root: string): Element {
  const src = root + positionPicture(embed);
  return element('a', { href: root + embed.href, target: root === '../' ? '_top' : undefined }, [
    element('img', { src, alt: embed.alt, width, height: width }, []),
  ]);
}

/** The element that `boards/board.js` defines. */
export function boardElement(
  embed: Embed,
  root: string,
  inside: readonly Element[],
  more: Readonly<Record<string, boolean>> = {},
): Element {
  return element('course-board', { ...more, ...embed.attributes, href: root + embed.href }, inside);
}
