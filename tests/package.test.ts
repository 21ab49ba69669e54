/** The package as it is published: packed, installed into an empty folder, used on other courses. */
import { execFileSync, spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { multiple } from './setup/runs.ts';

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

/** What package-lock.json says of each package, by where it stands. */
interface LockFile {
  readonly packages: Record<string, { readonly dev?: boolean; readonly devOptional?: boolean }>;
}

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
  if (multiple > 1) {
    const install = ['install', '--no-audit', '--no-fund', '--omit=dev', '--prefer-offline'];
    execFileSync('npm', [...install, archive], { cwd: work, env, stdio: 'ignore' });
  } else unpack(archive);
}, 400_000);

/**
 * Does what npm does at night, in a tenth of its time: our package is unpacked, and beside it stands each package that it
 * declares, by a link to the one of this checkout. What it uses and does not declare is missing.
 */
function unpack(archive: string): void {
  const modules = path.join(work, 'node_modules');
  const own = path.join(modules, 'linewright');
  mkdirSync(own, { recursive: true });
  execFileSync('tar', ['-xzf', archive, '--strip-components=1', '-C', own]);
  const { bin, dependencies } = JSON.parse(
    readFileSync(path.join(own, 'package.json'), 'utf8'),
  ) as Record<'bin' | 'dependencies', Record<string, string>>;
  mkdirSync(path.join(modules, '.bin'));
  for (const [name, file] of Object.entries(bin)) {
    symlinkSync(path.join('../linewright', file), path.join(modules, '.bin', name));
  }
  for (const name of Object.keys(dependencies)) {
    mkdirSync(path.dirname(path.join(modules, name)), { recursive: true });
    symlinkSync(path.join(root, 'node_modules', name), path.join(modules, name));
  }
}
afterAll(() => rmSync(work, { recursive: true, force: true }));

function linewright(...args: readonly string[]) {
  const program = path.join(work, 'node_modules/.bin/linewright');
  return spawnSync(program, args, { cwd: work, env, encoding: 'utf8' });
}

test('ships what is needed', () => {
  for (const file of [
    'README.md',
    'LICENSE',
    'src/draw/PIECES-LICENCE.txt',
    'dist/editor/linewright.vsix',
  ]) {
    expect(shipped).toContain(file);
  }
});

test('ships neither tests nor what only tests use', () => {
  const ofTests =
    /\.test\.|(?:^|\/)(?:tests?|testing|bench|fuzz)\/|arbitrary-|fixture|^demo-course\//;
  expect(shipped.filter((file) => ofTests.test(file))).toEqual([]);
  // The program and its types; what Astro made of the pages; the course that `new` copies.
  const known = [
    /^dist\/(?:addresses|changes|check|chess|cli|contract|diagnostics|draw|edit|engine|facts|files|gaps|import|look|lookup|lsp|own-rules|translation)\/.*\.(?:js|d\.ts)$/,
    /^dist\/(?:astro|dev|media|model|movetext|output|pipeline|publish|read|remark|render|site|strings|workspace)\/.*\.(?:js|d\.ts)$/,
    /^dist\/(?:code-hash\.txt|dependencies\.json|index\.(?:js|d\.ts))$/,
    /^dist\/(?:assets|live|offline)\/[\w.-]+$/,
    // For editors of the VS Code family.
    /^dist\/editor\/linewright\.vsix$/,
    /^dist\/(?:cli|remark)\/licences\.txt$/,
    /^dist\/site\/pages\/(?:licence\.txt|(?:chunks\/)?[\w.-]+\.mjs)$/,
    // For Astro to compile.
    /^src\/astro\/components\/\w+\.(?:astro|ts)$/,
    /^content\/(?:handbook|looks|readme|starter)\//,
    /^src\/draw\/PIECES-LICENCE\.txt$/,
    /^(?:LICENSE|README\.md|package\.json)$/,
  ];
  expect(shipped.filter((file) => !known.some((pattern) => pattern.test(file)))).toEqual([]);
});

