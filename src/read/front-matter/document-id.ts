import { topOf } from '../../diagnostics/index.ts';
import type { TextContext } from '../text-context.ts';
import { isLongId } from './front-texts.ts';

/** Names that the published site uses for pages and folders of its own. */
export const reservedIds: readonly string[] = [
  '404',
  'assets',
  'boards',
  'changes',
  'compare',
  'exercises',
  'files',
  'images',
  'index',
  'media',
  'news',
  'notes',
  'offline',
  'patterns',
  'positions',
  'practice',
  'print',
  'search',
  'signs',
  'tree',
];

/** The id of a chapter or a page whose front matter gives none. */
export function idFromFile(file: string): string {
  const id = nameOfFile(file);
  return reservedIds.includes(id) ? `chapter-${id}` : id;
}

/** `chapters/02-Quiet lines.md` gives `quiet-lines`: the number only orders the files. */
function nameOfFile(file: string): string {
  const name = file.replace(/^.*\//, '').replace(/\.md$/, '');
  const plain = (text: string) =>
    text
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '');
  return plain(name.replace(/^\d+[\s._-]*/, '')) || plain(name) || 'chapter';
}

/** Reports a name that no file of the site can have. */
export function reportId(
  id: string,
  file: string,
  front: { readonly id?: string | undefined; readonly page?: unknown },
  report: TextContext['report'],
): void {
  const what = front.page ? 'page' : 'chapter';
  if (isLongId(id)) {
    report({
      place: topOf(file),
      message: `The name of this ${what} is too long for the files that are made of it.`,
      hint: 'Give it a shorter `id: …` in its front matter, or another file name.',
    });
  }
  const own = nameOfFile(file);
  // A chapter with such a name has always got a longer address. A page keeps its name as its address, which people
  // type and print.
  if (!front.page || front.id !== undefined || !reservedIds.includes(own)) return;
  report({
    place: topOf(file),
    message: `This page would be published as ${own}.html, and the site has a page or folder of that name.`,
    hint: 'Give it another file name, or an `id: …` in its front matter.',
  });
}
