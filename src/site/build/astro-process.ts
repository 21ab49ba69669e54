/**
 * The process that `start-astro.ts` starts: builds the pages in the folder it is started in, once
 * it is told to. If its input ends without a word there is nothing to build.
 * A process of its own, since Astro keeps modules of an earlier build, writes to the working
 * directory, and would take this one's place.
 */
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { pathToFileURL } from 'node:url';
import { packageRoot } from './package-root.ts';

const [, , srcDir] = process.argv;
if (srcDir === undefined) throw new Error('astro-process needs the folder of the pages');
const work = process.cwd();

const { build } = await import('astro');
const { default: settings } = await import(
  pathToFileURL(join(packageRoot, 'astro.config.mjs')).href
);
if ((await text(process.stdin)) === '') process.exit();
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
