import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AstroIntegrationLogger } from 'astro';
import { type CoursePreview, openPreview } from '../dev/index.ts';
import type { Course } from '../model/index.ts';
import { courseIn, type LoadedCourse } from '../pipeline/index.ts';
import { hostedLookSheet } from '../site/index.ts';
import { tellFindings } from './findings.ts';
import type { PlaceInSite } from './place.ts';

/** What Vite hands on; the whole address as it was asked for. */
export type ConnectRequest = IncomingMessage & { readonly originalUrl?: string | undefined };

export interface PreviewInSite {
  /** Answers for the pages of the course, and leaves all others to the next. */
  readonly answer: (request: ConnectRequest, response: ServerResponse, next: () => void) => void;
  /** The pages that have the site's layout. */
  readonly hosted: () => Promise<readonly string[]>;
  /** A page as `linewright dev` serves it. */
  readonly page: (file: string) => Promise<string | undefined>;
  /** The course as it was read last. */
  readonly course: () => Promise<Course | undefined>;
  close(): Promise<void>;
}

/**
 * The pages of a course in `astro dev`, as `linewright dev` has them.
 * @param onPages is called when the course has other pages than before, with how often that was.
 */
export function previewIn(
  place: PlaceInSite,
  logger: AstroIntegrationLogger,
  onPages: (edition: number) => void,
): PreviewInSite {
  const { root, folder, layout, path, trailingSlash } = place;
  let pages: string | undefined;
  let edition = 0;
  const shown = ({ course }: LoadedCourse) => {
    const before = pages;
    pages = course.chapters.map(({ id }) => id).join();
    if (before !== undefined && before !== pages) onPages(++edition);
    logger.info(`${root} is up to date`);
  };
  let opened: Promise<CoursePreview> | undefined;
  const open = () => {
    opened ??= openPreview({
      folder,
      root,
      source: courseIn(folder),
      report: {
        read: (loaded) => tellFindings(loaded, logger),
        shown,
        unshown: (why) => logger.warn(why),
        failed: (message) => logger.error(message),
      },
    });
    return opened;
  };
  const hosted = async () => {
    const { chapters = [] } = (await open()).loaded()?.course ?? {};
    return layout === undefined ? [] : ['index.html', ...chapters.map(({ id }) => `${id}.html`)];
  };
  /** The page of Astro's that an address of the course is answered with. */
  const pageOfSite = async (asked: string): Promise<string | undefined> => {
    const name = decodeURI(asked).replace(/\.html$|\/$/, '') || 'index';
    if (!(await hosted()).includes(`${name}.html`)) return undefined;
    const to = name === 'index' ? `/${path}` : `/${path}/${encodeURI(name)}`;
    return trailingSlash === 'always' ? `${to}/` : to;
  };
  open().catch((error: unknown) => logger.error(String(error)));

  const answer = async (request: ConnectRequest, response: ServerResponse, next: () => void) => {
    // Astro takes its base away before others see the address.
    const { originalUrl = request.url ?? '/' } = request;
    const [asked = '', query = ''] = originalUrl.split(/(?=\?)/, 2);
    if (`${asked}/` === root && layout === undefined) {
      response.writeHead(302, { location: root + query });
      response.end();
      return;
    }
    if (!`${asked}/`.startsWith(root)) return next();
    const page = await pageOfSite(asked.slice(root.length));
    if (page !== undefined) {
      request.url = page + query;
      return next();
    }
    const { course } = (await open()).loaded() ?? {};
    const look = course && hostedLookSheet(course);
    if (look && asked === root + look.path) {
      response.writeHead(200, { 'content-type': 'text/css', 'cache-control': 'no-store' });
      response.end(look.content);
      return;
    }
    request.url = originalUrl.slice(root.length - 1);
    (await open()).answer(request, response);
  };
  return {
    answer: (request, response, next) => {
      answer(request, response, next).catch(next);
    },
    hosted,
    page: async (file) => (await open()).page(file),
    course: async () => (await open()).loaded()?.course,
    close: async () => (await opened)?.close(),
  };
}
