import { readFileSync } from 'node:fs';

/** Our own package.json; `src/cli` and `dist/cli` lie equally deep. */
export function packageFile(): { readonly version: string; readonly homepage?: string } {
  return JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
}

export function packageVersion(): string {
  return packageFile().version;
}
