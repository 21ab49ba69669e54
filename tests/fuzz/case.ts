/** What a fuzzer tries: a few files, and which part of Linewright is to take them. */

export const targetNames = ['course', 'folder', 'archive'] as const;

/**
 * - `course`: the texts of a course, by their paths, read in memory;
 * - `folder`: the same on a disk, where each character is one byte;
 * - `archive`: one PGN file, `games.pgn`, each character one byte: compared with a course, imported.
 */
export type TargetName = (typeof targetNames)[number];

export type Files = Readonly<Record<string, string>>;

export interface FuzzCase {
  readonly target: TargetName;
  readonly files: Files;
  /** Whether what the check calls an error is to be taken out first (`make/settle.ts`). */
  readonly settle?: boolean;
}

/** What became of a case: as it was tried, settled. */
export interface Outcome {
  readonly tried: FuzzCase;
  readonly failures: readonly Failure[];
}

/** What did not hold. */
export interface Failure {
  /** The oracle that says so. */
  readonly oracle: string;
  readonly message: string;
}

/** One thing that must hold for every case. Gives a sentence for each way in which it does not. */
export interface Oracle<Subject> {
  readonly name: string;
  readonly examine: (subject: Subject) => Iterable<string> | AsyncIterable<string>;
}

/** The same for failures of one cause: what differs from case to case is left out. */
export function signatureOf({ oracle, message }: Failure): string {
  const [first = ''] = message.split('\n');
  const plain = first
    .replace(/"(?:[^"\\]|\\.)*"|`[^`]*`|'[^']*'/g, '…')
    .replace(/[^ -~]+/g, '…')
    .replace(/\d+/g, 'N');
  const at = /\bat .*?((?:src|node_modules)\/[\w./-]+\.ts|node_modules\/[^:)]+)/.exec(message)?.[1];
  return `${oracle}: ${plain.slice(0, 160)}${at === undefined ? '' : ` at ${at}`}`;
}
