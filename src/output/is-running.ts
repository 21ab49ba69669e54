import { errorCode } from './error-code.ts';

/** Whether a process of this machine runs, by its number; also one of another user. */
export function isRunning(process_: number): boolean {
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return errorCode(error) !== 'ESRCH';
  }
}
