/** The id that a title or a heading gives: its words in small letters, joined by hyphens. */
export function slug(words: string): string {
  const id = words
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return id === '' ? 'section' : id;
}
