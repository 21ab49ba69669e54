import type { Reporter, TestModule } from 'vitest/node';

/**
 * Ends the run with one plain line that any script can read: `N passed, N failed`. Before it stand the tests that passed
 * at a second try alone: each has a fault, or the program has.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    let skipped = 0;
    const unsteady: string[] = [];
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      // A file that could not be loaded has no tests, and one that could not be set up skips them: neither is a success.
      if (module.state() === 'failed' && tests.every((test) => test.result().state !== 'failed')) {
        failed++;
      }
      for (const test of tests) {
        const { state, errors } = test.result();
        if (test.diagnostic()?.flaky) {
          unsteady.push(`${module.relativeModuleId} > ${test.fullName}: ${errors?.[0]?.message}`);
        }
        if (state === 'passed') passed++;
        else if (state === 'failed') failed++;
        else skipped++;
      }
    }
    const rest = skipped > 0 ? `, ${skipped} skipped` : '';
    const twice = unsteady.map((line) => `\nPassed at the second try: ${line}`).join('');
    // After the other reporters' summary.
    process.on('exit', () =>
      process.stdout.write(`${twice}\n${passed} passed, ${failed} failed${rest}\n`),
    );
  }
}
