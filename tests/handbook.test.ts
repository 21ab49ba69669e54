import { readdirSync, readFileSync } from 'node:fs';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { describe, expect, test } from 'vitest';
import { makeClaimsPage } from '../scripts/handbook/claims-page.ts';
import { makeJsonPage } from '../scripts/handbook/json-page.ts';
import { fillTables } from '../scripts/handbook/looks-tables.ts';
import { makeRulesPage } from '../scripts/handbook/rules-page.ts';
import { rules } from '../src/check/index.ts';
import { filesOfExample, runExample } from '../src/check/testing/run-example.ts';
import { loadCourse } from '../src/cli/load-course.ts';
import { applyFixes, reportText, sortDiagnostics } from '../src/diagnostics/index.ts';
import { hostPolicy } from '../src/site/security-policy.ts';
import { soundCourses } from './sound-courses.ts';

const chapters = new URL('../content/handbook/chapters/', import.meta.url);
const page = (name: string) => readFileSync(new URL(name, chapters), 'utf8');

/** The fenced blocks of a chapter in order, each with the heading that it stands under. */
function fencesOf(name: string) {
  let section = 0;
  return fromMarkdown(page(name)).children.flatMap((node) => {
    if (node.type === 'heading') section += 1;
    return node.type === 'code' ? [{ ...node, section }] : [];
  });
}

describe('the pages that are made from the code are fresh', () => {
  const hint = 'renew them with: node scripts/make-handbook-pages.ts';
  test('rules', () => expect(page('08-rules.md'), hint).toBe(makeRulesPage()));
  test('claims', () => expect(page('09-claims.md'), hint).toBe(makeClaimsPage()));
  test('tables of looks', () =>
    expect(page('07-looks.md'), hint).toBe(fillTables(page('07-looks.md'))));
  test('output for programs', () => expect(page('11-json.md'), hint).toBe(makeJsonPage()));
});

describe('every live block is shown as source before it', () => {
  const live = ['moves', 'diagram', 'exercise', 'game', 'pattern'];
  const written = readdirSync(chapters).filter((name) => /^0[1-7]-.*\.md$/.test(name));
  test.each(written)('%s', (name) => {
    const fences = fencesOf(name);
    for (const [index, { lang, meta, value }] of fences.entries()) {
      if (!live.includes(lang ?? '')) continue;
      const block = `\`\`\`${[lang, meta].filter(Boolean).join(' ')}\n${value}${value ? '\n' : ''}\`\`\``;
      const sources = fences.slice(0, index).filter((fence) => fence.lang === 'markdown');
      expect(sources.map((fence) => fence.value).join('\n\n')).toContain(block);
    }
  });
});

test('the headers to copy for hosts are the policy that the pages are tested under', () => {
  const said = fencesOf('07-publishing.md').filter(({ value }) =>
    value.includes('Security-Policy'),
  );
  expect(said.map(({ lang }) => lang)).toEqual(['apache', 'nginx', 'text']);
  for (const { value } of said) {
    const [, policy = ''] = /Content-Security-Policy:? "?([^"\n]+)/.exec(value) ?? [];
    expect(policy).toBe(hostPolicy);
    expect(value).toMatch(/X-Content-Type-Options:? "?nosniff/);
  }
  for (const part of hostPolicy.split('; ')) {
    expect(page('07-publishing.md')).toContain(`| \`${part}\` |`);
  }
});

describe('the chapter on checking shows what the check says', () => {
  const file = 'chapters/01-main-line.md';
  const fences = fencesOf('06-checking.md');
  const examples = fences.flatMap((fence, index) => {
    const next = fences[index + 1];
    const previous = fences[index - 1];
    if (fence.lang !== 'markdown') return [];
    if (previous?.lang === 'markdown' && previous.section === fence.section) return [];
    return [{ course: fence.value, next: next?.section === fence.section ? next : undefined }];
  });

  test('all kinds of example are there', () => {
    const kinds = ['text', 'text', 'markdown', undefined, 'text', undefined];
    expect(examples.map(({ next }) => next?.lang)).toEqual(kinds);
  });

  test.each(examples)('$course', ({ course, next }) => {
    const files = filesOfExample({ title: '', course: { [file]: course }, findings: [] });
    const found = sortDiagnostics(rules.flatMap(({ id }) => runExample(files, id)));
    if (next?.lang === 'markdown') {
      const fixes = found.flatMap(({ fixes = [] }) => fixes);
      expect(applyFixes(course, fixes)).toBe(next.value);
      return;
    }
    const report = reportText(found, { textOf: () => course, color: false });
    expect(report.slice(0, Math.max(0, report.lastIndexOf('\n\n')))).toBe(next?.value ?? '');
  });
});

describe('a sound course gives no finding', () => {
  for (const { name, folder } of soundCourses) {
    test(name, async () => {
      const { diagnostics, course } = await loadCourse(folder);
      expect(diagnostics).toEqual([]);
      expect(course.chapters.length).toBeGreaterThan(1);
    });
  }
});
