/** Builds the package into dist/: the program, what browsers load, the scripts of the live preview. */
import { execFileSync } from 'node:child_process';
import { chmodSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { buildBrowser } from './build-browser.mjs';
import { buildPages } from './build-pages.mjs';
import { buildProgram } from './build-program.mjs';
import { buildRemark } from './build-remark.mjs';
import { packEditor } from './pack-editor.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const typescript = dirname(createRequire(import.meta.url).resolve('typescript/package.json'));

rmSync(join(root, 'dist'), { recursive: true, force: true });
// `npm run types` checks; here that would be done a second time.
const compile = [join(typescript, 'bin/tsc'), '-p', 'tsconfig.build.json', '--noCheck'];
execFileSync(process.execPath, compile, { cwd: root, stdio: 'inherit' });
chmodSync(join(root, 'dist/cli/main.js'), 0o755);
// What pages have in `dev` alone: a script and a style sheet for each part of the desk, by its name.
const buildLive = () =>
  build({
    entryPoints: [
      { in: join(root, 'src/browser/desk/main.ts'), out: 'desk' },
      { in: join(root, 'src/site/styles/desk.css'), out: 'desk' },
      { in: join(root, 'src/browser/desk/write/main.ts'), out: 'write' },
      { in: join(root, 'src/site/styles/write.css'), out: 'write' },
    ],
    outdir: join(root, 'dist/live'),
    bundle: true,
    format: 'iife',
  });
// esbuild has its own process: what it bundles and what Astro compiles are made at once.
await Promise.all([
  buildPages(),
  buildBrowser(),
  buildLive(),
  buildProgram(),
  buildRemark(),
  packEditor(),
]);

// What is kept on a disk is kept by this.
const { hashFolder } = await import('../dist/files/code-hash.js');
const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
// What is published is also the work of these.
writeFileSync(join(root, 'dist/dependencies.json'), JSON.stringify(dependencies));
writeFileSync(join(root, 'dist/code-hash.txt'), await hashFolder(join(root, 'dist/')));