test('needs neither Astro nor what bundled the pages', () => {
  const { packages } = JSON.parse(
    readFileSync(path.join(root, 'package-lock.json'), 'utf8'),
  ) as LockFile;
  const installed = Object.entries(packages)
    .filter(([, { dev, devOptional }]) => !dev && !devOptional)
    .map(([place]) => place.split('node_modules/').at(-1) ?? '');
  expect(installed).toContain('remark-parse');
  expect(
    installed.filter((name) => /^(?:astro|@astrojs\/.*|vite|rolldown|esbuild)$/.test(name)),
  ).toEqual([]);
});

test('keeps what was compiled beside the program, and runs where it cannot', () => {
  const own = path.join(work, 'node_modules/linewright/dist/compiled');
  // The tests keep theirs elsewhere.
  const alone = { ...env, NODE_COMPILE_CACHE: undefined };
  const program = path.join(work, 'node_modules/.bin/linewright');
  const version = () => spawnSync(program, ['--version'], { env: alone, encoding: 'utf8' });
  const first = version();
  expect(readdirSync(own)).toHaveLength(1);
  expect(version()).toEqual({ ...first, pid: expect.any(Number) });
  rmSync(own, { recursive: true });
  writeFileSync(own, 'a file where the folder would be');
  expect(version()).toEqual({ ...first, pid: expect.any(Number) });
  rmSync(own);
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

/** A chapter with every kind of block, and what stands in text. */
const chapter = `# Two knights

\`\`\`moves
1. e4 e5 2. Nf3 {:here[knight "A knight looks at e5"] :plan[f3-e5]} ( 2. Nc3 ) 2... Nc6 =
\`\`\`

After \`2.Nf3\` see [the knight](pos:knight). :mark[e5]

\`\`\`diagram at="knight"
caption: The knight.
\`\`\`

\`\`\`exercise after="1. e4 e5"
ask: Which knight?
answer: Nf3
\`\`\`

\`\`\`pattern
title: Two pawns
white: e4
black: e5
\`\`\`
`;

test.each(['linewright', 'linewright/remark'])('gives other pipelines the plugin: %s', (entry) => {
  const script = `
    import { createRequire } from 'node:module';
    const require = createRequire(import.meta.resolve('linewright'));
    const { unified } = await import(require.resolve('unified'));
    const { default: remarkParse } = await import(require.resolve('remark-parse'));
    const { VFile } = await import(require.resolve('vfile'));
    const { toHast } = await import(require.resolve('mdast-util-to-hast'));
    const { toHtml } = await import(require.resolve('hast-util-to-html'));
    const { remarkLinewright } = await import('${entry}');
    const file = new VFile({ path: 'a.md', value: ${JSON.stringify(`${chapter}
\`\`\`moves
1. e4 e5 2. Ke3
\`\`\`
`)} });
    const processor = unified().use(remarkParse).use(remarkLinewright, { side: 'white' });
    const tree = await processor.run(processor.parse(file), file);
    console.log(JSON.stringify({
      said: file.messages.filter(({ fatal }) => fatal).map(String),
      kinds: file.data.linewright.blocks.map(({ kind }) => kind),
      html: toHtml(toHast(tree)),
    }));`;
  const file = path.join(work, 'plugin.mjs');
  writeFileSync(file, script);
  const { said, kinds, html } = JSON.parse(
    execFileSync(process.execPath, [file], { cwd: work, encoding: 'utf8' }),
  ) as { said: string[]; kinds: string[]; html: string };
  expect(said).toEqual([expect.stringContaining('2.Ke3 cannot be played')]);
  expect(kinds).toEqual(['moves', 'diagram', 'exercise', 'pattern', 'moves']);
  const words = html.replace(/<desc>.*?<\/desc>|<[^>]+>/gs, '').replace(/\s+/g, ' ');
  expect(words).toContain('1. e4 e5 2. Nf3');
  expect(words).toContain('After 2.Nf3 see the knight.');
  expect(words).toContain('Which knight?');
  expect(words).not.toMatch(/undefined|pos:|here\[/);
  expect(html.split('<svg').length).toBeGreaterThan(2);
  const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  for (const [, id] of html.matchAll(/ href="#([^"]*)"/g)) expect(ids).toContain(id);
});
