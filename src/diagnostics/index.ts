export { applyFixes } from './apply-fixes.ts';
export { onOneLine, unprintable, withoutControls } from './controls.ts';
export type {
  Example,
  ExpectedFinding,
  Finding,
  Rule,
} from './define-rule.ts';
export { makeDiagnostic } from './define-rule.ts';
export type { Diagnostic, Fix, RelatedPlace, Severity } from './diagnostic.ts';
export { severities } from './diagnostic.ts';
export { explainSystemError, isSystemError } from './explain-system-error.ts';
export { jsonVersion } from './json-version.ts';
export { createLocator, lineStarts } from './locate.ts';
export { compareNames } from './natural-order.ts';
export { createSuggester, nearestName } from './nearest-name.ts';
export type { Place, Point, Range } from './place.ts';
export { printable, printableLines, writeJson, writeJsonLine } from './printable.ts';
export { reportGithub } from './report-github.ts';
export { reportJson } from './report-json.ts';
export { reportSarif } from './report-sarif.ts';
export { reportText } from './report-text.ts';
export { readHandbookAddress, ruleAddress } from './rule-address.ts';
export { sentence } from './sentence.ts';
export { sortDiagnostics } from './sort-diagnostics.ts';
export { topOf } from './top-of.ts';
export { UserError } from './user-error.ts';
