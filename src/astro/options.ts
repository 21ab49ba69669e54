import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import * as z from 'zod';
import { shelfFile } from '../read/index.ts';
import { siteError } from './site-error.ts';

export interface CourseOptions {
  /** Folder of the course, from the root of the Astro project. */
  readonly course: string;
  /** Where its pages stand in the site, such as `/courses/italian`. */
  readonly path: string;
  /**
   * A layout of the site, which chapters and contents are shown in: a component with a default slot that takes `title`,
   * `description` and, for layouts that want those so, `frontmatter`. Without one they have the course's own.
   */
  readonly layout?: string | undefined;
}

export interface CourseInSite {
  /** As its author gave it. */
  readonly given: CourseOptions;
  readonly folder: string;
  /** Where it stands, without slashes at its ends: `courses/italian`. */
  readonly path: string;
  /** What the layout is imported from: a file's path, or a package's name for it. */
  readonly layout?: string | undefined;
}

const course = z.strictObject({
  course: z.string().min(1),
  path: z.string().regex(/^\/*[\w.~-]+(?:\/[\w.~-]+)*\/*$/, {
    error:
      'a path in the site, of letters, digits, hyphens and slashes, such as `/courses/italian`',
  }),
  layout: z.string().min(1).optional(),
});

/**
 * Reads what the integration was given.
 * @param root address of the Astro project.
 * @throws AstroUserError that names the option, for what is not there or stands twice.
 */
export function readOptions(
  options: CourseOptions | readonly CourseOptions[],
  root: URL,
): CourseInSite[] {
  const all = Array.isArray(options) ? options : [options];
  const found = all.map((each, index) => {
    const name = (key: string) =>
      all.length === 1 ? `\`${key}\`` : `\`${key}\` of course ${index + 1}`;
    const read = course.safeParse(each);
    if (!read.success) {
      const [issue] = read.error.issues;
      throw siteError(
        `${name(String(issue?.path[0] ?? 'course'))} is not as it must be: ${issue?.message}`,
        "write `linewright({ course: './my-course', path: '/courses/italian' })`",
      );
    }
    const folder = path.resolve(fileURLToPath(root), read.data.course);
    if (!existsSync(path.join(folder, 'course.yaml'))) {
      if (existsSync(path.join(folder, shelfFile))) {
        throw siteError(
          `\`${read.data.course}\` is a shelf of several courses, not a course: ${folder}`,
          `give each course that its ${shelfFile} names a \`path\` of its own: \`linewright([{ course: '${read.data.course.replace(/\/+$/, '')}/…', path: '/courses/…' }, …])\``,
        );
      }
      const what = existsSync(folder) ? 'has no `course.yaml`' : 'is not there';
      throw siteError(
        `the course in \`${read.data.course}\` cannot be read: ${folder} ${what}`,
        `${name('course')} names its folder, from the root of the Astro project`,
      );
    }
    const layout = read.data.layout && findLayout(read.data.layout, root, name('layout'));
    return { given: each, folder, layout, path: read.data.path.replaceAll(/^\/+|\/+$/g, '') };
  });
  for (const [index, each] of found.entries()) {
    const other = found.slice(0, index).find((before) => isWithin(before.path, each.path));
    if (other === undefined) continue;
    throw siteError(
      `two courses would stand in one place: \`${other.given.course}\` at /${other.path} and \`${each.given.course}\` at /${each.path}`,
      'give each a `path` that lies beside the others',
    );
  }
  return found;
}

function findLayout(given: string, root: URL, name: string): string {
  if (!/^[./]/.test(given)) return given;
  const file = path.resolve(fileURLToPath(root), given);
  if (existsSync(file)) return file;
  throw siteError(
    `the layout \`${given}\` is not there: ${file}`,
    `${name} names a component, from the root of the Astro project`,
  );
}

/** Whether one path is the other or leads to it. */
function isWithin(one: string, other: string): boolean {
  return `${one}/`.startsWith(`${other}/`) || `${other}/`.startsWith(`${one}/`);
}
