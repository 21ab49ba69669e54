import { makeTemporaryFolder } from '../../output/index.ts';
import { type CourseFiles, findFiles } from '../../read/index.ts';
import { writeRevision } from './git-revision.ts';

/**
 * The files that a course had in a git revision. Its pictures are not looked into: only their names matter to
 * what is read.
 * @throws NoCourseError for a folder that is in no repository and a revision that does not exist.
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
