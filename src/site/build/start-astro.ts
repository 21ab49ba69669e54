import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onExit } from 'signal-exit';
import { type SiteData, siteDataVariable } from '../site-data.ts';
import type { AstroAnswer } from './astro-process.ts';
import { packageRoot } from './package-root.ts';
import { makeWorkFolder } from './work-folder.ts';

/** This module is TypeScript in the tests and JavaScript when built; so is the process's file. */
const processFile = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? './astro-process.ts' : './astro-process.js',
    import.meta.url,
  ),
);

/** Astro in a process of its own, that gets ready while the course is still being read. */
export interface AstroProcess {
  /** A folder for what is made beside the pages, on the same device as they are. */
  readonly work: string;
  /**
   * Builds the pages and returns the folder of the finished files; may be called once.
   * @throws what Astro does; an error of the system keeps its `code` and `path`.
   */
  build(data: SiteData): Promise<string>;
  /** Ends the process and removes its folder: to be called in any case. */
  stop(): Promise<void>;
}

export async function startAstro(): Promise<AstroProcess> {
  const folder = await makeWorkFolder();
  const work = folder.path;
  const dataFile = join(work, 'site-data.json');
  const child = spawn(process.execPath, [processFile, join(packageRoot, 'src', 'site')], {
    cwd: work,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', [siteDataVariable]: dataFile },
    // The channel tells the child that this process is gone, even where it was killed.
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
  });
  // Ended before the folder is removed, or it would go on writing there.
  const forget = onExit(() => void child.kill('SIGKILL'));
  const ended = endOf(child);
  return {
    work,
    async build(data) {
      await writeFile(dataFile, JSON.stringify(data));
      if (child.connected) child.send('build', () => {});
      await ended.then((fault) => {
        if (fault !== undefined) throw fault;
      });
      return join(work, 'out');
    },
    async stop() {
      child.kill('SIGKILL');
      await ended;
      forget();
      await folder.remove();
    },
  };
}

/** Waits for the end of the process: undefined if it built the pages, else why it did not. */
async function endOf(child: ChildProcess): Promise<Error | undefined> {
  const said: Buffer[] = [];
  let answer: AstroAnswer | undefined;
  child.stdout?.on('data', (chunk: Buffer) => said.push(chunk));
  child.stderr?.on('data', (chunk: Buffer) => said.push(chunk));
  child.on('message', (message: AstroAnswer) => {
    answer = message;
  });
  try {
    const [code] = await once(child, 'close');
    if (answer?.done) return undefined;
    const output = Buffer.concat(said).toString('utf8').trim();
    const fault = new Error(`the pages could not be built: code ${code}\n${output}`);
    return Object.assign(fault, answer?.fault);
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error));
  }
}
