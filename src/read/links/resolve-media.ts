import { candidatePaths } from './candidate-paths.ts';
import { suggestBasename } from './suggest.ts';

/**
 * Finds the picture that a chapter names, relative to the chapter or to the course folder. Only files in `media/` are
 * published, so nothing else can be named.
 */
export function resolveMedia(
  url: string,
  chapter: string,
  media: ReadonlySet<string>,
): { path: string } | { problem: { message: string; hint: string } } {
  if (/^data:/i.test(url)) {
    return {
      problem: {
        message: 'This picture stands in its address, and many hosts forbid that.',
        hint: 'Save it as a file in the media/ folder of the course and name that.',
      },
    };
  }
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(url)) {
    return {
      problem: {
        message: `The picture ${url} would be fetched from another site.`,
        hint: 'Put a copy into the media/ folder of the course and name that: nothing on a published page may ask another site.',
      },
    };
  }
  const { file, paths } = candidatePaths(url.replace(/[?#].*$/, ''), chapter);
  const found = paths.find((candidate) => media.has(candidate));
  if (found !== undefined) return { path: found };
  if (file.startsWith('/') || paths.every((candidate) => candidate.startsWith('..'))) {
    return {
      problem: {
        message: `The picture ${url} lies outside the course folder.`,
        hint: 'Put a copy into the media/ folder of the course and name it as `media/…`.',
      },
    };
  }
  const near = suggestBasename(media, file);
  return {
    problem: {
      message: `There is no picture ${url} in the media/ folder of the course.`,
      hint: near
        ? `Did you mean \`media/${near}\`?`
        : 'Pictures belong in media/; name one as `media/…`.',
    },
  };
}
