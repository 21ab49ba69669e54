import { existsSync } from 'node:fs';
import path from 'node:path';
import type { TestSpecification } from 'vitest/node';
import { BaseSequencer } from 'vitest/node';

/**
 * The files that take longest, from the longest: of a project, these go first, so that at its end no core waits for one
 * of them. Vitest knows what files took in an earlier run; on a fresh checkout it goes by their sizes, and the longest
 * are among the smallest.
 */
const longest = [
  'tests/browser/pages.test.ts',
  'tests/browser/reading.test.ts',
  'tests/browser/practice.test.ts',
  'tests/browser/finding.test.ts',
  'tests/browser/offline.test.ts',
  'tests/browser/exercise.test.ts',
  'tests/browser/accessibility.test.ts',
  'tests/browser/policy.test.ts',
  'tests/browser/compare.test.ts',
  'tests/browser/live.test.ts',
  'tests/browser/practice-storage.test.ts',
  'tests/browser/right-to-left.test.ts',
  'tests/browser/shelf.test.ts',
  'tests/growth/growth.test.ts',
  'tests/fuzz/fuzz.test.ts',
  'tests/mutation/mutation.test.ts',
  'tests/interrupted.test.ts',
  'tests/publish/book.test.ts',
  'tests/published-site.test.ts',
  'tests/package.test.ts',
  'tests/engine.test.ts',
  'tests/compare.test.ts',
  'tests/made-courses/made-courses.test.ts',
  'tests/claims/claim-oracle.test.ts',
  'tests/handbook.test.ts',
  'tests/chess/random-games.test.ts',
  'tests/publish/commands.test.ts',
  'tests/publish/directives-round-trip.test.ts',
  'src/workspace/workspace.test.ts',
  'src/pipeline/watch-course.test.ts',
  'src/movetext/properties.test.ts',
  'src/pipeline/build/site-memory.test.ts',
  'src/translation/plan-translation.test.ts',
  'src/lookup/search/search-positions.test.ts',
  'src/draw/card/card.test.ts',
  'src/draw/png/pngs.test.ts',
  'src/site/desk/mark-findings.test.ts',
  'src/pipeline/build/keep-parts.test.ts',
  'src/model/plain-syntax.test.ts',
  'src/edit/properties.test.ts',
  'src/check/claims/symmetry.test.ts',
  'src/own-rules/own-rules.test.ts',
];

const rank = ({ project, moduleId }: TestSpecification): number => {
  const at = longest.indexOf(path.relative(project.config.root, moduleId));
  return at < 0 ? longest.length : at;
};

/** Projects in the order of their names, and in each the longest files first. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const gone = longest.filter((file) => !existsSync(path.join(this.ctx.config.root, file)));
    if (gone.length > 0) throw new Error(`longest-first.ts names no file: ${gone.join(', ')}`);
    const sorted = await super.sort(files);
    const names = [...new Set(sorted.map(({ project }) => project.name))];
    // The rest stays in the order of sizes.
    return names.flatMap((name) =>
      sorted.filter(({ project }) => project.name === name).sort((a, b) => rank(a) - rank(b)),
    );
  }
}
