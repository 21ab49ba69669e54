import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder that all test files of one run share. */
    runFolder: string;
  }
}

/** Called for each project of the run, each with its own copy of this module. */
const sharing = globalThis as { linewrightRunFolder?: string };

/** Makes the folder in which test files leave what others of the same run use too. */
export default function setup(project: TestProject): () => Promise<void> {
  sharing.linewrightRunFolder ??= mkdtempSync(path.join(tmpdir(), 'linewright-tests-'));
  const folder = sharing.linewrightRunFolder;
  project.provide('runFolder', folder);
  return () => rm(folder, { recursive: true, force: true });
}
