import { fileURLToPath } from 'node:url';

/** The finished looks: each a folder with what it puts into a course. */
export const lookNames = ['library', 'chalk', 'bill'] as const;
export type LookName = (typeof lookNames)[number];

export function lookFolder(name: LookName): string {
  return fileURLToPath(new URL(`../../content/looks/${name}`, import.meta.url));
}
