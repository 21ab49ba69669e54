import path from 'node:path';
import { type FontFace, faceCss, type Look, measureIn } from '../../look/index.ts';
import type { Course } from '../../model/index.ts';
import { readFitFile } from '../fit-file.ts';
import type { BookPicture } from './media.ts';

/** The kinds of type that every reading system takes (EPUB 3.3, section 3.2), by the ending of a file. */
const types: Readonly<Record<string, string>> = {
  '.otf': 'font/otf',
  '.ttf': 'font/ttf',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/** The faces that a book is set in: of a theme's, those that text and titles name. */
function facesOf(look: Look | undefined): readonly FontFace[] {
  const named = ['text-face', 'title-face'] as const;
  const used = named.map((name) => look?.measures.screen[name] ?? '').join(', ');
  return (look?.faces ?? []).filter(({ family }) => used.includes(JSON.stringify(family)));
}

function pathsOf(faces: readonly FontFace[]): ReadonlyMap<string, string> {
  const files = new Set(faces.flatMap(({ files }) => files.map(({ file }) => file)));
  return new Map(
    [...files].map((file, index) => [
      file,
      `media/face-${index + 1}${path.extname(file).toLowerCase()}`,
    ]),
  );
}

/** The files of those faces, as a book has them. */
export async function readFaces(course: Course, folder: string): Promise<BookPicture[]> {
  const found: BookPicture[] = [];
  for (const [file, at] of pathsOf(facesOf(course.theme?.look))) {
    const type = types[path.extname(at)] ?? '';
    found.push({ path: at, type, bytes: await readFitFile(folder, file) });
  }
  return found;
}

/**
 * What the style sheet of a book says of them; nothing where a theme has none, since then the reader's own type rules.
 * Colours stay the reader's in any case: a page of a book may be dark, or grey.
 */
export function faceStyles({ theme }: Course): string {
  const faces = facesOf(theme?.look);
  if (faces.length === 0) return '';
  const paths = pathsOf(faces);
  const set = (selector: string, name: 'text-face' | 'title-face') => {
    const value = measureIn(theme?.look, name, 'light') ?? '';
    return theme?.look.measures.screen[name] === undefined || value.startsWith('var(')
      ? []
      : [`${selector} { font-family: ${value}; }`];
  };
  return [
    ...faces.map((face) => faceCss(face, (file) => paths.get(file) ?? file)),
    ...set('body', 'text-face'),
    ...set('h1, h2, h3, h4', 'title-face'),
    '',
  ].join('\n');
}
