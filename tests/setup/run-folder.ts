import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder that all test files of one run share. */
    runFolder: string;
  }
}

/** Makes the folder in which test files leave what others of the same run use too. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(path.join(tmpdir(), 'linewright-tests-'));
  project.provide('runFolder', folder);
  return () => rm(folder, { recursive: true, force: true });
}
