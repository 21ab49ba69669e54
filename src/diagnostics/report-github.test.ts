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
