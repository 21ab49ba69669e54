import { explainSystemError, isSystemError, UserError } from '../diagnostics/index.ts';
import { exitCodes, stderr } from './console.ts';

/** Prints why a command failed; a fault of ours with its stack. @returns the exit code. */
export function explainError(error: unknown): number {
  if (error instanceof Error && 'code' in error && String(error.code).startsWith('commander.')) {
    // Commander has printed it; help and version are no failures.
    return 'exitCode' in error && error.exitCode === 0 ? exitCodes.clean : exitCodes.failed;
  }
  if (error instanceof UserError) stderr.print`${error.told}\n`;
  else if (isSystemError(error)) stderr.print`${explainSystemError(error)}\n`;
  else {
    const stack = error instanceof Error ? error.stack : String(error);
    stderr.printLines(`This is a fault in Linewright, not in your course.\n${stack}\n`);
  }
  return exitCodes.failed;
}
