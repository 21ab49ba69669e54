import { UserError } from '../diagnostics/index.ts';

/** Why something in a course is not read, in an author's words. */
export interface Refusal {
  readonly message: string;
  readonly hint: string;
}

const outOfTheWay = 'Move it out of the way.';

export const refusals = {
  link: {
    message: 'This is a link, and a course is read without following links.',
    hint: 'Put a copy of what it leads to in its place.',
  },
  folder: { message: 'This is a folder where a file should be.', hint: outOfTheWay },
  file: {
    message: 'This is a file where a folder should be.',
    hint: 'Rename it, and make a folder of this name.',
  },
  pipe: { message: 'This is a pipe, not a file.', hint: outOfTheWay },
  socket: { message: 'This is a socket, not a file.', hint: outOfTheWay },
  device: { message: 'This is a device, not a file.', hint: outOfTheWay },
  name: { message: 'The name of this is not UTF-8 text.', hint: 'Give it another name.' },
  missing: {
    message: 'This was there a moment ago, and is gone.',
    hint: 'Run the command again.',
  },
  changed: {
    message: 'This was changed after it was checked, and is left as it is.',
    hint: 'Run the command again.',
  },
  exchanged: {
    message: 'Another file took the place of this one while it was read.',
    hint: 'Run the command again.',
  },
} as const satisfies Readonly<Record<string, Refusal>>;

/** A file of a course that is not read; `file` is its path in the course. */
export class FileRefusedError extends UserError implements Refusal {
  readonly file: string;

  constructor(file: string, { message, hint }: Refusal) {
    super(message, hint);
    this.file = file;
  }

  override get told(): string {
    return `${this.file}: ${super.told}`;
  }
}

interface Kinds {
  isSymbolicLink(): boolean;
  isDirectory(): boolean;
  isFIFO(): boolean;
  isSocket(): boolean;
  isCharacterDevice(): boolean;
  isBlockDevice(): boolean;
}

/** Why something is not read as a plain file, by what it is; undefined for a plain file. */
export function refusalOf(kinds: Kinds): Refusal | undefined {
  if (kinds.isSymbolicLink()) return refusals.link;
  if (kinds.isDirectory()) return refusals.folder;
  if (kinds.isFIFO()) return refusals.pipe;
  if (kinds.isSocket()) return refusals.socket;
  return kinds.isCharacterDevice() || kinds.isBlockDevice() ? refusals.device : undefined;
}

/** What the system said, for something that cannot be read. */
export function whyRefused(error: unknown): Refusal {
  if (error instanceof FileRefusedError) return error;
  const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  switch (code) {
    case 'ENOENT':
      return refusals.missing;
    case 'EISDIR':
      return refusals.folder;
    case 'ENOTDIR':
      return refusals.file;
    // What opening without following a link says: POSIX, and FreeBSD.
    case 'ELOOP':
    case 'EMLINK':
      return refusals.link;
    case 'ENXIO':
      return refusals.socket;
    default:
      return {
        message: `This cannot be read: the system says ${code}.`,
        hint: 'See who may read it, and whether its disk is well.',
      };
  }
}
