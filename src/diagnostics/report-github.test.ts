import { expect, test } from 'vitest';
import { reportGithub } from './report-github.ts';

const start = { line: 3, column: 5, offset: 20 };
const end = { line: 3, column: 8, offset: 23 };

// The form of workflow commands and their escapes: GitHub Docs, "Workflow commands for GitHub
// Actions" (from memory; no copy in the registry to test against).
test('one command a finding, with its place and everything escaped', () => {
  const report = reportGithub(
    [
      {
        rule: 'move-illegal',
        severity: 'error',
        place: { file: 'chapters/1, main.md', start, end },
        message: '100% wrong: no.',
        hint: 'Write\nNf3.',
        related: [],
      },
    ],
    'courses/demo',
  );
  expect(report).toBe(
    '::error file=courses/demo/chapters/1%2C main.md,line=3,col=5,endLine=3,endColumn=8,title=move-illegal::100%25 wrong: no.%0AWrite%0ANf3.\n',
  );
  expect(reportGithub([])).toBe('');
});

test('a published handbook is named behind the hint', () => {
  const place = { file: 'a.md', start, end };
  const found = {
    rule: 'some-rule',
    severity: 'error',
    place,
    message: 'No.',
    related: [],
  } as const;
  expect(reportGithub([found], '', 'https://example.org/')).toContain(
    '::No.%0Ahttps://example.org/rules.html#some-rule\n',
  );
});

// A finding that could end its line would be a way to send commands of one's own: `::set-output`.
test('nothing in a name or a message begins a command, and no control sign comes through', () => {
  const evil = '\r\n::error file=x::y\n\u001b[31m::add-mask::z\u2028';
  const report = reportGithub(
    [
      {
        rule: 'move-illegal',
        severity: 'error',
        place: { file: `chapters/1${evil}.md`, start, end },
        message: evil,
        hint: evil,
        related: [],
      },
    ],
    `courses/${evil}`,
  );
  expect(report).toMatch(
    /^::error file=[^\p{Cc}\u2028:,]*,line=3,[^\p{Cc}\u2028:]*::[^\p{Cc}\u2028]*\n$/u,
  );
  expect(report).toContain('%0D%0A%3A%3Aerror file=x');
});
