import path from 'node:path';

export interface BuildOptions {
  readonly out?: string;
  readonly base?: string;
  readonly site?: string;
}

/** The output folder unless `--out` names one. */
export function defaultOutput(folder: string): string {
  return path.join(folder, 'site');
}
