import { candidatePaths } from './candidate-paths.ts';
import { fileAddress } from './file-address.ts';
import { suggestTarget } from './suggest.ts';

/** The files of a course that a link may lead to, by their paths. */
export interface LinkTargets {
  readonly chapters: ReadonlySet<string>;
  readonly media: ReadonlySet<string>;
}

type Resolved =
  | { readonly url: string; readonly media?: string }
  | { readonly problem: { readonly message: string; readonly hint: string } };

/**
 * Finds the file that a link names, a chapter relative to this one or something in `media/`, and returns its path
 * from the course folder. Absolute addresses, headings and pages of the site stay as they are: their targets are not
 * known here.
 */
export function resolveLink(
  url: string,
  chapter: string,
  { chapters, media }: LinkTargets,
): Resolved {
  const [, written = '', rest = ''] = /^([^?#]*)(.*)$/s.exec(url) ?? [];
  if (written === '' || /^(?:[a-z][a-z0-9+.-]*:|\/|.*\.html$)/i.test(written)) return { url };
  const { file, paths } = candidatePaths(written, chapter);
  const inMedia = paths.find((candidate) => media.has(candidate));
  if (inMedia !== undefined) return { url: fileAddress(inMedia) + rest, media: inMedia };
  const inChapters = paths.find((candidate) => chapters.has(candidate));
  if (inChapters !== undefined) return { url: fileAddress(inChapters) + rest };
  const near = suggestTarget(chapter, { chapters, media }, file);
  return {
    problem: {
      message: `This link leads to ${url}, and nothing of that name is published.`,
      hint: near
        ? `Did you mean \`${near}\`?`
        : 'Name a chapter as `….md`, a file as `media/…`, or a whole address that begins with `https://`.',
    },
  };
}
