import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AstroIntegrationLogger } from 'astro';
import { type CoursePreview, openPreview } from '../dev/index.ts';
import { courseIn } from '../pipeline/index.ts';
import { tellFindings } from './findings.ts';
import type { PlaceInSite } from './place.ts';

/** What Vite hands on; the whole address as it was asked for. */
type ConnectRequest = IncomingMessage & { readonly originalUrl?: string | undefined };

export interface PreviewInSite {
  /** Answers for the pages of the course, and leaves all others to the next. */
  readonly answer: (request: ConnectRequest, response: ServerResponse, next: () => void) => void;
  close(): Promise<void>;
}

/** The pages of a course in `astro dev`, as `linewright dev` has them. */
export function previewIn(place: PlaceInSite, logger: AstroIntegrationLogger): PreviewInSite {
  const { root, folder } = place;
  let opened: Promise<CoursePreview> | undefined;
  const open = () => {
    opened ??= openPreview({
      folder,
      root,
      source: courseIn(folder),
      report: {
        read: (loaded) => tellFindings(loaded, logger),
        shown: () => logger.info(`${root} is up to date`),
        unshown: (why) => logger.warn(why),
        failed: (message) => logger.error(message),
      },
    });
    return opened;
  };
  open().catch((error: unknown) => logger.error(String(error)));
  return {
    answer(request, response, next) {
      // Astro takes its base away before others see the address.
      const { originalUrl = request.url ?? '/' } = request;
      const [path = '', query = ''] = originalUrl.split(/(?=\?)/, 2);
      if (`${path}/` === root) {
        response.writeHead(302, { location: root + query });
        response.end();
        return;
      }
      if (!path.startsWith(root)) return next();
      request.url = originalUrl.slice(root.length - 1);
      open().then((preview) => preview.answer(request, response), next);
    },
    close: async () => (await opened)?.close(),
  };
}
