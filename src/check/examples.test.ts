import { describe, expect, test } from 'vitest';
import type { Example } from '../diagnostics/index.ts';
import { applyFixes } from '../diagnostics/index.ts';
import { buildCourse } from '../model/index.ts';
import { readCourse, type SourceFile } from '../read/index.ts';
import { checkCourse } from './check-course.ts';
import { rules } from './rules.ts';

// One harness for all rules: their documented examples are their tests.
for (const rule of rules) {
  describe(rule.id, () => {
    test('has a sentence, a documentation and at least one example with a finding', () => {
      expect(rule.finds).toMatch(/^[A-Z].*\.$/s);
      expect(rule.documentation.trim()).not.toBe('');
      expect(rule.examples.some(({ findings }) => findings.length > 0)).toBe(true);
    });

    for (const example of rule.examples) {
      test(example.title, () => {
        const files = filesOf(example);
        const found = findingsOf(files, rule.id);
        const expected = example.findings.map(({ file = onlyChapter, start, end, ...rest }) => ({
          rule: rule.id,
          file,
          start,
          ...(end === undefined ? {} : { end }),
          ...rest,
        }));
        expect(
          found.map((finding, index) => {
            const { end, hint, ...rest } = finding.shown;
            const want = expected[index];
            return {
              ...rest,
              ...(want && 'end' in want ? { end } : {}),
              ...(want && 'hint' in want ? { hint } : {}),
            };
          }),
        ).toEqual(expected);
        if (example.fixed === undefined) return;
        const chapter = files.find(({ path }) => path === onlyChapter);
        const fixed = applyFixes(
          chapter?.text ?? '',
          found.flatMap(({ fixes }) => fixes),
        );
        expect(fixed).toBe(example.fixed);
        const again = files.map((file) =>
          file.path === onlyChapter ? { ...file, text: fixed } : file,
        );
        expect(findingsOf(again, rule.id)).toEqual([]);
      });
    }
  });
}

const onlyChapter = 'chapters/1.md';

function filesOf({ course, side = 'white' }: Example): SourceFile[] {
  const files = typeof course === 'string' ? { [onlyChapter]: course } : course;
  const settings = { 'course.yaml': `title: Example\nside: ${side}\n`, ...files };
  return Object.entries(settings).map(([path, text]) => ({ path, text }));
}

function findingsOf(files: readonly SourceFile[], rule: string) {
  const settings = files.find(({ path }) => path === 'course.yaml');
  const draft = readCourse(
    {
      ...(settings ? { settings } : {}),
      chapters: files.filter(({ path }) => path.startsWith('chapters/')),
      games: files.filter(({ path }) => path.startsWith('games/')),
      media: files.map(({ path }) => path).filter((path) => path.startsWith('media/')),
      problems: [],
    },
    { frontMatter: 'optional' },
  );
  return checkCourse(buildCourse(draft))
    .diagnostics.filter((diagnostic) => diagnostic.rule === rule)
    .map(({ place, message, hint, fixes }) => ({
      fixes: fixes ?? [],
      shown: {
        rule,
        file: place.file,
        start: `${place.start.line}:${place.start.column}`,
        end: `${place.end.line}:${place.end.column}`,
        message,
        hint,
      },
    }));
}
