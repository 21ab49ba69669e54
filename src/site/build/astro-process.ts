/**
 * The process that `start-astro.ts` starts: builds the pages in the folder it is started in, once
 * it is told to.
 * A process of its own, since Astro keeps modules of an earlier build, writes to the working
 * directory, and would take this one's place.
 */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { packageRoot } from './package-root.ts';

export interface SystemFault {
  readonly code: string;
  readonly path?: string;
  readonly syscall?: string;
}

/** What it says at the end. */
export interface AstroAnswer {
  readonly done: boolean;
  /** What the system said, where it refused to read or write. */
  readonly fault?: SystemFault | undefined;
}

const [, , srcDir] = process.argv;
if (srcDir === undefined) throw new Error('astro-process needs the folder of the pages');
const work = process.cwd();

process.on('disconnect', leave);
// It may have come before anybody listened.
if (process.send !== undefined && !process.connected) leave();
const told = new Promise<void>((resolve) => process.once('message', () => resolve()));

const { build } = await import('astro');
const { default: settings } = await import(
  pathToFileURL(join(packageRoot, 'astro.config.mjs')).href
);
await told;
try {
  await build({
    ...settings,
    configFile: false,
    root: work,
    srcDir,
    outDir: join(work, 'out'),
    publicDir: join(work, 'public'),
    cacheDir: join(work, 'astro-cache'),
    vite: { cacheDir: join(work, 'vite-cache'), logLevel: 'error' },
  });
  await answer({ done: true });
} catch (error) {
  process.exitCode = 1;
  console.error(error);
  await answer({ done: false, fault: systemFault(error) });
}
process.exit();

/** Whoever started this was killed, so nobody else removes the folder. */
function leave(): never {
  process.chdir(packageRoot);
  rmSync(work, { recursive: true, force: true, maxRetries: 3 });
  process.exit();
}

function answer(message: AstroAnswer): Promise<void> {
  return new Promise((resolve) => {
    if (process.send) process.send(message, () => resolve());
    else resolve();
  });
}

function systemFault(error: unknown): SystemFault | undefined {
  // The bundler says it in words only.
  if (/No space left on device|ENOSPC/.test(String(error))) {
    return { code: 'ENOSPC', path: work, syscall: 'write' };
  }
  if (!(error instanceof Error && 'code' in error && 'syscall' in error)) return undefined;
  const { code, path, syscall } = error as NodeJS.ErrnoException;
  return { code: String(code), ...(path && { path }), ...(syscall && { syscall }) };
}
