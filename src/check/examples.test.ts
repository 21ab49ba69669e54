import { describe, expect, test } from 'vitest';
import { applyFixes } from '../diagnostics/index.ts';
import { rules } from './rules.ts';
import { exampleChapter, filesOfExample, runExample } from './testing/run-example.ts';

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
        const files = filesOfExample(example);
        const found = runExample(files, rule.id);
        const expected = example.findings.map(({ file = exampleChapter, ...rest }) => ({
          rule: rule.id,
          file,
          ...rest,
        }));
        expect(
          found.map(({ place: { file, start, end }, message, hint }, index) => {
            const want = expected[index];
            const from = `${start.line}:${start.column}`;
            return {
              rule: rule.id,
              file,
              at: want?.at.includes('-') ? `${from}-${end.line}:${end.column}` : from,
              message,
              ...(want && 'hint' in want ? { hint } : {}),
            };
          }),
        ).toEqual(expected);
        if (example.fixed === undefined) return;
        const mended = example.findings[0]?.file ?? exampleChapter;
        const fixed = applyFixes(
          files.find(({ path }) => path === mended)?.text ?? '',
          found.flatMap(({ fixes = [] }) => fixes),
        );
        expect(fixed).toBe(example.fixed);
        const again = files.map((file) => (file.path === mended ? { ...file, text: fixed } : file));
        expect(runExample(again, rule.id)).toEqual([]);
      });
    }
  });
}
