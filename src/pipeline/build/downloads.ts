import { createHash } from 'node:crypto';
import type { CheckedCourse } from '../../check/index.ts';
import { readPlainFile } from '../../files/index.ts';
import { type Chapter, courseId, documentsInBook } from '../../model/index.ts';
import type { PackedFiles } from '../../publish/book/index.ts';
import { type PartMaker, type Parts, printPart } from '../../render/index.ts';
import type { Keep, SiteDownload, SiteMemory } from '../../site/index.ts';
import { courseBook } from './course-book.ts';
import { courseDate } from './course-date.ts';

/** Makers of a chapter's part of each file. */
export interface FileMakers {
  readonly book: PartMaker<unknown>;
  readonly moves: PartMaker<unknown>;
}

/** The downloads of a site: the e-book, and PGN of the course and of each chapter. */
export function courseDownloads(
  checked: CheckedCourse,
  folder: string,
  {
    site,
    parts,
    remembered,
    ...kept
  }: {
    readonly site?: string | undefined;
    readonly parts?: Parts | undefined;
    /** The memory of earlier builds, and what the files are made by. */
    readonly remembered?: { readonly memory: SiteMemory; readonly makers: FileMakers } | undefined;
    /** Keeps the whole book. */
    readonly keep?: Keep | undefined;
    /** Opens the files in it as they were packed before. */
    readonly packed?: (() => Promise<PackedFiles>) | undefined;
  },
): SiteDownload[] {
  const { chapters } = checked.course;
  const inBook = documentsInBook(checked.course);
  const prints = remembered && printsOf(remembered.memory, chapters);
  const makers = remembered?.makers;
  const bookInputs = async () => [
    place,
    courseDate(checked.course)?.toISOString() ?? '',
    await mediaHash(checked, folder),
  ];
  const name = courseId(checked.course);
  const place = site ?? '';
  return [
    {
      kind: 'book',
      path: `files/${name}.epub`,
      make: async () => {
        const { packed, keep = (_kind, _inputs, make) => make() } = kept;
        const recall = remembered?.memory.recall;
        return keep('book', await bookInputs(), async () =>
          courseBook(checked, folder, { site, parts, packed: await packed?.(), recall }),
        );
      },
      print: prints && makers && (async () => prints(makers.book, inBook, await bookInputs())),
    },
    {
      kind: 'moves',
      path: `files/${name}.pgn`,
      async make() {
        const { makePgn } = await import('../../publish/pgn/index.ts');
        return Buffer.from(makePgn(checked, { site, parts }));
      },
      print: prints && makers && (async () => prints(makers.moves, chapters)),
    },
    ...chapters.map((chapter): SiteDownload => {
      const { id } = chapter;
      return {
        kind: 'moves',
        chapter: id,
        path: `files/chapters/${id}.pgn`,
        async make() {
          const { makePgn } = await import('../../publish/pgn/index.ts');
          return Buffer.from(makePgn(checked, { chapter: id, site, parts }));
        },
        print: prints && makers && (async () => prints(makers.moves, [chapter])),
      };
    }),
  ];
}

/** A print of a file made of parts of chapters, of the rest of the course, and of more. */
function printsOf({ face, print }: SiteMemory, all: readonly Chapter[]) {
  return (maker: PartMaker<unknown>, chapters: readonly Chapter[], more: unknown = null): string =>
    printPart(
      JSON.stringify([
        // The PGN file of a chapter is its part.
        chapters.length >= all.length ? face : '',
        more,
        chapters.map((chapter) => print(maker, chapter)),
      ]),
    );
}

/** Bytes of the largest picture in a book. */
const largest = 50_000_000;

/** A hash of a book's pictures and typefaces; the maker of the book reports what cannot be read. */
async function mediaHash({ course }: CheckedCourse, folder: string): Promise<string> {
  const hash = createHash('sha256');
  const pictures = documentsInBook(course).flatMap(({ media }) => media);
  const faces = course.theme?.look.faces.flatMap(({ files }) => files.map(({ file }) => file));
  for (const file of new Set([...pictures, ...(faces ?? [])])) {
    const read = await readPlainFile(folder, file, largest).catch(() => undefined);
    hash.update(JSON.stringify([file, read?.size])).update(read?.bytes ?? '');
  }
  return hash.digest('hex');
}
