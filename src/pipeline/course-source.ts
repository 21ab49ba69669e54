import path from 'node:path';
import { sortDiagnostics } from '../diagnostics/index.ts';
import { type CourseFiles, NoCourseError } from '../read/index.ts';
import { findingsInTranslation, inTranslation } from '../translation/index.ts';
import type { Workspace } from '../workspace/index.ts';
import {
  filesIn,
  filesOf,
  type LoadedCourse,
  loadedFrom,
  openFiles,
  type Progress,
  updateFiles,
} from './load-course.ts';
import type { LookAround } from './shelf/look-around.ts';

/** A course in a folder that changes. */
export interface CourseSource {
  /**
   * The course as it stands now.
   * @throws NoCourseError where the folder is no course.
   */
  current(): Promise<LoadedCourse>;
  /**
   * The course in a language that it is translated into, as far as it is, ready or not. Its findings are those that its
   * translator can mend, in his own files.
   */
  inLanguage(tag: string): Pick<CourseSource, 'current'>;
}

/** The course in a folder; what a change does not touch is kept. */
export function courseIn(
  folder: string,
  progress?: Progress,
  lookAround?: LookAround,
): CourseSource {
  const find = () => filesIn(folder, { lookAround });
  const as = path.resolve(folder);
  const original = follow(as, progress);
  return {
    current: async () => original(await find()),
    inLanguage(tag) {
      const translated = follow(path.join(as, 'translations', tag), progress);
      return {
        async current() {
          const files = await find();
          const { diagnostics, translations, textOf } = await original(files);
          const translation = translations.find((each) => each.tag === tag);
          if (translation === undefined) {
            throw new NoCourseError(`There is no translation into \`${tag}\` any more.`);
          }
          const loaded = await translated(inTranslation(files, translation, 'written'));
          const own = filesOf(translation, 'written');
          const inFolder = `${translation.folder}/`;
          const found = [
            ...diagnostics.filter(({ place }) => place.file.startsWith(inFolder)),
            ...findingsInTranslation(loaded.diagnostics, translation.folder, own),
          ];
          return {
            ...loaded,
            below: tag,
            translations,
            diagnostics: sortDiagnostics(found),
            textOf: (file) => (file.startsWith(inFolder) ? textOf(file) : loaded.textOf(file)),
          };
        },
      };
    },
  };
}

/** @param as what it is kept by. */
function follow(as: string, progress: Progress | undefined) {
  let workspace: Workspace | undefined;
  return async (files: CourseFiles): Promise<LoadedCourse> => {
    if (workspace !== undefined) return loadedFrom(await updateFiles(files, workspace, as));
    const opened = await openFiles(files, { as, progress });
    workspace = opened.workspace;
    return loadedFrom(opened);
  };
}
