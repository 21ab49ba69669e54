import { expect, test } from 'vitest';
import { problemsOf, readOne } from '../testing/read-one.ts';

const behind = '\n\n```moves\n1. e4 e5\n```\n\nAfter.\n';

// CommonMark, 4.6: such HTML ends at its own end only, and what stands behind would be lost unseen.
test.each(['<!--', '<?', '<![CDATA[', '<pre>', '<script>', '<style media="x">', '<TEXTAREA>'])(
  '%s that is never closed is a finding at its place',
  (opening) => {
    const problem = `${opening}: \`${opening}\` is opened here and never closed, so what stands behind it is lost.`;
    expect(problemsOf(`Before.\n\n${opening} it.${behind}`)).toEqual([problem]);
    expect(problemsOf(`- Before.\n\n  ${opening}${behind.replaceAll('\n', '\n  ')}`)).toEqual([
      problem,
    ]);
  },
);

test.each([
  '<!-- it. -->',
  '<!-- it.\n\nand more -->',
  '<?php x ?>',
  '<pre>\n1. e4\n</pre>',
  '<script>x</script>',
  '<!doctype html>',
  'in the text <!-- it -->',
  'in the text <pre> it',
  'in the text <!-- it',
  '<preface>',
  '\\<!-- it',
  '`<!--`',
])('%s is none', (html) => {
  const { problems, blocks } = readOne(`Before.\n\n${html}${behind}`);
  expect(problems).toEqual([]);
  expect(blocks).toHaveLength(1);
});

test('at the end of a chapter nothing is lost by it', () => {
  expect(problemsOf('Text.\n\n<pre>\n')).toEqual([]);
});
