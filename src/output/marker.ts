import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as z from 'zod';
import { ignoreMissing } from './error-code.ts';
import { listFiles } from './list-files.ts';

/** Stands in every output: a folder without it, unless it is empty, is never replaced. */
export const markerFile = 'linewright.json';

/** What an earlier run wrote into a folder. */
export interface Marker {
  /** Paths with `/`; undefined where the marker keeps no list, as those of the first edition. */
  readonly files: ReadonlySet<string> | undefined;
}

/** Lists all that stands in the folder, as made here: whatever comes to it later is someone else's. */
export async function writeMarker(folder: string): Promise<void> {
  const files = [...new Set([...(await listFiles(folder)), markerFile])].sort();
  const content = JSON.stringify({ generator: 'linewright', files }, null, 1);
  await writeFile(join(folder, markerFile), `${content}\n`);
}

/** Reads the marker of a folder, if it has one. One that was edited counts as one without a list. */
export async function readMarker(folder: string): Promise<Marker | undefined> {
  const text = await readFile(join(folder, markerFile), 'utf8').catch(ignoreMissing);
  if (text === undefined) return undefined;
  const parsed = listed.safeParse(text);
  return { files: parsed.success ? new Set(parsed.data.files) : undefined };
}

const listed = z
  .string()
  .transform((text, context) => {
    try {
      return JSON.parse(text) as unknown;
    } catch {
      context.addIssue('no JSON');
      return z.NEVER;
    }
  })
  .pipe(z.object({ files: z.array(z.string()) }));
