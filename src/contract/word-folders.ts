/** Where the index for the search by words lies in a site. */
export const wordFolder = 'pagefind';

/** A chapter that changes has the index of so many made again; fewer would have a browser fetch more files. */
const chaptersInPart = 100;

/**
 * The folders of the index for the search by words, relative to the site: one for a short course, else one for each
 * hundred chapters. The first has the script that searches all.
 */
export function wordFolders(chapters: number): readonly string[] {
  const count = Math.max(1, Math.floor(chapters / chaptersInPart));
  return Array.from({ length: count }, (_, index) =>
    index === 0 ? wordFolder : `${wordFolder}/part-${index + 1}`,
  );
}
