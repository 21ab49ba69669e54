import { defineConfig } from 'vitest/config';

/** What the tests of the program and the pages need before the first of them runs. */
const globalSetup = [
  'tests/setup/tools.ts',
  'tests/setup/package-build.ts',
  'tests/setup/run-folder.ts',
];

export default defineConfig({
  test: {
    reporters: ['default', './tests/setup/closing-line.ts'],
    // By default one core is left idle, which on two is half the machine.
    maxWorkers: '100%',
    // Files share modules: none changes what others import, and loading them anew for each file
    // takes longer than most files do.
    isolate: false,
    // Browsers and Astro builds share two cores with the rest.
    testTimeout: 120_000,
    hookTimeout: 240_000,
    expect: { poll: { timeout: 20_000 } },
    projects: [
      {
        extends: true,
        test: { name: 'unit', include: ['src/**/*.test.ts'] },
      },
      {
        extends: true,
        test: { name: 'whole', include: ['tests/**/*.test.ts'], globalSetup },
      },
    ],
  },
});
