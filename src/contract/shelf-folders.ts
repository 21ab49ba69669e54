import { wordFolder } from './word-folders.ts';

/** The folders that the shelf's own pages have at the root of the site: no course can have one of these names. */
export const shelfFolders: readonly string[] = [
  'assets',
  'boards',
  'icons',
  'images',
  'media',
  wordFolder,
];
