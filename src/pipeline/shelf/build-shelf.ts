import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import type { CourseEntry } from '../../check/index.ts';
import type { BuiltCourse, Shelf } from '../../contract/index.ts';
import { areUnchanged, beginReplacement, type FileStamps, takeStamps } from '../../output/index.ts';
import type { ShelvedFolder } from '../../read/index.ts';
import type { SiteOptions } from '../../site/index.ts';
import type { CourseBuild, CourseBuildOptions } from '../build/index.ts';
import { cacheFolder } from '../cache-folder.ts';
import { readKeptResults } from '../kept-results.ts';
import { filesIn, type LazyCourse, loadLazilyToPublish, type Progress } from '../load-course.ts';
import { keepCourse } from './keep-course.ts';
import { lookWithin } from './look-around.ts';
import type { CourseSeen, OpenShelf, ShelfFindings } from './open-shelf.ts';

export interface ShelfBuildOptions extends Pick<SiteOptions, 'base' | 'site' | 'onProgress'> {
  /** Real path of the output, as `prepareOutput` gives it. */
  readonly out: string;
  readonly progress?: Progress | undefined;
}

export interface ShelfBuild {
  readonly findings: ShelfFindings;
  readonly chapters: number;
  /** Absent if an error kept it from being published. */
  readonly published?: ShelfPublished;
}

/** A course in the site of its shelf. */
export interface BuiltPart {
  readonly course: ShelvedFolder;
  readonly id: string;
  readonly build: CourseBuild;
}

export interface ShelfPublished {
  readonly courses: readonly BuiltPart[];
  /** The files at the root of the site and beside the courses. */
  readonly own: readonly string[];
  /** Files in the output that no build wrote, which were kept. */
  readonly carried: readonly string[];
}

/**
 * Publishes a shelf as one site: each course by the ordinary build, in the folder of its id, then the shelf's own pages.
 * Courses are opened, checked and built one by one; after an error the rest are only checked.
 * @throws UserError for what the author can mend; the earlier site then stands.
 */
export async function buildShelf(shelf: OpenShelf, given: ShelfBuildOptions): Promise<ShelfBuild> {
  const { courses } = shelf;
  const { problems, settings } = shelf.files;
  const options = { ...given, site: (given.site ?? settings.site)?.replace(/\/+$/, '') };
  const replacement = await beginReplacement(options.out);
  try {
    const seen: CourseSeen[] = [];
    const built = new Map<string, BuiltPart>();
    const entries = new Map<string, CourseEntry>();
    const lookAround = lookWithin(shelf, entries, options.site);
    let chapters = 0;
    let isSound = problems.length === 0;
    for (const course of courses) {
      const folder = shelf.folderOf(course);
      const files = await filesIn(folder, { lookAround });
      const place = whereBuilt(course.id, shelf, options);
      const facts = await readKeptResults(cacheFolder(), path.resolve(folder));
      const told = [facts, place, process.env.SOURCE_DATE_EPOCH];
      const keeper = await keepCourse<KeptBuild>('build', folder, files, told);
      const kept = await keeper.read();
      if (kept && isSound && !built.has(course.id) && areUnchanged(place.out, kept.stamps)) {
        const { seen: before, build } = kept;
        seen.push({ course, ...before });
        entries.set(course.path, before.entry);
        chapters += before.chapters;
        await replacement.carry(course.id, build.files);
        const again = { ...build, remember: async () => {} };
        built.set(course.id, { course, id: course.id, build: again });
        continue;
      }
      const loaded = await loadLazilyToPublish(folder, { progress: options.progress, files });
      const now = { entry: loaded.entry(), diagnostics: loaded.diagnostics };
      entries.set(course.path, now.entry);
      seen.push({ course, ...now });
      const ofCourse = loaded.course.chapters.length;
      chapters += ofCourse;
      isSound &&= loaded.checked !== undefined && !built.has(course.id);
      if (!isSound) continue;
      const within = { site: replacement, path: course.id };
      const build = await buildPart(loaded, { ...options, ...place, folder, within });
      const { remember, ...plain } = build;
      const keep = async () => {
        await remember();
        const stamps = takeStamps(place.out, build.files);
        const value = { seen: { ...now, chapters: ofCourse }, build: plain };
        if (stamps) await keeper.write({ ...value, stamps });
      };
      built.set(course.id, { course, id: course.id, build: { ...build, remember: keep } });
    }
    const findings = shelf.findings(seen);
    const hasError = findings.all.some(({ severity }) => severity === 'error');
    if (hasError || !isSound) return { findings, chapters };
    const parts = [...built.values()];
    const own = await writeOwn(shelf, parts, { ...options, folder: replacement.folder });
    const carried = await replacement.replace();
    for (const { build } of parts) await build.remember();
    return { findings, chapters, published: { courses: parts, own, carried } };
  } finally {
    await replacement.end();
  }
}

/** What is kept of a course's build until the course changes. */
interface KeptBuild {
  readonly seen: Pick<CourseSeen, 'entry' | 'diagnostics'> & { readonly chapters: number };
  readonly build: Omit<CourseBuild, 'remember'>;
  readonly stamps: FileStamps;
}

/** Where a course stands in the site of its shelf, and the way back. */
function whereBuilt(id: string, { files: { settings } }: OpenShelf, options: ShelfBuildOptions) {
  const { out, base, site } = options;
  const name = encodeURIComponent(id);
  const { title, language } = settings;
  return {
    out: path.join(out, id),
    shelf: { id, link: { title, language, href: '../index.html' } },
    ...(base !== undefined && { base: `${base.replace(/\/*$/, '/')}${name}/` }),
    ...(site !== undefined && { site: `${site}/${name}` }),
  };
}

async function buildPart(loaded: LazyCourse, options: CourseBuildOptions): Promise<CourseBuild> {
  const { checked } = loaded;
  if (checked === undefined) throw new Error(`${options.folder} has not passed the check`);
  // Slow to load, and not needed for a shelf with an error.
  const { buildCourse } = await import('../build/index.ts');
  return buildCourse({ ...loaded, checked }, options);
}

/** Writes the files beside the courses. */
async function writeOwn(
  { files: { settings } }: OpenShelf,
  parts: readonly BuiltPart[],
  { folder, base, site }: Pick<ShelfBuildOptions, 'base' | 'site'> & { readonly folder: string },
): Promise<readonly string[]> {
  const { writeShelfPages } = await import('../../site/index.ts');
  const { title, language, notation, author, summary, licence } = settings;
  const shelf: Shelf = { title, language, notation, author, summary, licence, site, base };
  const built = parts.flatMap(({ build }): BuiltCourse[] => (build.onShelf ? [build.onShelf] : []));
  await mkdir(folder, { recursive: true });
  return writeShelfPages(built, shelf, folder, { cacheDir: cacheFolder() });
}
