import { drawBoardInPage } from '../../draw/index.ts';
import type { Addresses } from '../addresses.ts';
import type { Target } from '../document.ts';
import type { Medium } from './medium.ts';

/**
 * A page of the site: its boards are inline, and a script moves the one beside the text.
 * @param from the file of the page's chapter, if it shows one.
 */
export function pageMedium(addresses: Addresses, from?: string): Medium {
  return {
    isLive: true,
    numbersDiagrams: true,
    board: (picture) => ({ type: 'raw', value: drawBoardInPage(picture) }),
    addressOf: (target) => addressInSite(target, addresses, from),
  };
}

/** The address of a target, relative to the page of a chapter, or to the site's root. */
export function addressInSite(target: Target, addresses: Addresses, from?: string): string {
  switch (target.to) {
    case 'place':
      return addresses.href(target.ref, from);
    case 'chapter': {
      const { chapter, query = '', id } = target;
      const page = chapter === from ? '' : addresses.page(chapter);
      return page + query + (id === undefined ? '' : `#${encodeURIComponent(id)}`);
    }
    case 'course':
      return target.beside ?? target.web ?? '';
    case 'note':
      return `#${encodeURIComponent(target.id)}`;
    default:
      return target.address;
  }
}
