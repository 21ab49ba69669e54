/**
 * What a site leaves unmade: a page or a file whose print is as it was is left as the last build wrote it, so
 * whatever is edited, an equal print must mean equal content.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { documentsOf } from '../../model/index.ts';
import { coursePart } from '../../publish/book/index.ts';
import { coverBoard } from '../../publish/book/make-book.ts';
import { pgnPart } from '../../publish/pgn/index.ts';
import type { CourseFiles } from '../../read/index.ts';
import { coursePictures } from '../../site/build/images.ts';
import { siteParts } from '../../site/index.ts';
import { renderSite } from '../../site/render/site.ts';
import { createWorkspace } from '../../workspace/index.ts';
import { edit, filesOf, settings } from '../../workspace/testing/edits.ts';
import { keepParts } from './keep-parts.ts';
import { openMemory } from './site-memory.ts';

const cache = mkdtempSync(path.join(tmpdir(), 'linewright-memory-'));
afterAll(() => rmSync(cache, { recursive: true, force: true }));

const place = {
  assets: {
    scripts: { free: 'assets/free.js' },
    styles: { embed: 'assets/embed.css', free: 'assets/free.css' },
    fonts: [],
  },
  offline: false,
  downloads: [],
};

/** All that a site would write, by name: its print, and what it is made of as JSON. */
async function siteOf(files: CourseFiles, folder: string) {
  const current = createWorkspace({ frontMatter: 'optional' }).update(files);
  // Also one with errors, which is never published, but shows as much.
  const course = current.course();
  const moves = pgnPart(undefined);
  const book = coursePart(course, undefined);
  const makers = [...siteParts, moves, book];
  const { print, face } = current;
  const parts = await keepParts(course, { cache, folder, makers, print, face });
  const memory = await openMemory(cache, folder, parts);
  const site = renderSite(course, place, parts, memory);
  const all = new Map<string, { readonly print: string; readonly made: string }>();
  const add = (name: string, print: string | undefined, made: unknown) =>
    all.set(name, { print: print ?? '', made: JSON.stringify(made) });
  for (const { path, print, data } of site.pages) add(path, print?.(), [site.frame, data()]);
  for (const { beginning, print, make } of site.files) add(beginning, print?.(), make());
  for (const { id, print, page } of site.documentPages) {
    const { title, summary, html } = page();
    add(`words of ${id}`, print?.(), [title, summary, html]);
  }
  const pictures = coursePictures(course, site.embeds());
  add(
    'pictures',
    site.print,
    pictures.map((picture) => [picture.path, picture.print()]),
  );
  for (const picture of pictures) add(picture.path, picture.print(), picture.job());
  for (const chapter of documentsOf(course)) {
    add(`moves of ${chapter.id}`, parts.print(moves, chapter), parts.of(moves, chapter));
    add(`${chapter.id} in the book`, parts.print(book, chapter), parts.of(book, chapter));
  }
  // A difference from what is made now is an error: the tests compare.
  add(
    'the cover of the book',
    memory.face,
    memory.recall('cover', () => coverBoard(course)),
  );
  await parts.save();
  await memory.save();
  return all;
}

/** Words behind a chapter, which change nothing else of a course. */
const words = fc.constantFrom(
  'More words.',
  '## A heading',
  '[there](1.md#a-heading)',
  '[](pos:a), :same[b]',
  'Some *other* words.',
);
const title = fc.constantFrom(undefined, undefined, 'First', 'Second');

test('whatever is edited, what has the print that it had is made of the same', async () => {
  let folder = 0;
  let [kept, compared] = [0, 0];
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(edit, words, fc.boolean(), title), { minLength: 3, maxLength: 7 }),
      async (edits) => {
        folder++;
        const texts = new Map<string, string>();
        const titles = new Map<string, string>();
        const made = new Map<string, string>();
        for (const [{ file, text, media, side }, more, isWhole, title] of edits) {
          if (title !== undefined) titles.set(file, title);
          const before = texts.get(file);
          if (isWhole || before === undefined) {
            if (text === undefined) texts.delete(file);
            else texts.set(file, text);
          } else texts.set(file, `${before}\n\n${more}\n`);
          const titled = ([file, text]: readonly [string, string]) => {
            const title = titles.get(file);
            return [file, title === undefined ? text : `---\ntitle: ${title}\n---\n\n${text}`];
          };
          const site = await siteOf(
            filesOf(Object.fromEntries([...texts].sort().map(titled)), {
              media,
              settings: { ...settings, text: settings.text.replace('white', side) },
            }),
            String(folder),
          );
          for (const [name, { print, made: content }] of site) {
            compared++;
            const known = made.get(`${name} ${print}`);
            if (known === undefined) made.set(`${name} ${print}`, content);
            else {
              kept++;
              expect(content, name).toBe(known);
            }
          }
        }
      },
    ),
    { numRuns: runs(20) },
  );
  // The edits leave enough alone for this to mean something.
  expect(kept / compared).toBeGreaterThan(0.1);
});
