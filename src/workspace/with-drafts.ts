import { passCourse } from '../check/index.ts';
import { type Diagnostic, sortDiagnostics } from '../diagnostics/index.ts';
import { type CourseFiles, documentsOf, leaveOutDrafts } from '../read/index.ts';
import type { KeptChapter } from './kept/kept-chapter.ts';
import type { Update } from './update-course.ts';
import type { WorkspaceOptions } from './workspace.ts';

type Known = ReadonlyMap<string, KeptChapter>;

/**
 * Makes a course current with its drafts, for the author, or without, for readers. The author's is checked both ways: it
 * reports what would be wrong without the drafts, and calls an exception unused only if neither needs it.
 */
export function withDrafts(
  drafts: NonNullable<WorkspaceOptions['drafts']>,
  files: CourseFiles,
  known: Known,
  update: (files: CourseFiles, known: Known) => Update,
): Update {
  const finished = leaveOutDrafts(files);
  const whole = update(files, known);
  if (drafts === 'shown') {
    // A course of drafts alone has just been begun.
    if (finished === files || finished.chapters.length === 0) return whole;
    return withFindings(whole, () => [
      ...whole.current.diagnostics,
      ...onlyIn(update(finished, byFile(whole.chapters)), whole)
        .filter(({ rule }) => rule !== 'allow-unused')
        .map(withoutDrafts),
    ]);
  }
  const published = finished === files ? whole : update(finished, byFile(whole.chapters));
  const { current } = withFindings(published, () => {
    const missing = new Set(onlyIn(published, whole));
    return published.current.diagnostics.flatMap((finding) => {
      if (!missing.has(finding)) return [finding];
      if (finding.rule === 'allow-unused') return [];
      return [finished.chapters.length === 0 ? finding : withoutDrafts(finding)];
    });
  });
  const left = new Set(documentsOf(finished).map(({ path }) => path));
  const ofBoth = (kept: 'chapters' | 'soFar') => [
    ...published[kept],
    ...whole[kept].filter(({ file }) => !left.has(file)),
  ];
  return {
    current,
    get chapters() {
      return ofBoth('chapters');
    },
    get soFar() {
      return ofBoth('soFar');
    },
  };
}

function byFile(chapters: readonly KeptChapter[]): Known {
  return new Map(chapters.map((chapter) => [chapter.file, chapter]));
}

/** The same course with other findings, made when first asked for. */
function withFindings(update: Update, find: () => readonly Diagnostic[]): Update {
  const { current } = update;
  let found: readonly Diagnostic[] | undefined;
  const diagnostics = () => {
    found ??= sortDiagnostics(find());
    return found;
  };
  const { files, chapters, positions, work, course, entry, siblings, print, face } = current;
  return {
    current: {
      files,
      chapters,
      positions,
      work,
      course,
      entry,
      siblings,
      print,
      face,
      get diagnostics() {
        return diagnostics();
      },
      checked: () =>
        diagnostics().some(({ severity }) => severity === 'error')
          ? undefined
          : passCourse(course(), diagnostics()),
    },
    get chapters() {
      return update.chapters;
    },
    get soFar() {
      return update.soFar;
    },
  };
}

/** Findings that another course has not at the same place by the same rule. */
function onlyIn({ current }: Update, other: Update): Diagnostic[] {
  const known = new Set(other.current.diagnostics.map(siteOf));
  return current.diagnostics.filter((finding) => !known.has(siteOf(finding)));
}

function siteOf({ rule, place: { file, start, end } }: Diagnostic): string {
  return JSON.stringify([rule, file, start.offset, end.offset]);
}

/** A finding that the drafts answer, worded for the author; without its repair, which may be wrong with them. */
function withoutDrafts({ fixes: _, message, hint, ...finding }: Diagnostic): Diagnostic {
  const why = 'Chapters with `draft: true` are not published.';
  return {
    ...finding,
    message: `Without the drafts: ${message}`,
    hint: hint === undefined ? why : `${hint} ${why}`,
  };
}
