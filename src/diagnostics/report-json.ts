import type { Diagnostic } from './diagnostic.ts';
import { jsonVersion } from './json-version.ts';
import type { Place, Point } from './place.ts';
import { writeJson } from './printable.ts';
import { ruleAddress } from './rule-address.ts';

/**
 * The findings as JSON: `{"version": 1, "diagnostics": [{rule, help, severity, file, start, end, message, hint,
 * related, fixes}]}`, where `help` is the page of the rule if `handbook` says where it is published. Paths are relative to the course; lines and columns count from 1, columns in
 * UTF-16 units; `end` is the point after the last character.
 */
export function reportJson(
  diagnostics: readonly Diagnostic[],
  { handbook }: { readonly handbook?: string | undefined } = {},
): string {
  const list = diagnostics.map((diagnostic) => ({
    rule: diagnostic.rule,
    ...(handbook === undefined ? {} : { help: ruleAddress(handbook, diagnostic.rule) }),
    severity: diagnostic.severity,
    ...makePlace(diagnostic.place),
    message: diagnostic.message,
    ...(diagnostic.hint === undefined ? {} : { hint: diagnostic.hint }),
    related: diagnostic.related.map((related) => ({
      ...makePlace(related.place),
      message: related.message,
    })),
    ...(diagnostic.fixes === undefined
      ? {}
      : { fixes: diagnostic.fixes.map((fix) => ({ ...makePlace(fix.place), text: fix.text })) }),
  }));
  return writeJson({ version: jsonVersion, diagnostics: list });
}

function makePlace(place: Place) {
  return { file: place.file, start: makePoint(place.start), end: makePoint(place.end) };
}

function makePoint(point: Point) {
  return { line: point.line, column: point.column };
}
