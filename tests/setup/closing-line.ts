import type { Reporter, TestModule } from 'vitest/node';

/** Ends the run with one plain line that any script can read: `N passed, N failed`. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    let skipped = 0;
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      // A file that could not be loaded has no tests, and one that could not be set up skips them: neither is a success.
      if (module.state() === 'failed' && tests.every((test) => test.result().state !== 'failed')) {
        failed++;
      }
      for (const test of tests) {
        const { state } = test.result();
        if (state === 'passed') passed++;
        else if (state === 'failed') failed++;
        else skipped++;
      }
    }
    const rest = skipped > 0 ? `, ${skipped} skipped` : '';
    // After the other reporters' summary.
    process.on('exit', () => process.stdout.write(`\n${passed} passed, ${failed} failed${rest}\n`));
  }
}
