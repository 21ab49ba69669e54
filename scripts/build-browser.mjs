/**
 * Makes what browsers load, into dist/assets: scripts, style sheets, the fonts, and manifest.json
 * with their names. Names carry a hash of the content, so that a host may let browsers keep them
 * for ever. The script and the sheet `course` are those of every page; others are loaded beside
 * them where they are needed.
 */
import { createHash } from 'node:crypto';
import { copyFile, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, transform } from 'esbuild';
import { boardCss } from '../src/draw/board-css.ts';
import { defaultCss } from '../src/look/default-css.ts';
import { bundledLicences } from './bundled-licences.mjs';
import { hostSheet } from './host-sheet.mjs';
import { measureSheet } from './measure-sheet.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = join(root, 'dist', 'assets');
const fontPackage = dirname(
  createRequire(import.meta.url).resolve('@fontsource/source-serif-4/package.json'),
);
/** Scripts by name, and where each begins in src/browser. */
const scripts = {
  course: 'main.ts',
  // Of every page, before its text.
  begin: 'begin.ts',
  // Where the reader sets something, or has set what needs it.
  settings: 'settings/main.ts',
  // Where a reader comes near an exercise.
  exercise: 'exercise/main.ts',
  exercises: 'exercise/all-exercises.ts',
  compare: 'compare/main.ts',
  'compare-worker': 'compare/worker.ts',
  practice: 'practice/main.ts',
  // For other sites: each course wraps it and gives it a name that stays.
  embed: 'embed/main.ts',
  // The same for components in a site of Astro's, beside boards of our own pages.
  line: 'embed/line.ts',
  // Of pages of a course in the layout of another site, before all others.
  address: 'hosted/address.ts',
  positions: 'positions.ts',
  handout: 'handout/main.ts',
  search: 'search.ts',
  'wasm-probe': 'search/wasm-probe.ts',
  tree: 'tree.ts',
  // Of the first page: what the reader has read, and, when it is touched, its board.
  first: 'first/main.ts',
  'cover-board': 'first/cover-board.ts',
  // Of the pages of a shelf of courses.
  shelf: 'shelf/first.ts',
  'shelf-search': 'shelf/search.ts',
  'shelf-practice': 'shelf/practice.ts',
  'shelf-compare': 'shelf/compare.ts',
  // Of chapters, when they are idle.
  'keep-reading': 'kept-reading/main.ts',
  // At a reader's first act on the board of a chapter.
  free: 'free/main.ts',
  notes: 'free/notes-page.ts',
  // Where an address names nothing of its chapter.
  'lost-address': 'lost-address/main.ts',
  // Where the site has no words in the language of the course.
  fallback: 'fallback/main.ts',
};
/** Style sheets by name, and their parts in src/, in the order of the cascade. */
const sheets = {
  changes: ['site/styles/news.css'],
  contents: ['site/styles/contents.css'],
  cover: ['site/styles/cover.css'],
  handout: ['site/styles/handout.css'],
  embed: ['site/styles/embed.css'],
  fallback: ['site/styles/fallback.css'],
  snippets: ['site/styles/snippets.css'],
  course: [
    'look/defaults.ts',
    'draw/paint.ts',
    'site/styles/fonts.css',
    'site/styles/page.css',
    'site/styles/head.css',
    'site/styles/moves.css',
    'site/styles/figures.css',
    'site/styles/figurines.css',
    'site/styles/board.css',
    'site/styles/controls.css',
    'site/styles/exercise.css',
    'site/styles/game.css',
    'site/styles/pattern.css',
    'site/styles/reading-board.css',
    'site/styles/board-size.css',
    'site/styles/print.css',
  ],
  shelf: ['site/styles/shelf.css'],
  signs: ['site/styles/signs.css'],
  // Letter instead of A4.
  letter: ['site/styles/letter-paper.css'],
  // Loaded with the form.
  settings: ['site/styles/settings.css'],
  compare: ['site/styles/compare.css'],
  free: ['site/styles/free.css'],
  exercises: ['site/styles/exercise-cards.css'],
  practice: ['site/styles/practice.css'],
  finding: ['site/styles/finding.css', 'site/styles/plates.css', 'site/styles/tree.css'],
};
/** Style that is made of tables, by their files. */
const madeOfTables = { 'look/defaults.ts': defaultCss, 'draw/paint.ts': boardCss };
/** What the first lines of a chapter are set in: pages ask for them ahead of the style sheet. */
const firstFonts = [
  'source-serif-4-latin-400-normal.woff2',
  'source-serif-4-latin-400-italic.woff2',
  'source-serif-4-latin-600-normal.woff2',
];
const target = ['chrome109', 'firefox115', 'safari16'];

