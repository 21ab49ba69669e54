import { describe, expect, test } from 'vitest';
import { applyFixes, type Diagnostic } from '../diagnostics/index.ts';
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
        const expected = example.findings.map(({ file = exampleChapter, start, end, ...rest }) => ({
          rule: rule.id,
          file,
          start,
          ...(end === undefined ? {} : { end }),
          ...rest,
        }));
        expect(
          shown(found).map(({ end, hint, ...rest }, index) => {
            const want = expected[index];
            return {
              ...rest,
              ...(want && 'end' in want ? { end } : {}),
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

function shown(diagnostics: readonly Diagnostic[]) {
  return diagnostics.map(({ rule, place, message, hint }) => ({
    rule,
    file: place.file,
    start: `${place.start.line}:${place.start.column}`,
    end: `${place.end.line}:${place.end.column}`,
    message,
    hint,
  }));
}
