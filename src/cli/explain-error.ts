import { explainSystemError, isSystemError, sentence, UserError } from '../diagnostics/index.ts';
import { FileRefusedError } from '../files/index.ts';
import { NoCourseError } from '../read/index.ts';
import { exitCodes, stderr } from './console.ts';

/** Prints why a command failed; a fault of ours with its stack. @returns the exit code. */
export function explainError(error: unknown): number {
  if (error instanceof Error && 'code' in error && String(error.code).startsWith('commander.')) {
    // Commander has printed it; help and version are no failures.
    return 'exitCode' in error && error.exitCode === 0 ? exitCodes.clean : exitCodes.failed;
  }
  if (error instanceof NoCourseError) stderr.print`${error.message}\n`;
  else if (error instanceof FileRefusedError) {
    stderr.print`${error.file}: ${error.message} ${error.hint}\n`;
  } else if (error instanceof UserError) {
    stderr.print`${sentence(error.message)} ${sentence(error.hint)}\n`;
  } else if (isSystemError(error)) stderr.print`${explainSystemError(error)}\n`;
  else {
    const stack = error instanceof Error ? error.stack : String(error);
    stderr.printLines(`This is a fault in Linewright, not in your course.\n${stack}\n`);
  }
  return exitCodes.failed;
}
