import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'tests/**/*.test.ts'],
    globalSetup: [
      'tests/setup/tools.ts',
      'tests/setup/package-build.ts',
      'tests/setup/run-folder.ts',
    ],
    reporters: ['default', './tests/setup/closing-line.ts'],
    // By default one core is left idle, which on two is half the machine.
    maxWorkers: '100%',
    // Browsers and Astro builds share two cores with the rest.
    testTimeout: 120_000,
    hookTimeout: 240_000,
    expect: { poll: { timeout: 20_000 } },
  },
});