/** Builds everything and returns the manifest. */
export async function buildBrowser() {
  await rm(out, { recursive: true, force: true });
  await mkdir(out, { recursive: true });
  const fonts = await writeFonts();
  const manifest = {
    scripts: await allOf(scripts, writeScript),
    styles: {
      ...(await allOf(sheets, (name, parts) => writeStyle(name, parts, fonts))),
      measure: await writeMeasure(),
      hosted: await writeHosted(fonts),
    },
    fonts: firstFonts.map((name) => fonts.get(name)),
  };
  await buildWorker();
  await writeFile(join(out, 'scripts-licence.txt'), await bundledLicences(bundled));
  await writeFile(join(out, 'manifest.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  return manifest;
}

async function allOf(list, write) {
  const entries = Object.entries(list).map(async ([name, from]) => [name, await write(name, from)]);
  return Object.fromEntries(await Promise.all(entries));
}

async function writeScript(name, start) {
  const result = await build({
    entryPoints: [join(root, 'src', 'browser', start)],
    bundle: true,
    // A classic script: a module would not load from a double-clicked page (file://).
    format: 'iife',
    minify: true,
    target,
    write: false,
    legalComments: 'none',
    metafile: true,
  });
  noteFiles(result.metafile);
  return writeHashed(name, 'js', result.outputFiles[0].text);
}

/** The service worker: no asset, since it stands at a site's root and has a list before it. */
async function buildWorker() {
  const { metafile } = await build({
    entryPoints: [join(root, 'src/browser/offline/worker.ts')],
    outfile: join(root, 'dist/offline/offline.js'),
    bundle: true,
    format: 'iife',
    minify: true,
    target,
    define: { 'process.env.NODE_ENV': '"production"' },
    legalComments: 'none',
    metafile: true,
  });
  noteFiles(metafile);
}

/** The files that the scripts were made of. */
const bundled = new Set();

function noteFiles({ inputs }) {
  for (const input of Object.keys(inputs)) bundled.add(join(root, input));
}

async function writeStyle(name, parts, fonts) {
  return writeCss(name, withFonts(await textOf(parts), fonts));
}

async function textOf(parts) {
  const texts = parts.map(
    (part) => madeOfTables[part]?.() ?? readFile(join(root, 'src', part), 'utf8'),
  );
  return (await Promise.all(texts)).join('\n');
}

function withFonts(css, fonts) {
  return css.replaceAll(/url\("([^"]+\.woff2)"\)/g, (_, font) => `url("${fonts.get(font)}")`);
}

async function writeCss(name, css) {
  const { code } = await transform(css, { loader: 'css', minify: true, target });
  return writeHashed(name, 'css', code);
}

/** What the handout is laid out with to count its pages: made of the sheets that it has. */
async function writeMeasure() {
  const parts = [...sheets.course, ...sheets.contents, ...sheets.handout];
  return writeCss('measure', measureSheet(await textOf(parts)));
}

/** What a course has on the pages of another site. */
async function writeHosted(fonts) {
  const parts = [...sheets.course, ...sheets.contents, ...sheets.cover, 'site/styles/hosted.css'];
  return writeCss('hosted', hostSheet(withFonts(await textOf(parts), fonts)));
}

/** Copies the fonts that the style sheets name; returns their hashed names by their own. */
async function writeFonts() {
  const css = await readFile(join(root, 'src', 'site', 'styles', 'fonts.css'), 'utf8');
  const names = new Map();
  for (const [, name] of css.matchAll(/url\("([^"]+\.woff2)"\)/g)) {
    const file = join(fontPackage, 'files', name);
    const hashed = name.replace('.woff2', `.${hash(await readFile(file))}.woff2`);
    await copyFile(file, join(out, hashed));
    names.set(name, hashed);
  }
  await copyFile(join(fontPackage, 'LICENSE'), join(out, 'source-serif-4-licence.txt'));
  return names;
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
