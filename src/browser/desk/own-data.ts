import { dataOf } from '../../contract/attributes.ts';

/** What the server gave the script that is being run: its element is known only now. */
export const ownData = dataOf('desk', document.currentScript as HTMLScriptElement);

/** Where the site that the page belongs to is served. */
export const siteRoot = ownData.root ?? '/';
