/**
 * Makes what browsers load, into dist/assets: one script, one style sheet, the fonts, and
 * manifest.json with their names. Names carry a hash of the content, so that a host may let
 * browsers keep them for ever.
 */
import { createHash } from 'node:crypto';
import { copyFile, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, transform } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = join(root, 'dist', 'assets');
const fontPackage = dirname(
  createRequire(import.meta.url).resolve('@fontsource/source-serif-4/package.json'),
);
/** In the order of the cascade. */
const sheets = [
  'draw/board.css',
  'site/styles/fonts.css',
  'site/styles/page.css',
  'site/styles/contents.css',
  'site/styles/moves.css',
  'site/styles/exercise.css',
  'site/styles/game.css',
  'site/styles/pattern.css',
  'site/styles/reading-board.css',
  'site/styles/print.css',
];
/** What the first lines of a chapter are set in: pages ask for them ahead of the style sheet. */
const firstFonts = [
  'source-serif-4-latin-400-normal.woff2',
  'source-serif-4-latin-600-normal.woff2',
];
const target = ['chrome109', 'firefox115', 'safari16'];

/** Builds everything and returns the manifest. */
export async function buildBrowser() {
  await rm(out, { recursive: true, force: true });
  await mkdir(out, { recursive: true });
  const manifest = { script: await writeScript(), ...(await writeStyle()) };
  await writeFile(join(out, 'manifest.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  return manifest;
}

async function writeScript() {
  const result = await build({
    entryPoints: [join(root, 'src', 'browser', 'main.ts')],
    bundle: true,
    // A classic script: a module would not load from a double-clicked page (file://).
    format: 'iife',
    minify: true,
    target,
    write: false,
    legalComments: 'none',
  });
  return writeHashed('course', 'js', result.outputFiles[0].text);
}

async function writeStyle() {
  const parts = await Promise.all(
    sheets.map((sheet) => readFile(join(root, 'src', sheet), 'utf8')),
  );
  const css = [...parts, await figurines()].join('\n');
  const names = new Map();
  for (const [, name] of css.matchAll(/url\("([^"]+\.woff2)"\)/g)) {
    const file = join(fontPackage, 'files', name);
    const hashed = name.replace('.woff2', `.${hash(await readFile(file))}.woff2`);
    await copyFile(file, join(out, hashed));
    names.set(name, hashed);
  }
  await copyFile(join(fontPackage, 'LICENSE'), join(out, 'source-serif-4-licence.txt'));
  const named = css.replaceAll(
    /url\("([^"]+\.woff2)"\)/g,
    (_, name) => `url("${names.get(name)}")`,
  );
  const { code } = await transform(named, { loader: 'css', minify: true, target });
  const fonts = firstFonts.map((name) => names.get(name));
  return { style: await writeHashed('course', 'css', code), fonts };
}

/** The figures of figurine notation, cut from the pieces of the boards. */
async function figurines() {
  const { outputFiles } = await build({
    stdin: {
      contents: "export { pieceOutlines } from './src/draw/pieces.ts'",
      resolveDir: root,
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    write: false,
  });
  const code = Buffer.from(outputFiles[0].text).toString('base64');
  const { pieceOutlines } = await import(`data:text/javascript;base64,${code}`);
  return ['king', 'queen', 'rook', 'bishop', 'knight']
    .map((kind) => {
      const svg = `<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1000 1000'><path d='${pieceOutlines.white[kind].lines}'/></svg>`;
      return `.figurine.${kind}{--figure:url("data:image/svg+xml,${encodeURIComponent(svg).replaceAll("'", '%27')}")}`;
    })
    .join('\n');
}

async function writeHashed(name, extension, text) {
  const file = `${name}.${hash(text)}.${extension}`;
  await writeFile(join(out, file), text);
  return file;
}

function hash(content) {
  return createHash('sha256').update(content).digest('hex').slice(0, 10);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildBrowser();
