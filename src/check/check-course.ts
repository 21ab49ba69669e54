import { type Diagnostic, makeDiagnostic, sortDiagnostics } from '../diagnostics/index.ts';
import type { EngineFacts } from '../facts/index.ts';
import { type Course, documentsOf } from '../model/index.ts';
import type { CourseFiles } from '../read/index.ts';
import { applyAllowances } from './allowances.ts';
import { type ChapterSummary, summariseChapter } from './chapter-summary.ts';
import { type CheckOptions, checkChapter, type FindingOfRule } from './check-chapter.ts';
import { type CheckedCourse, sealCourse } from './checked-course.ts';
import type { CourseRule, CourseScope } from './course-rule.ts';
import { defaultMargins } from './engine/default-margins.ts';
import { type OwnChecks, type OwnRule, withoutOwnChecks } from './own-checks.ts';
import { allowUnused, describeUnused } from './rules/allow-unused.ts';
import { ownRule } from './rules/own-rule.ts';
import { rules } from './rules.ts';
import { type CourseIndex, createCourseView, makeCourseIndex } from './view/index.ts';

export interface CheckResult {
  /** All findings, in the order of the text. */
  readonly diagnostics: readonly Diagnostic[];
  /** Absent if a finding is an error: such a course is not published. */
  readonly checked?: CheckedCourse;
}

/**
 * Runs all rules over a course, each with the severity that the course gives it.
 * @param facts what an engine said of its positions.
 * @param shelf that it stands on.
 */
export function checkCourse(
  course: Course,
  facts?: EngineFacts,
  shelf?: CourseFiles['shelf'],
): CheckResult {
  const options = checkOptions(course.settings);
  const documents = documentsOf(course);
  const summaries = documents.map((chapter) => summariseChapter(chapter, options.side));
  const index = makeCourseIndex(summaries, facts, shelf);
  const found = documents.flatMap((chapter) => checkChapter(chapter, index, options).findings);
  const diagnostics = reportFindings(found, { ...course, summaries, index });
  const checked = passCourse(course, diagnostics);
  return { diagnostics, ...(checked && { checked }) };
}

/** @param own rules and claims of the course's own, where somebody runs them. */
export function checkOptions(
  settings: Course['settings'],
  own: OwnChecks = withoutOwnChecks(settings),
): CheckOptions {
  const { side, language, rules: set, engine } = settings;
  const off = Object.entries(set).flatMap(([id, level]) => (level === 'off' ? [id] : []));
  return { side, language, margins: { ...defaultMargins, ...engine }, own, off: new Set(off) };
}

/** The course for those who publish it, unless one of its findings is an error. */
export function passCourse(
  course: Course,
  diagnostics: readonly Diagnostic[],
): CheckedCourse | undefined {
  const isSound = diagnostics.every(({ severity }) => severity !== 'error');
  return isSound ? sealCourse(course) : undefined;
}

/** A course whose chapters have been checked. */
export interface CourseToReport extends Omit<CourseScope, 'course'> {
  readonly summaries: readonly ChapterSummary[];
  readonly index: CourseIndex;
  /** Rules and claims of the course's own, where somebody runs them. */
  readonly own?: OwnChecks;
}

/**
 * All findings of a course: those in its chapters, with what only the whole course shows, as its settings and
 * the author's exceptions have them.
 */
export function reportFindings(
  inChapters: readonly FindingOfRule[],
  { summaries, index, own, ...scope }: CourseToReport,
): Diagnostic[] {
  const { settings } = scope;
  const { off, ...about } = checkOptions(settings, own);
  const { view } = createCourseView(index, about);
  const known: readonly KnownRule[] = [...rules, ...view.own.rules];
  const byId = new Map(known.map((rule) => [rule.id, rule]));
  const found: Diagnostic[] = [];
  const add = ({ rule: id, finding }: FindingOfRule): void => {
    const rule = byId.get(id);
    const level = rule?.always ? undefined : settings.rules[id];
    if (!rule || level === 'off') return;
    found.push(makeDiagnostic(rule, level ?? rule.severity, finding));
  };
  for (const one of inChapters) add(one);
  for (const { id, inCourse } of rules) {
    for (const finding of inCourse?.({ ...scope, course: view }) ?? []) add({ rule: id, finding });
  }
  for (const one of view.own.inCourse(summaries, { ...scope, course: view }, off)) add(one);
  const always = new Set(rules.filter((rule) => rule.always).map(({ id }) => id));
  const allowances = summaries.flatMap((summary) => summary.allowances);
  const { told, unused } = applyAllowances(withoutEchoes(found), allowances, always);
  return sortDiagnostics([
    ...told,
    ...unused
      .filter(({ rule }) => !mayBeUnused(byId.get(rule), view.own))
      .map((allowance) =>
        makeDiagnostic(allowUnused, allowUnused.severity, describeUnused(allowance, known)),
      ),
  ]);
}

type KnownRule = OwnRule & Pick<CourseRule, 'always' | 'byEngine' | 'inShelf'>;

/** Whether an exception from a rule may except nothing here, since it is not run wherever the course is checked. */
function mayBeUnused(rule: KnownRule | undefined, { leftOut }: OwnChecks): boolean {
  return rule === undefined ? leftOut : rule.byEngine === true || rule.inShelf !== undefined;
}

/** Code that fails in one chapter fails in all, at one place in itself: that is said once. */
function withoutEchoes(found: readonly Diagnostic[]): Diagnostic[] {
  const said = new Set<string>();
  return found.filter(({ rule, place, message }) => {
    if (rule !== ownRule.id) return true;
    const echo = `${place.file} ${place.start.offset} ${message}`;
    const isNew = !said.has(echo);
    said.add(echo);
    return isNew;
  });
}
