/**
 * Counts the steps that hostile texts take, at a length and twice the length, and prints them as JSON. A process of its
 * own, in which nothing is loaded before it is counted. `measure.ts [PATTERN [LENGTH]]`.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createStepCounter } from './count-steps.ts';
import {
  type Files,
  hostileCourses,
  hostileGames,
  longCourses,
  longGames,
} from './hostile-courses.ts';

export interface Measured {
  readonly name: string;
  readonly stage: string;
  /** For a length, and for twice the length. */
  readonly steps: readonly number[];
  /** Where most of the steps of the longer one are. */
  readonly most: string;
}

const counter = createStepCounter();
const { reportText } = await import('../../src/diagnostics/index.ts');
const { buildCourse } = await import('../../src/model/index.ts');
const { checkCourse } = await import('../../src/check/index.ts');
const { compareGames } = await import('../../src/lookup/games/index.ts');
const { parseGames } = await import('../../src/movetext/index.ts');
const { readCourse } = await import('../../src/read/index.ts');
const { assignAddresses } = await import('../../src/render/addresses.ts');
const { makeCourseTable } = await import('../../src/site/render/course-table.ts');
const { renderSite } = await import('../../src/site/render/site.ts');
const { makeDraft, readArchive } = await import('../../src/import/index.ts');
const { makePgn } = await import('../../src/publish/pgn/index.ts');

type Stages = Map<string, { readonly steps: number[]; readonly most: string }>;

const [pattern = '.', length = '2000'] = process.argv.slice(2);
/** How many times that length the long ones have. */
const long = 6;
const found: Measured[] = [];
const work = mkdtempSync(path.join(tmpdir(), 'linewright-growth-'));
for (const [name, make] of Object.entries(hostileCourses)) {
  await measure(name, (size, stages) => measureCourse(make(size), stages));
}
for (const [name, make] of Object.entries(hostileGames)) {
  await measure(`games: ${name}`, (size, stages) => measureGames(make(size), stages));
}
for (const name of longCourses) {
  await measure(name, async (size, stages) => {
    const files = inMemory(named(hostileCourses, name)(long * size));
    await count(stages, 'read at length', () => void readCourse(files));
  });
}
for (const name of longGames) {
  await measure(`games: ${name}`, async (size, stages) => {
    const text = named(hostileGames, name)(long * size);
    await count(stages, 'parse at length', () => void [...parseGames(text)]);
  });
}
rmSync(work, { recursive: true });
process.stdout.write(JSON.stringify(found));

async function measure(
  name: string,
  run: (length: number, stages: Stages) => Promise<void>,
): Promise<void> {
  if (!new RegExp(pattern).test(name)) return;
  const stages: Stages = new Map();
  for (const times of [1, 2]) await run(times * Number(length), stages);
  for (const [stage, measured] of stages) found.push({ name, stage, ...measured });
}

function named<Text>(texts: Readonly<Record<string, Text>>, name: string): Text {
  const found = texts[name];
  if (found === undefined) throw new Error(`no text is called "${name}"`);
  return found;
}

async function count(
  stages: Stages,
  stage: string,
  run: () => void | Promise<void>,
): Promise<void> {
  const { steps, most } = await counter.count(run);
  stages.set(stage, { steps: [...(stages.get(stage)?.steps ?? []), steps], most });
}

async function measureCourse(made: Files, stages: Stages): Promise<void> {
  let draft: ReturnType<typeof readCourse> | undefined;
  let course: ReturnType<typeof buildCourse> | undefined;
  let result: ReturnType<typeof checkCourse> | undefined;
  const files = inMemory(made);
  await count(stages, 'read', () => {
    draft = readCourse(files);
  });
  await count(stages, 'model', () => {
    if (draft) course = buildCourse(draft);
    // A course joins its chapters when somebody looks.
    for (const { blocks } of course?.chapters ?? []) for (const { kind } of blocks) void kind;
  });
  await count(stages, 'check', () => {
    if (!course) return;
    result = checkCourse(course);
    reportText(result.diagnostics, { textOf: (file) => made[file], color: false });
  });
  await count(stages, 'render', () => {
    const checked = result?.checked;
    if (!checked) return;
    const assets = {
      scripts: { free: 'assets/free.js' },
      styles: { free: 'assets/free.css' },
      fonts: [],
    };
    const place = { assets, offline: false };
    const { pages, files } = renderSite(checked.course, place);
    for (const { data } of pages) data();
    for (const { make } of files) make();
    makePgn(checked);
  });
}

function inMemory(made: Files) {
  const list = (folder: string) =>
    Object.entries(made).flatMap(([file, text]) =>
      file.startsWith(folder) ? [{ path: file, text }] : [],
    );
  return {
    settings: { path: 'course.yaml', text: made['course.yaml'] ?? '' },
    chapters: list('chapters/'),
    games: list('games/'),
    news: list('news/'),
    media: [],
    problems: [],
  };
}

async function measureGames(text: string, stages: Stages): Promise<void> {
  const file = path.join(work, 'games.pgn');
  writeFileSync(file, text);
  for (const by of ['game', 'branch'] as const) {
    await count(stages, `import by ${by}`, async () => {
      await makeDraft(readArchive(file), { by, side: 'both', title: 'x' });
    });
  }
  const course = buildCourse(
    readCourse(inMemory(named(hostileCourses, 'blocks of one line')(100))),
  );
  const table = makeCourseTable(course, assignAddresses(course));
  await count(stages, 'compare', () => {
    const comparison = compareGames(table);
    const games = [...comparison.push(Buffer.from(text))];
    games.push(...comparison.end());
  });
}
