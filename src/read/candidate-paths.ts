import path from 'node:path/posix';

/** The file that an address names: relative to the chapter, else to the course folder. */
export function candidatePaths(
  address: string,
  chapter: string,
): { file: string; paths: string[] } {
  let file = address.replaceAll('\\', '/');
  try {
    file = decodeURIComponent(file);
  } catch {
    // Written with a stray %: taken as it stands.
  }
  return { file, paths: [path.join(path.dirname(chapter), file), path.normalize(file)] };
}
