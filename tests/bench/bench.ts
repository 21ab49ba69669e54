/**
 * `npm run bench`: what check and build cost, as wall time of whole processes and as ratios to
 * the cheapest thing that does the same work. Nothing here is asserted.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { makeCourse } from './make-course.ts';
import { serveCompressed } from './serve-compressed.ts';
import { measureShownMoves } from './shown-moves.ts';

const root = path.resolve(import.meta.dirname, '../..');
const cli = path.join(root, 'dist/cli/main.js');
/** What a screen of 60 Hz gives each picture, in milliseconds. */
const frame = 1000 / 60;
const work = mkdtempSync(path.join(tmpdir(), 'linewright-bench-'));

/** The median wall time of a process in seconds, and its peak memory in MB. */
function measure(
  args: readonly string[],
  cwd: string,
  runs = 3,
): { seconds: number; megabytes: number } {
  const times: number[] = [];
  let peak = 0;
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    const result = spawnSync(process.execPath, ['--import', memory, ...args], {
      cwd,
      env: {
        ...process.env,
        LINEWRIGHT_CACHE: path.join(work, 'cache'),
        ASTRO_TELEMETRY_DISABLED: '1',
      },
      encoding: 'utf8',
    });
    times.push((performance.now() - start) / 1000);
    if (result.status !== 0) throw new Error(`${args.join(' ')}\n${result.stdout}${result.stderr}`);
    peak = Math.max(peak, Number(/peak-kb (\d+)/.exec(result.stderr)?.[1] ?? 0) / 1024);
  }
  return { seconds: median(times), megabytes: peak };
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

const memory = `data:text/javascript,process.on('exit',()=>process.stderr.write('peak-kb '+process.resourceUsage().maxRSS+'\\n'))`;

function line(
  name: string,
  { seconds, megabytes }: { seconds: number; megabytes: number },
  rest = '',
): void {
  console.log(
    `${name.padEnd(58)} ${seconds.toFixed(2).padStart(7)} s ${megabytes.toFixed(0).padStart(5)} MB  ${rest}`,
  );
}

/** The same Markdown with its blocks as code, built by Astro alone with one layout. */
async function plainAstro(course: string): Promise<string> {
  const folder = path.join(work, 'plain-astro');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(path.join(folder, 'src/pages'), { recursive: true });
  mkdirSync(path.join(folder, 'src/layouts'), { recursive: true });
  symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'));
  writeFileSync(
    path.join(folder, 'src/layouts/page.astro'),
    '---\nconst { frontmatter } = Astro.props;\n---\n<html lang="en"><head><title>{frontmatter.title}</title></head><body><slot /></body></html>\n',
  );
  for (const name of await readdir(path.join(course, 'chapters'))) {
    const text = await readFile(path.join(course, 'chapters', name), 'utf8');
    const page = text.replace('---\n', '---\nlayout: ../layouts/page.astro\n');
    writeFileSync(path.join(folder, 'src/pages', name), page);
  }
  writeFileSync(
    path.join(folder, 'astro.config.mjs'),
    'export default { markdown: { syntaxHighlight: false }, devToolbar: { enabled: false } };\n',
  );
  return folder;
}

try {
  console.log(
    `node ${process.version}, ${execFileSync('nproc', { encoding: 'utf8' }).trim()} cores\n`,
  );
  const demo = path.join(work, 'demo');
  cpSync(path.join(root, 'demo-course'), demo, { recursive: true });
  line('check of the demo course', measure([cli, 'check', demo], work));
  line(
    'build of the demo course, pictures new',
    measure([cli, 'build', demo, '--out', path.join(work, 'demo-site')], work, 1),
  );
  line(
    'build of the demo course, pictures cached',
    measure([cli, 'build', demo, '--out', path.join(work, 'demo-site')], work),
  );

  const served = await serveCompressed(path.join(work, 'demo-site'));
  const shown = await measureShownMoves(`${served.address}isolated-pawn.html`);
  served.close();
  if (shown === undefined) console.log('a move shown: no Chromium was found');
  else {
    const frames = (milliseconds: number) =>
      `${milliseconds.toFixed(1)} ms, ${(milliseconds / frame).toFixed(2)} of a frame`;
    console.log(`a move shown in a chapter, median of ${shown.length}: ${frames(median(shown))}`);
    console.log(`a move shown in a chapter, the slowest: ${frames(Math.max(...shown))}`);
  }

  console.log('\nchecking made courses (process start included)');
  for (const [chapters, words] of [
    [20, 150],
    [200, 150],
    [2000, 150],
    [200, 1500],
  ] as const) {
    const made = await makeCourse(path.join(work, `made-${chapters}-${words}`), {
      chapters,
      movesPerChapter: 50,
      wordsPerChapter: words,
    });
    const lines = path.join(work, 'lines.json');
    writeFileSync(lines, JSON.stringify(made.lines));
    const runs = chapters > 500 ? 1 : 3;
    const bare = measure([path.join(root, 'tests/bench/bare-replay.ts'), lines], root, runs);
    const checked = measure([cli, 'check', made.folder], work, runs);
    const name = `${chapters} chapters of ${words} words, ${made.moves} moves`;
    line(`${name}: bare replay`, bare);
    line(
      `${name}: check`,
      checked,
      `${(checked.seconds / bare.seconds).toFixed(2)} x the bare replay`,
    );
  }

  console.log('\nbuilding a made course');
  const big = path.join(work, 'made-200-1500');
  const plain = measure(
    [path.join(root, 'node_modules/astro/bin/astro.mjs'), 'build', '--silent'],
    await plainAstro(big),
  );
  const built = measure([cli, 'build', big, '--out', path.join(work, 'big-site')], work);
  line('plain Astro, blocks as code', plain);
  line('build', built, `${(built.seconds / plain.seconds).toFixed(2)} x plain Astro`);

  console.log('\ncomparing games with the demo course (process start included)');
  const pair = await readFile(path.join(demo, 'games/lantern-street.pgn'), 'utf8');
  const games = (count: number) => {
    const file = path.join(work, `games-${count}.pgn`);
    writeFileSync(file, `${pair}\n`.repeat(count / 2));
    return file;
  };
  const [few, many] = [400, 8000];
  const bareGames = measure([path.join(root, 'tests/bench/bare-games.ts'), games(few)], root, 1);
  const compared = measure([cli, 'compare', games(many), demo], work, 1);
  const rate = (count: number, { seconds }: { seconds: number }) => count / seconds;
  line(`${few} whole games: bare replay`, bareGames, `${rate(few, bareGames).toFixed(0)} games/s`);
  line(
    `${many} whole games: compare`,
    compared,
    `${rate(many, compared).toFixed(0)} games/s, ${(rate(many, compared) / rate(few, bareGames)).toFixed(1)} x the bare replay`,
  );
} finally {
  rmSync(work, { recursive: true, force: true });
}
