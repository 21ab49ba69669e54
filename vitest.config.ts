import { availableParallelism, tmpdir } from 'node:os';
import path from 'node:path';
import { defineConfig } from 'vitest/config';
import { multiple } from './tests/setup/runs.ts';

/** What the tests of the program and the pages need before the first of them runs. */
const globalSetup = [
  'tests/setup/tools.ts',
  'tests/setup/package-build.ts',
  'tests/setup/run-folder.ts',
];

export default defineConfig({
  test: {
    // Not the cache of whoever runs them.
    env: { LINEWRIGHT_CACHE: path.join(tmpdir(), 'linewright-tests-cache') },
    reporters: ['default', './tests/setup/closing-line.ts'],
    // By default one core is left idle, which on two is half the machine; one more worker than
    // cores, since pages and programs that tests wait for leave them idle too.
    maxWorkers: availableParallelism() + 1,
    // Files share modules: none changes what others import, and loading them anew for each file
    // takes longer than most files do.
    isolate: false,
    // Browsers and Astro builds share two cores with the rest.
    testTimeout: 120_000 * Math.max(1, multiple),
    hookTimeout: 240_000,
    expect: { poll: { timeout: 20_000 } },
    projects: [
      // They run in the order of their names: the longest files first, so that no core waits long.
      {
        extends: true,
        test: { name: 'browser', include: ['tests/browser/**/*.test.ts'], globalSetup },
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
          exclude: ['src/**/*.alone.test.ts'],
          // What a workspace keeps is compared with a fresh run, each time.
          env: { LINEWRIGHT_COMPARE_FRESH: '1' },
        },
      },
      // Files that put something else in the place of a module, which no other file may meet.
      {
        extends: true,
        test: { name: 'alone', include: ['src/**/*.alone.test.ts'], isolate: true },
      },
    ],
  },
});
