import { tmpdir } from 'node:os';
import path from 'node:path';
import { sentence } from './sentence.ts';

/** What the system says where it refuses: a folder that may not be written, a disk that is full. */
export function isSystemError(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && 'syscall' in error && 'code' in error;
}

/** One or two sentences on an error of the system, with what to do where that is known. */
export function explainSystemError(error: NodeJS.ErrnoException): string {
  if (error.code === 'ENOSPC' || error.code === 'EDQUOT') return explainFullDisk(error);
  return sentence(`${error.message.replace(/^\w+: /, '')} (${error.code})`);
}

/** Not every call names its file: a write to one that is open does not. */
function explainFullDisk({ path: file, code }: NodeJS.ErrnoException): string {
  const temporary = `that of temporary files (${tmpdir()})`;
  const isTemporary = file !== undefined && !path.relative(tmpdir(), file).startsWith('..');
  const which =
    file === undefined
      ? `${temporary} or that of the output`
      : isTemporary
        ? temporary
        : `that of ${file}`;
  return (
    `A disk is full: ${which} (${code}). Make room on it, or set TMPDIR to a folder on another disk. ` +
    'An earlier output stands as it was.'
  );
}
