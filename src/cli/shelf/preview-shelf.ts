import type { IncomingMessage, ServerResponse } from 'node:http';
import sirv from 'sirv';
import { inShelf } from '../../check/index.ts';
import { answerFile, answerMissing, type CoursePreview, openPreview } from '../../dev/index.ts';
import { lookWithin, openShelf, type ShelvedCourse } from '../../pipeline/shelf/index.ts';
import { decodeAddress } from '../../read/index.ts';
import { assetsFolder } from '../../site/index.ts';
import { stderr, stdout } from '../console.ts';
import { courseIn, type LoadedCourse } from '../load-course.ts';
import { shelfPage } from './shelf-page.ts';

/** Previews of a shelf's courses, each below its id, as when published. */
export interface ShelfPreview {
  readonly answer: (request: IncomingMessage, response: ServerResponse) => Promise<void>;
  close(): Promise<void>;
}

/** Opens a course at the first request for one of its pages, then follows its files. */
export function previewShelf(folder: string, editor?: string): ShelfPreview {
  const opened = new Map<string, Promise<CoursePreview>>();
  const open = (course: ShelvedCourse, shelf: Awaited<ReturnType<typeof openShelf>>) => {
    const at = shelf.folderOf(course);
    const told = ({ diagnostics, textOf }: LoadedCourse) => ({
      diagnostics: diagnostics.map((finding) => inShelf(finding, course.path)),
      textOf: (file: string) => textOf(file.slice(course.path.length + 1)),
    });
    return openPreview({
      folder: at,
      source: courseIn(at, undefined, lookWithin(shelf, new Map())),
      root: `/${encodeURIComponent(course.id)}/`,
      editor,
      report: {
        read: (loaded) => stdout.printFindings(told(loaded)),
        shown: () =>
          stdout.print`${new Date().toLocaleTimeString()}  ${course.path}: the pages are up to date.\n`,
        unshown: (why) => stdout.print`${course.path}: ${why}\n`,
        failed: (message) => stderr.printLines(`${course.path}: ${message}\n`),
      },
    });
  };

  const assets = sirv(assetsFolder, { dev: true });
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    // No page of another site shows one of these, where a click might be stolen.
    response.setHeader('x-frame-options', 'SAMEORIGIN');
    const [, name = '', rest] = /^\/([^/?#]*)([/?#].*)?$/s.exec(request.url ?? '/') ?? [];
    if (name === 'assets' && rest !== undefined) {
      request.url = rest;
      assets(request, response, () => answerMissing(response));
      return;
    }
    const shelf = await openShelf(folder);
    const isList = name === '' || name === 'index.html';
    const course = shelf.courses.find(({ id }) => id === decodeAddress(name));
    if (isList || course === undefined) {
      return answerFile(response, 'index.html', await shelfPage(shelf), isList ? 200 : 404);
    }
    if (!rest?.startsWith('/')) {
      response.writeHead(302, { location: `/${name}/${rest ?? ''}` }).end();
      return;
    }
    const preview = opened.get(course.path) ?? open(course, shelf);
    opened.set(course.path, preview);
    // Tries again after a failure.
    preview.catch(() => opened.delete(course.path));
    const { answer } = await preview;
    request.url = rest;
    answer(request, response);
  };
  return {
    answer,
    async close() {
      const closing = [...opened.values()].map(async (preview) => (await preview).close());
      await Promise.allSettled(closing);
    },
  };
}
