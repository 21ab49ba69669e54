import { availableParallelism, tmpdir } from 'node:os';
import path from 'node:path';
import { defineConfig, type Plugin } from 'vitest/config';
import { LongestFirst } from './tests/setup/longest-first.ts';
import { multiple } from './tests/setup/runs.ts';

/** What the tests of the program and the pages need before the first of them runs. */
const globalSetup = [
  'tests/setup/tools.ts',
  'tests/setup/package-build.ts',
  'tests/setup/run-folder.ts',
];

/**
 * Packages are loaded as users load them. Vitest would have those that read Markdown check themselves all the while,
 * an eighth of what reading and checking take: at night they do.
 */
const asPublished: Plugin = {
  name: 'as-published',
  configEnvironment(_name, options) {
    if (multiple > 1 || options.resolve?.conditions === undefined) return;
    options.resolve.conditions = options.resolve.conditions.filter(
      (condition) => condition !== 'development|production',
    );
  },
};

/** What a workspace keeps is compared with a fresh run, each time. */
const compareFresh = { LINEWRIGHT_COMPARE_FRESH: '1' };

/** Unit tests that start processes to draw, or wait for the disk to tell of changes. */
const slowUnits = ['src/draw/{card,png}/*.test.ts', 'src/pipeline/watch-course.test.ts'];

export default defineConfig({
  plugins: [asPublished],
  test: {
    env: {
      // Not the cache of whoever runs them.
      LINEWRIGHT_CACHE: path.join(tmpdir(), 'linewright-tests-cache'),
      // What one process has compiled, those after it need not: a fifth of what unit tests take.
      NODE_COMPILE_CACHE: path.join(tmpdir(), 'linewright-tests-modules'),
    },
    reporters: ['default', './tests/setup/closing-line.ts'],
    // By default one core is left idle, which on two is half the machine. More workers than cores would only take the
    // caches from each other: with two more, files that run programs and unit tests take a fifth longer.
    maxWorkers: availableParallelism(),
    // Files share modules: none changes what others import, and loading them anew for each file
    // takes longer than most files do.
    isolate: false,
    sequence: { sequencer: LongestFirst, groupOrder: 2 },
    experimental: { viteModuleRunner: false },
    setupFiles: ['tests/setup/seed.ts'],
    // Only what hangs comes to them: browsers and Astro builds share two cores with the rest, and a machine that tests
    // may be slow and busy.
    testTimeout: 300_000 * Math.max(1, multiple),
    hookTimeout: 400_000,
    expect: { poll: { timeout: 60_000 } },
    projects: [
      // They run in the order of their names: the longest files first, so that no core waits long.
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup,
          // The last line of a run names those that needed it.
          retry: 1,
          // These wait for their browsers.
          maxWorkers: availableParallelism() + 1,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'program',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          globalSetup,
        },
      },
      // `npm run test:quick`: without a browser, a build or another program.
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['src/**/*.test.ts'],
          exclude: ['src/**/*.alone.test.ts', ...slowUnits],
          env: compareFresh,
        },
      },
      { extends: true, test: { name: 'slow-unit', include: slowUnits, env: compareFresh } },
      // Files that put something else in the place of a module, which no other file may meet.
      {
        extends: true,
        test: {
          name: 'alone',
          include: ['src/**/*.alone.test.ts'],
          isolate: true,
          experimental: { viteModuleRunner: true },
        },
      },
    ],
  },
});
