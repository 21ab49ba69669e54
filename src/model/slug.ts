/** The id made from a title or a heading: its words in lower case, joined by hyphens. */
export function slug(words: string): string {
  const id = words
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return id === '' ? 'section' : id;
}
