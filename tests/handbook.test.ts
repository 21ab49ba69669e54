import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { makeClaimsPage } from '../scripts/handbook/claims-page.ts';
import { makeRulesPage } from '../scripts/handbook/rules-page.ts';
import { loadCourse } from '../src/cli/load-course.ts';
import { soundCourses } from './sound-courses.ts';

const page = (name: string) =>
  readFileSync(new URL(`../content/handbook/chapters/${name}`, import.meta.url), 'utf8');

describe('the pages that are made from the code are fresh', () => {
  const hint = 'renew them with: node scripts/make-handbook-pages.ts';
  test('rules', () => expect(page('07-rules.md'), hint).toBe(makeRulesPage()));
  test('claims', () => expect(page('08-claims.md'), hint).toBe(makeClaimsPage()));
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
