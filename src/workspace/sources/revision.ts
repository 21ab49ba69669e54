import { makeTemporaryFolder } from '../../output/index.ts';
import { type CourseFiles, findFiles } from '../../read/index.ts';
import { writeRevision } from './git-revision.ts';

/**
 * The files of a course as of a git revision, its pictures by name only.
 * @throws NoCourseError for a folder outside a repository, or an unknown revision.
 */
export async function readRevision(revision: string, course: string): Promise<CourseFiles> {
  const folder = await makeTemporaryFolder();
  try {
    await writeRevision(revision, course, folder.path);
    return await findFiles(folder.path, { lookIntoMedia: false });
  } finally {
    await folder.remove();
  }
}
