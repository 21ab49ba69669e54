/** The package as it is published: packed, installed into an empty folder, used on other courses. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..');
const work = mkdtempSync(path.join(tmpdir(), 'linewright-package-'));
// Programs of the package start with the node that runs the tests: the system's may be older.
const env = {
  ...process.env,
  NO_COLOR: '1',
  LINEWRIGHT_CACHE: path.join(work, 'cache'),
  PATH: `${path.dirname(process.execPath)}${path.delimiter}${process.env.PATH}`,
};
let shipped: string[] = [];

beforeAll(() => {
  // Built already: the lifecycle script would only do it again.
  const packed = execFileSync(
    'npm',
    ['pack', '--ignore-scripts', '--json', '--pack-destination', work],
    { cwd: root, encoding: 'utf8' },
  );
  const report = JSON.parse(packed);
  const [entry] = (Array.isArray(report) ? report : Object.values(report)) as {
    filename: string;
    files: { path: string }[];
  }[];
  if (!entry) throw new Error('npm pack made no package');
  shipped = entry.files.map((file) => file.path);
  writeFileSync(path.join(work, 'package.json'), '{ "private": true, "type": "module" }');
  const archive = path.join(work, entry.filename);
  execFileSync('npm', ['install', '--no-audit', '--no-fund', '--omit=dev', archive], {
    cwd: work,
    env,
    stdio: 'ignore',
  });
}, 400_000);
afterAll(() => rmSync(work, { recursive: true, force: true }));

function linewright(...args: readonly string[]) {
  const program = path.join(work, 'node_modules/.bin/linewright');
  return spawnSync(program, args, { cwd: work, env, encoding: 'utf8' });
}

test('ships what is needed', () => {
  for (const file of ['README.md', 'LICENSE', 'src/draw/PIECES-LICENCE.txt']) {
    expect(shipped).toContain(file);
  }
});

test('ships neither tests nor what only tests use', () => {
  const ofTests =
    /\.test\.|(?:^|\/)(?:tests?|testing|bench|fuzz)\/|arbitrary-|fixture|^demo-course\//;
  expect(shipped.filter((file) => ofTests.test(file))).toEqual([]);
  // The program and its types; what Astro made of the pages; the course that `new` copies.
  const known = [
    /^dist\/(?:addresses|browser|changes|check|chess|cli|contract|diagnostics|draw|engine|facts|files|gaps|import|lookup)\/.*\.(?:js|d\.ts)$/,
    /^dist\/(?:media|model|movetext|output|publish|read|render|site|strings|workspace)\/.*\.(?:js|d\.ts)$/,
    /^dist\/(?:code-hash\.txt|dependencies\.json|(?:index|remark-linewright)\.(?:js|d\.ts))$/,
    /^dist\/(?:assets|live|offline)\/[\w.-]+$/,
    /^dist\/cli\/licences\.txt$/,
    /^dist\/site\/pages\/(?:licence\.txt|(?:chunks\/)?[\w.-]+\.mjs)$/,
    /^content\/starter\//,
    /^src\/draw\/PIECES-LICENCE\.txt$/,
    /^(?:LICENSE|README\.md|package\.json)$/,
  ];
  expect(shipped.filter((file) => !known.some((pattern) => pattern.test(file)))).toEqual([]);
});

test('needs neither Astro nor what bundled the pages', () => {
  const installed = readdirSync(path.join(work, 'node_modules'));
  expect(
    installed.filter((name) => /^(?:astro|@astrojs|vite|rolldown|esbuild)$/.test(name)),
  ).toEqual([]);
});

test('makes, checks and builds a course outside the package', () => {
  expect(linewright('new', 'my-course').status).toBe(0);
  const checked = linewright('check', 'my-course');
  expect(checked.stdout).toContain('No findings');
  const built = linewright('build', 'my-course');
  expect(built.stderr).toBe('');
  expect(built.status).toBe(0);
  expect(readdirSync(path.join(work, 'my-course/site'))).toContain('the-main-line.html');
});

test('gives other pipelines the remark plugin', () => {
  const script = `
    import { createRequire } from 'node:module';
    const require = createRequire(import.meta.resolve('linewright'));
    const { unified } = await import(require.resolve('unified'));
    const { default: remarkParse } = await import(require.resolve('remark-parse'));
    const { VFile } = await import(require.resolve('vfile'));
    const { remarkLinewright } = await import('linewright');
    const file = new VFile({ path: 'a.md', value: '\`\`\`moves\\n1. e4 e5 2. Ke3\\n\`\`\`\\n' });
    const processor = unified().use(remarkParse).use(remarkLinewright);
    await processor.run(processor.parse(file), file);
    console.log(JSON.stringify({ said: file.messages.map(String), nodes: file.data.linewright.blocks[0].nodes.length }));`;
  const file = path.join(work, 'plugin.mjs');
  writeFileSync(file, script);
  const { said, nodes } = JSON.parse(
    execFileSync(process.execPath, [file], { cwd: work, encoding: 'utf8' }),
  );
  expect(said).toEqual([expect.stringContaining('a.md:2:13-2:16: 2.Ke3 cannot be played')]);
  expect(nodes).toBe(4);
});
