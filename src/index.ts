export { type CheckedCourse, type CheckResult, checkCourse, rules } from './check/index.ts';
export type { Diagnostic, Place } from './diagnostics/index.ts';
export { reportJson, reportText } from './diagnostics/index.ts';
export { buildCourse, type Course } from './model/index.ts';
export { findFiles, readCourse } from './read/index.ts';
export { remarkLinewright } from './remark/index.ts';
export { buildSite } from './site/index.ts';
