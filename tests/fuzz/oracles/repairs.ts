import { applyFixes, type Diagnostic, type Fix } from '../../../src/diagnostics/index.ts';
import type { Files, Oracle } from '../case.ts';
import { type CourseRun, runCourse } from './course-run.ts';

const fixesOf = (diagnostics: readonly Diagnostic[]) =>
  diagnostics.flatMap(({ rule, fixes = [] }) => fixes.map((fix) => ({ rule, ...fix })));

function mend(files: Files, fixes: readonly Fix[]): Files {
  return Object.fromEntries(
    Object.entries(files).map(([file, text]) => [
      file,
      applyFixes(
        text,
        fixes.filter(({ place }) => place.file === file),
      ),
    ]),
  );
}

/** `--fix` does all that it can at once, and what it has done stays done. */
export const lastingRepairs: Oracle<CourseRun> = {
  name: 'lasting repairs',
  *examine({ files, diagnostics }) {
    const fixes = fixesOf(diagnostics);
    if (fixes.length === 0) return;
    for (const overlap of overlaps(fixes)) yield overlap;
    const mended = runCourse(mend(files, fixes));
    const left = fixesOf(mended.diagnostics);
    if (left.length > 0) {
      const [{ rule, place, text } = { rule: '', place: undefined, text: '' }] = left;
      yield `a second run repairs more: ${rule} ${JSON.stringify({ place, text })}`;
    }
    const before = countOf(diagnostics, 'error');
    const after = countOf(mended.diagnostics, 'error');
    if (after > before) yield `repairs made ${after} errors of ${before}`;
  },
};

function countOf(diagnostics: readonly Diagnostic[], severity: Diagnostic['severity']): number {
  return diagnostics.filter((diagnostic) => diagnostic.severity === severity).length;
}

function* overlaps(fixes: readonly (Fix & { readonly rule: string })[]): Generator<string> {
  const sorted = [...fixes].sort(
    (a, b) =>
      a.place.file.localeCompare(b.place.file) || a.place.start.offset - b.place.start.offset,
  );
  for (const [index, fix] of sorted.entries()) {
    const next = sorted[index + 1];
    if (next?.place.file !== fix.place.file) continue;
    if (next.place.start.offset < fix.place.end.offset) {
      yield `two repairs overlap: ${fix.rule} and ${next.rule} ${JSON.stringify([fix, next])}`;
    }
  }
}
