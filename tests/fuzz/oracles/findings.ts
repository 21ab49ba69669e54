/** What must hold of every finding, whatever the author has written. */
import { rules } from '../../../src/check/index.ts';
import { createLocator, type Place, type Point } from '../../../src/diagnostics/index.ts';
import type { Oracle } from '../case.ts';
import { type CourseRun, runCourse } from './course-run.ts';

const ids = new Set(rules.map(({ id }) => id));

export const sameAgain: Oracle<CourseRun> = {
  name: 'the same twice',
  *examine({ files, course, diagnostics }) {
    const again = runCourse(files);
    if (JSON.stringify(again.diagnostics) !== JSON.stringify(diagnostics)) {
      yield 'a second run has other findings';
    }
    if (JSON.stringify(again.course) !== JSON.stringify(course)) {
      yield 'a second run has another model';
    }
  },
};

export const knownRules: Oracle<CourseRun> = {
  name: 'known rules',
  *examine({ course, diagnostics, checked }) {
    for (const { rule, severity } of diagnostics) {
      if (!ids.has(rule)) yield `there is no rule \`${rule}\``;
      const setting = Object.hasOwn(course.settings.rules, rule) && course.settings.rules[rule];
      const always = rules.some(({ id, always }) => id === rule && always);
      if (setting && !always && setting !== severity) yield `${rule} is ${severity}, not as set`;
    }
    const errors = diagnostics.some(({ severity }) => severity === 'error');
    if (errors === (checked !== undefined)) yield 'checked and with errors, or neither';
  },
};

export const exactPlaces: Oracle<CourseRun> = {
  name: 'exact places',
  *examine({ files, diagnostics }) {
    for (const { rule, place, related, fixes = [] } of diagnostics) {
      const all = [place, ...related.map((other) => other.place), ...fixes.map((fix) => fix.place)];
      for (const each of all) {
        const fault = faultOf(each, files);
        if (fault !== undefined) yield `${rule}: ${fault}: ${JSON.stringify(each)}`;
      }
    }
  },
};

function faultOf({ file, start, end }: Place, files: CourseRun['files']): string | undefined {
  const text = Object.hasOwn(files, file) ? files[file] : undefined;
  if (text === undefined) {
    // A file that is missing is told at its beginning.
    return start.line === 1 && start.column === 1 && end.offset === 0 ? undefined : 'no such file';
  }
  const locate = createLocator(text);
  for (const point of [start, end]) {
    if (!(point.offset >= 0 && point.offset <= text.length)) return 'outside the file';
    const right: Point = locate(point.offset);
    if (right.line !== point.line || right.column !== point.column)
      return 'no such line and column';
    if (
      /^[\uDC00-\uDFFF]/.test(text.slice(point.offset)) &&
      /[\uD800-\uDBFF]$/.test(text.slice(0, point.offset))
    ) {
      return 'within a character';
    }
  }
  return end.offset < start.offset ? 'ends before it starts' : undefined;
}

/** Words that no sentence for an author has: a value was missing where it was composed. */
const slips = /\b(?:undefined|NaN|null|Infinity)\b|\[object |\$\{|function ?\(/;

export const plainSentences: Oracle<CourseRun> = {
  name: 'plain sentences',
  *examine({ files, diagnostics }) {
    const source = Object.entries(files).flat().join('\n');
    for (const { rule, message, hint, related } of diagnostics) {
      const texts = [
        message,
        ...(hint === undefined ? [] : [hint]),
        ...related.map((other) => other.message),
      ];
      for (const text of texts) {
        const control = /[\p{Cc}\p{Cs}]/u.exec(text)?.[0];
        if (control !== undefined)
          yield `${rule}: control character ${JSON.stringify(control)} in ${JSON.stringify(text)}`;
        const slip = slips.exec(text)?.[0];
        if (slip !== undefined && !source.includes(slip))
          yield `${rule}: “${slip}” in ${JSON.stringify(text)}`;
        if (text.trim() === '') yield `${rule}: an empty sentence`;
        if (text.length > 2000) yield `${rule}: a sentence of ${text.length} characters`;
      }
    }
  },
};
