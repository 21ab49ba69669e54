import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Diagnostic, Place } from '../diagnostics/index.ts';
import type { LoadedCourse } from '../pipeline/index.ts';
import type { CoursePreview, CoursePreviewOptions } from './preview-course.ts';

/**
 * The translations of a course that is previewed, each below its tag and opened when one of its pages is asked for.
 * @param openPreview opens the preview of one: a translation is previewed as its original is
 */
export function openTranslations(
  { translated, ...options }: CoursePreviewOptions,
  loaded: () => LoadedCourse | undefined,
  openPreview: (options: CoursePreviewOptions) => Promise<CoursePreview>,
) {
  const { root = '/', source, report } = options;
  const opened = new Map<string, Promise<CoursePreview>>();
  const open = (tag: string, from: string) => {
    const preview = openPreview({
      ...options,
      source: { ...source, ...source.inLanguage(tag) },
      root: `${root}${tag}/`,
      translated: { tag, from },
      // What is found is on its pages; `check` tells it with the rest.
      report: {
        read: () => {},
        shown: () => {},
        unshown: (why) => report.unshown(`${tag}: ${why}`),
        failed: (message) => report.failed(`${tag}: ${message}`),
      },
    });
    opened.set(tag, preview);
    // One that could not be opened is tried again.
    preview.catch(() => opened.delete(tag));
    return preview;
  };
  return {
    /** @param others answers what is asked of no translation. */
    answer(request: IncomingMessage, response: ServerResponse, others: () => void): void {
      const [, tag = '', rest = ''] = /^\/([^/?#]*)(.*)$/s.exec(request.url ?? '') ?? [];
      const course = translated ? undefined : loaded();
      const known = course?.translations.some((each) => each.tag === tag);
      if (course === undefined || (!known && !opened.has(tag))) {
        others();
        return;
      }
      if (!rest.startsWith('/')) {
        response.writeHead(302, { location: `${root}${tag}/${rest}` }).end();
        return;
      }
      const preview = opened.get(tag) ?? open(tag, course.course.settings.language);
      request.url = rest;
      preview.then(
        ({ answer }) => answer(request, response),
        () => others(),
      );
    },
    async close(): Promise<void> {
      await Promise.allSettled([...opened.values()].map(async (each) => (await each).close()));
    },
  };
}

/** A translation has files of its own, and its course has them under the names of the original. */
export function namesOfTranslation(tag: string) {
  const folder = `translations/${tag}`;
  const named = (place: Place): Place =>
    place.file.startsWith(`${folder}/`)
      ? { ...place, file: place.file.slice(folder.length + 1) }
      : place;
  return {
    /** Under its own name. */
    fileOf: (file: string) => (file.startsWith(`${folder}/`) ? file : `${folder}/${file}`),
    /** With its findings where the pages have them. */
    asOriginal: (loaded: LoadedCourse): LoadedCourse => ({
      ...loaded,
      diagnostics: loaded.diagnostics.map(
        (finding): Diagnostic => ({
          ...finding,
          place: named(finding.place),
          related: finding.related.map((each) => ({ ...each, place: named(each.place) })),
        }),
      ),
    }),
  };
}
