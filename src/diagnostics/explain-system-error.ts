import { tmpdir } from 'node:os';
import path from 'node:path';
import { sentence } from './sentence.ts';

interface SystemError extends NodeJS.ErrnoException {
  /** The second path of a call that has two. */
  readonly dest?: string;
}

/** What the system says where it refuses: a folder that may not be written, a disk that is full. */
export function isSystemError(error: unknown): error is SystemError {
  return error instanceof Error && 'syscall' in error && 'code' in error;
}

/** One or two sentences on an error of the system, with what to do where that is known. */
export function explainSystemError(error: SystemError): string {
  if (error.code === 'ENOSPC' || error.code === 'EDQUOT') return explainFullDisk(error);
  if (error.code === 'ENAMETOOLONG') return explainLongName(error);
  return sentence(`${error.message.replace(/^\w+: /, '')} (${error.code})`);
}

/** Files are named by what an author names. */
function explainLongName({ path: file = '', dest, code }: SystemError): string {
  const name = path.basename(dest ?? file);
  return (
    `A name is too long for a file (${code}): ${name.slice(0, 60)}…. ` +
    'Give the course, chapter or position that it is made of a shorter one.'
  );
}

/** Not every call names its file: a write to one that is open does not. */
function explainFullDisk({ path: named, code, dest }: SystemError): string {
  // A copy names what it reads first.
  const file = dest ?? named;
  const isTemporary = file === undefined || !path.relative(tmpdir(), file).startsWith('..');
  const elsewhere = `, or set TMPDIR to a folder on another one: temporary files are in ${tmpdir()}`;
  return (
    `A disk is full (${code})${file === undefined ? '' : `: ${file} could not be written`}. ` +
    `Make room on it${isTemporary ? elsewhere : ''}. An earlier output stands as it was.`
  );
}
