import type { CourseProblem, SourceFile } from '../types.ts';
import type { FolderNamed } from './read-shelf-settings.ts';

/** What is found at a path that `courses` names. */
export interface FolderSeen {
  /** Relative to the shelf's folder, with `/`, without `.`, `..` and a final `/`; empty for the shelf's own. */
  readonly path: string;
  readonly kind: 'course' | 'shelf' | 'folder' | 'file' | 'outside' | 'missing' | 'unreadable';
  /** Its real path, relative to the shelf's real path; differs for a link. */
  readonly real: string;
  /** `course.yaml`, where it could be read. */
  readonly settings?: SourceFile;
  /** For a folder that is not there: the course that was probably meant. */
  readonly near?: string | undefined;
}

/** A course of a shelf. */
export interface ShelvedFolder extends FolderNamed {
  /** Relative to the shelf's folder, with `/`. */
  readonly path: string;
  readonly settings?: SourceFile;
}

/**
 * Sorts the folders that `shelf.yaml` names into courses and problems; pure.
 * @param seen what is found at each of them, in the same order.
 */
export function placeCourses(
  named: readonly FolderNamed[],
  seen: readonly FolderSeen[],
): { readonly courses: readonly ShelvedFolder[]; readonly problems: readonly CourseProblem[] } {
  const courses: (ShelvedFolder & { readonly real: string })[] = [];
  const problems: CourseProblem[] = [];
  named.forEach((folder, index) => {
    const found = seen[index];
    if (found === undefined) return;
    const fault = faultOf(folder, found, courses);
    if (fault === undefined) {
      const { path, real, settings } = found;
      courses.push({ ...folder, path, real, ...(settings && { settings }) });
    } else problems.push({ rule: 'shelf-setting', place: folder.place, ...fault });
  });
  return { courses: courses.map(({ real: _, ...course }) => course), problems };
}

type Fault = Pick<CourseProblem, 'message' | 'hint' | 'related'>;

function faultOf(
  { written }: FolderNamed,
  { path, kind, real, near }: FolderSeen,
  before: readonly (ShelvedFolder & { readonly real: string })[],
): Fault | undefined {
  if (kind === 'outside') {
    return {
      message: `\`${written}\` does not lie in the folder of the shelf.`,
      hint: 'Put the course into a folder beside shelf.yaml, and name it by its path from there.',
    };
  }
  if (path === '' || real === '') {
    return {
      message: `\`${written}\` is the folder of the shelf itself.`,
      hint: 'Put each course into a folder of its own beside shelf.yaml, and name those.',
    };
  }
  if (kind === 'missing') {
    return {
      message: `There is no folder \`${path}\` here.`,
      hint: near
        ? `Did you mean \`${near}\`?`
        : `Correct the path; \`linewright new ${path}\` makes a course there.`,
    };
  }
  const twin = before.find((course) => isSame(course.real, real));
  if (twin) {
    return {
      message: `\`${written}\` is the course \`${twin.path}\`, which line ${twin.place.start.line} names already.`,
      hint: 'Name each course once: take this line out.',
      related: [{ place: twin.place, message: 'the same folder is named here' }],
    };
  }
  if (!isSame(real, path)) {
    return {
      message: `\`${written}\` is a link, or lies behind one: no course is read through it.`,
      hint: 'Name the folder that it leads to, or put a copy of that folder in its place.',
    };
  }
  return faultOfKind(path, kind) ?? faultOfNesting(path, before);
}

function faultOfKind(path: string, kind: FolderSeen['kind']): Fault | undefined {
  switch (kind) {
    case 'course':
      return undefined;
    case 'shelf':
      return {
        message: `\`${path}\` is a shelf itself, and a shelf holds only courses.`,
        hint: 'Name the folders of its courses instead.',
      };
    case 'file':
      return {
        message: `\`${path}\` is a file, not a folder.`,
        hint: 'Name the folder that holds course.yaml.',
      };
    case 'unreadable':
      return {
        message: `The folder \`${path}\` cannot be read.`,
        hint: 'Let this user read it.',
      };
    default:
      return {
        message: `The folder \`${path}\` is no course: it has no course.yaml.`,
        hint: `Correct the path, or take the line out; \`linewright new\` makes a course.`,
      };
  }
}

function faultOfNesting(path: string, before: readonly ShelvedFolder[]): Fault | undefined {
  const around = before.find((course) => path.startsWith(`${course.path}/`));
  const within = before.find((course) => course.path.startsWith(`${path}/`));
  const other = around ?? within;
  if (other === undefined) return undefined;
  return {
    message: around
      ? `The course \`${path}\` lies in the course \`${other.path}\`.`
      : `The course \`${other.path}\` lies in the course \`${path}\`.`,
    hint: 'Put them beside each other: a course is a folder of its own.',
    related: [{ place: other.place, message: `\`${other.path}\` is named here` }],
  };
}

/** Some file systems ignore case and Unicode normal forms. */
function isSame(a: string, b: string): boolean {
  return a.normalize().toLowerCase() === b.normalize().toLowerCase();
}
