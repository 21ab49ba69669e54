import type { Reporter, TestModule } from 'vitest/node';

/** Ends the run with one plain line that any script can read: `N passed, N failed`. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    let skipped = 0;
    for (const module of modules) {
      // A file that could not be loaded has no tests, and must not look like a success.
      if (module.state() === 'failed' && [...module.children.allTests()].length === 0) failed++;
      for (const test of module.children.allTests()) {
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
