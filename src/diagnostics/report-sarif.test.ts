import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import AjvDraft04 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { expect, test } from 'vitest';
import type { Diagnostic } from './diagnostic.ts';
import { reportSarif } from './report-sarif.ts';

// The schema of the OASIS committee (2.1.0, release 5), as shipped by @microsoft/jest-sarif.
const schema = JSON.parse(
  readFileSync(
    createRequire(import.meta.url).resolve(
      '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json',
    ),
    'utf8',
  ),
);

const place = (line: number, from: number, to: number) => ({
  file: 'chapters/1 main.md',
  start: { line, column: from, offset: from },
  end: { line, column: to, offset: to },
});

const finding: Diagnostic = {
  rule: 'move-number',
  severity: 'error',
  place: place(3, 5, 8),
  message: 'This is move 3, not 4.',
  hint: 'Write 3.',
  related: [{ place: place(1, 1, 2), message: 'the line begins here' }],
  fixes: [{ place: place(3, 5, 8), text: '3.' }],
};

const options = {
  version: '1.2.3',
  rules: [
    { id: 'move-illegal', finds: 'A.', documentation: 'B.', severity: 'error' as const },
    { id: 'move-number', finds: 'C.', documentation: 'D.', severity: 'error' as const },
  ],
};

test('the log satisfies the published schema', () => {
  const ajv = new AjvDraft04.default({ strict: false, allErrors: true, unicodeRegExp: false });
  addFormats.default(ajv as never);
  const validate = ajv.compile(schema);
  for (const diagnostics of [[], [finding, { ...finding, severity: 'warning' as const }]]) {
    const handbook = 'https://example.org/';
    validate(JSON.parse(reportSarif(diagnostics, { ...options, handbook })));
    expect(validate.errors ?? []).toEqual([]);
  }
  // The schema is not one that accepts anything.
  expect(validate({ version: '2.1.0', runs: [{ tool: {} }] })).toBe(false);
});

test('a finding keeps its place, its rule, its related places and its repair', () => {
  const { runs } = JSON.parse(reportSarif([finding], { ...options, root: 'courses/a' }));
  const [result] = runs[0].results;
  expect(runs[0].originalUriBaseIds).toHaveProperty('ROOT');
  expect(runs[0].columnKind).toBe('utf16CodeUnits');
  expect(result).toMatchObject({ ruleId: 'move-number', ruleIndex: 1, level: 'error' });
  expect(result.locations[0].physicalLocation).toEqual({
    artifactLocation: { uri: 'courses/a/chapters/1%20main.md', uriBaseId: 'ROOT' },
    region: { startLine: 3, startColumn: 5, endLine: 3, endColumn: 8 },
  });
  expect(result.relatedLocations[0].message.text).toBe('the line begins here');
  expect(result.fixes[0].artifactChanges[0].replacements[0].insertedContent.text).toBe('3.');
});

test('with a published handbook each rule leads to its page; without one no address is made up', () => {
  const handbook = 'https://example.org/book/';
  const log = JSON.parse(reportSarif([finding], { ...options, handbook }));
  const { driver } = log.runs[0].tool;
  expect(driver.informationUri).toBe(handbook);
  expect(driver.rules[1].helpUri).toBe(`${handbook}rules.html#move-number`);
  expect(reportSarif([finding], options)).not.toMatch(/informationUri|helpUri/);
});

test('the fingerprint stays when lines are put in above', () => {
  const fingerprint = (diagnostic: Diagnostic) =>
    JSON.parse(reportSarif([diagnostic], options)).runs[0].results[0].partialFingerprints;
  expect(fingerprint({ ...finding, place: place(30, 5, 8) })).toEqual(fingerprint(finding));
  expect(fingerprint({ ...finding, message: 'Another.' })).not.toEqual(fingerprint(finding));
});

test('findings that read alike have fingerprints of their own', () => {
  const twice = [finding, { ...finding, place: place(9, 1, 4) }];
  const { results } = JSON.parse(reportSarif(twice, options)).runs[0];
  const [first, second] = results.map((result: { partialFingerprints: unknown }) =>
    JSON.stringify(result.partialFingerprints),
  );
  expect(second).not.toBe(first);
});

test('any file name is an address, and what acts on a terminal is escaped', () => {
  const file = 'chapters/1 #a?\u001b\u202e\ud800.md';
  const bad = { ...finding, place: { ...place(3, 5, 8), file }, message: 'a\u001b\u009b\u2028b' };
  const report = reportSarif([bad], options);
  for (const sign of '\u001b\u009b\u202e\u2028') expect(report).not.toContain(sign);
  const [result] = JSON.parse(report).runs[0].results;
  expect(result.message.text).toContain('a\u001b\u009b\u2028b');
  expect(result.locations[0].physicalLocation.artifactLocation.uri).toBe(
    'chapters/1%20%23a%3F%1B%E2%80%AE%EF%BF%BD.md',
  );
});
