import type { CheckResult, CourseEntry } from '../check/index.ts';
import type { Diagnostic } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';
import type { CourseFiles } from '../read/index.ts';
import type { UpdateOptions } from './chapter-now.ts';
import { compareFresh, comparesFresh } from './compare-fresh.ts';
import type { KeptChapter } from './kept/kept-chapter.ts';
import { type Update, updateCourse } from './update-course.ts';
import { withDrafts } from './with-drafts.ts';

/** A course as it stands now. */
export interface CurrentCourse {
  /** All findings, new or kept, in the order of the text. Asking checks the chapters. */
  readonly diagnostics: readonly Diagnostic[];
  /** Its files, without drafts if they were left out. */
  readonly files: CourseFiles;
  /** Number of chapters. */
  readonly chapters: number;
  /** Number of different positions in its blocks of moves. */
  readonly positions: number;
  /** The whole model; each chapter is played when first looked at. */
  course(): Course;
  /** What other courses of a shelf may know of it; checks nothing. */
  entry(): CourseEntry;
  /** `Course.siblings` */
  readonly siblings: Course['siblings'];
  /** The course to publish; absent if a finding is an error. */
  checked(): CheckResult['checked'];
  /**
   * A print of all that a chapter's syntax and play depend on: its text, the other files, the side, and what other
   * chapters say of its positions.
   */
  print(file: string): string;
  /**
   * A print of all that others may show of a chapter: not its words outside blocks, nor places in its file. Plays the
   * chapter.
   */
  face(file: string): string;
  /** What was done anew, for tests. */
  readonly work: Work;
}

/** Files of the chapters that were parsed, played and checked anew. */
export interface Work {
  readonly read: readonly string[];
  readonly played: readonly string[];
  readonly checked: readonly string[];
}

export interface WorkspaceOptions extends UpdateOptions {
  /** What earlier processes kept. */
  readonly kept?: Iterable<KeptChapter> | undefined;
  /** Whether drafts are part of the course, as for the author, or left out, as for readers; default `shown`. */
  readonly drafts?: 'shown' | 'left out' | undefined;
}

/**
 * A course that stays current: what was parsed, played and found in a chapter is kept by its content and by every answer
 * that it used, so that a change costs only the chapters that it touches.
 */
export interface Workspace {
  /** Makes the course current with these files. */
  update(files: CourseFiles): CurrentCourse;
  /** What later processes can use. */
  kept(): Iterable<KeptChapter>;
}

export function createWorkspace({
  kept: before = [],
  drafts = 'shown',
  ...options
}: WorkspaceOptions = {}): Workspace {
  const first = [...before];
  let latest: Pick<Update, 'chapters' | 'soFar'> = { chapters: first, soFar: first };
  return {
    kept: () => latest.chapters,
    update(files) {
      // A course whose findings nobody asked for is not checked just to be kept.
      const known = new Map(latest.soFar.map((chapter) => [chapter.file, chapter]));
      const update = (given: CourseFiles, from: ReadonlyMap<string, KeptChapter>) => {
        const now = updateCourse(given, from, options);
        const isFresh = from.size === 0 && options.syntaxes === undefined;
        if (!isFresh && comparesFresh()) {
          const { syntaxes: _, ...others } = options;
          compareFresh(now, updateCourse(given, new Map(), others));
        }
        return now;
      };
      const updated = withDrafts(drafts, files, known, update);
      latest = updated;
      return updated.current;
    },
  };
}
