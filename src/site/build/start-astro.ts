import { spawn } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type SiteData, siteDataVariable } from '../site-data.ts';
import { packageRoot } from './package-root.ts';
import { makeWorkFolder, removeWorkFolder } from './work-folder.ts';

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
  /** Builds the pages and returns the folder of the finished files; may be called once. */
  build(data: SiteData): Promise<string>;
  /** Ends the process and removes its folder: to be called in any case. */
  stop(): Promise<void>;
}

export async function startAstro(): Promise<AstroProcess> {
  const work = await makeWorkFolder();
  const dataFile = join(work, 'site-data.json');
  const child = spawn(process.execPath, [processFile, join(packageRoot, 'src', 'site')], {
    cwd: work,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', [siteDataVariable]: dataFile },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  const said: Buffer[] = [];
  child.stdout.on('data', (chunk: Buffer) => said.push(chunk));
  child.stderr.on('data', (chunk: Buffer) => said.push(chunk));
  // A process that died takes no input; why it died is told by how it ended.
  child.stdin.on('error', () => {});
  const ended = new Promise<string | undefined>((resolve) => {
    child.on('error', ({ message }) => resolve(message));
    child.on('close', (code) => {
      const output = Buffer.concat(said).toString('utf8').trim();
      resolve(code === 0 ? undefined : `code ${code}\n${output}`);
    });
  });
  return {
    work,
    async build(data) {
      await writeFile(dataFile, JSON.stringify(data));
      child.stdin.end('build');
      const fault = await ended;
      if (fault !== undefined) throw new Error(`the pages could not be built: ${fault}`);
      return join(work, 'out');
    },
    async stop() {
      child.kill();
      await ended;
      await removeWorkFolder(work);
    },
  };
}
