import path from 'node:path';

export interface BuildOptions {
  readonly out?: string;
  readonly base?: string;
  readonly site?: string;
}

/** Where a course or a shelf is published to unless `--out` says otherwise. */
export function defaultOutput(folder: string): string {
  return path.join(folder, 'site');
}
