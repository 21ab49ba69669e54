import { spawn } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type SiteData, siteDataVariable } from '../site-data.ts';
import { packageRoot } from './package-root.ts';

/** This module is TypeScript in the tests and JavaScript when built; so is the process's file. */
const processFile = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? './astro-process.ts' : './astro-process.js',
    import.meta.url,
  ),
);

/** Builds the pages of `data` in a work folder and returns the folder of the finished files. */
export async function runAstro(work: string, data: SiteData): Promise<string> {
  const dataFile = join(work, 'site-data.json');
  await writeFile(dataFile, JSON.stringify(data));
  await new Promise<void>((resolve, reject) => {
    const child = spawn(process.execPath, [processFile, join(packageRoot, 'src', 'site')], {
      cwd: work,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', [siteDataVariable]: dataFile },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const said: Buffer[] = [];
    child.stdout.on('data', (chunk: Buffer) => said.push(chunk));
    child.stderr.on('data', (chunk: Buffer) => said.push(chunk));
    child.on('error', reject);
    child.on('close', (code) => {
      if (code === 0) return resolve();
      const output = Buffer.concat(said).toString('utf8').trim();
      reject(new Error(`the pages could not be built (code ${code}):\n${output}`));
    });
  });
  return join(work, 'out');
}
