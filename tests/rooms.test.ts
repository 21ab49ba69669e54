import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const src = path.resolve(import.meta.dirname, '../src');

/** What each room may import of the others. Everything flows one way, from text to pages. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  // Below all stages: these know nothing of courses.
  chess: [],
  movetext: [],
  diagnostics: [],
  // Puts what was made in its place on the disk; knows nothing of what it is.
  output: ['diagnostics'],
  files: ['diagnostics'],
  // Words for readers, by language; the English meanings of glyphs stand in their table.
  strings: ['movetext'],
  // What the build writes into pages and the reader's browser reads there.
  contract: ['chess', 'strings'],
  // What a file of media/ must be to be published.
  media: ['diagnostics', 'files'],
  // A course's positions as one table, and what is looked up in it; no course model.
  lookup: ['chess', 'contract', 'movetext'],
  // What is known of positions by the work of hours, by their keys; no course model.
  facts: ['chess'],
  // What theme.css may set, and what everything looks like unless it does.
  look: ['diagnostics'],
  // The stages.
  read: ['chess', 'movetext', 'diagnostics', 'files', 'look', 'media'],
  model: ['chess', 'diagnostics', 'movetext', 'read'],
  // A course in other languages, held against its original.
  translation: ['diagnostics', 'model', 'read'],
  // Changes of a chapter's text by range.
  edit: ['chess', 'diagnostics', 'model', 'movetext', 'read'],
  // Where everything of a chapter stands on its page.
  addresses: ['contract', 'model'],
  check: [
    'addresses',
    'chess',
    'contract',
    'diagnostics',
    'facts',
    'look',
    'media',
    'movetext',
    'model',
    'read',
  ],
  // Runs rules and claims of a course's own.
  'own-rules': ['check', 'chess', 'diagnostics', 'model', 'read'],
  // Keeps the first four stages current.
  workspace: ['check', 'diagnostics', 'facts', 'files', 'model', 'output', 'read'],
  // Asks a chess engine, a program of the author's own, about positions of a course.
  engine: ['chess', 'diagnostics', 'facts', 'model', 'movetext'],
  // The replies that a course lacks.
  gaps: ['chess', 'contract', 'facts', 'lookup', 'model'],
  // Pictures know boards, not courses.
  draw: ['chess', 'contract', 'files', 'look'],
  // A chapter as a document, and the media that show it.
  render: [
    'addresses',
    'check',
    'chess',
    'contract',
    'diagnostics',
    'draw',
    'look',
    'model',
    'movetext',
    'strings',
  ],
  // The course language for other unified pipelines.
  remark: ['addresses', 'check', 'contract', 'diagnostics', 'draw', 'model', 'read', 'render'],
  // Makes pages of what was checked; it names the browser's data where the two meet.
  site: [
    'addresses',
    'check',
    'contract',
    'chess',
    'diagnostics',
    'draw',
    'files',
    'look',
    'media',
    'model',
    'render',
    'movetext',
    'output',
    'strings',
    'lookup',
    'browser',
  ],
  // Runs at the reader's: boards to draw, no course model.
  browser: ['chess', 'contract', 'draw', 'lookup', 'movetext'],
  // Sends out what was checked as files: the renderer of chapters is the site's.
  publish: [
    'addresses',
    'check',
    'chess',
    'contract',
    'diagnostics',
    'draw',
    'files',
    'look',
    'lookup',
    'media',
    'model',
    'render',
    'movetext',
    'strings',
    'site',
  ],
  // A course made of a PGN file, and what changed between two editions of one.
  import: ['chess', 'diagnostics', 'edit', 'model', 'movetext'],
  changes: ['check', 'chess', 'contract', 'model', 'movetext', 'render', 'strings'],
  // Serves an editor: asks what the stages before it know of a course.
  lsp: [
    'check',
    'chess',
    'diagnostics',
    'edit',
    'facts',
    'model',
    'movetext',
    'read',
    'translation',
    'workspace',
  ],
  // The stages one after the other, for whatever starts them.
  pipeline: [
    'check',
    'chess',
    'contract',
    'diagnostics',
    'files',
    'model',
    'output',
    'own-rules',
    'publish',
    'read',
    'render',
    'site',
    'translation',
    'workspace',
  ],
  // The preview of a course that is being written.
  dev: [
    'addresses',
    'check',
    'chess',
    'contract',
    'diagnostics',
    'edit',
    'files',
    'model',
    'output',
    'pipeline',
    'read',
    'site',
  ],
  // Courses in an Astro site.
  astro: [
    'check',
    'chess',
    'dev',
    'diagnostics',
    'draw',
    'model',
    'pipeline',
    'read',
    'render',
    'site',
    'strings',
  ],
  // The command line.
  cli: [
    'addresses',
    'changes',
    'dev',
    'pipeline',
    'workspace',
    'check',
    'chess',
    'contract',
    'diagnostics',
    'draw',
    'edit',
    'engine',
    'facts',
    'files',
    'gaps',
    'import',
    'lookup',
    'lsp',
    'model',
    'render',
    'movetext',
    'output',
    'publish',
    'read',
    'site',
    'strings',
    'translation',
  ],
};

interface Import {
  readonly file: string;
  readonly room: string;
  readonly from: string;
  /** Nothing of it is left when the program runs. */
  readonly isType: boolean;
}

const sources = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .map((file) => file.split(path.sep).join('/'))
  // Tests and their helpers, which are not published, may put stages together.
  .filter((file) => /\.(ts|astro)$/.test(file) && !/\.test\.ts$|\/testing\//.test(file));

const textOf = (file: string) => readFileSync(path.join(src, file), 'utf8');

const imports = sources.flatMap((file): Import[] => {
  const found = textOf(file).matchAll(
    /(?:^|\s)(?:import|export)\b([^'";]*?)from\s*'([^']+)'|import\('([^']+)'\)/g,
  );
  const room = file.includes('/') ? (file.split('/')[0] ?? '') : '';
  return [...found].map(([, what = '', from, later]) => ({
    file,
    room,
    from: from ?? later ?? '',
    isType: /^\s*(?:type\s|\{(?:\s*type [^,}]+,?)+\s*\})/.test(what),
  }));
});

/** The file that is imported, from `src`; nothing for a package. */
function targetOf({ file, from }: Import): string | undefined {
  return from.startsWith('.') ? path.posix.join(path.posix.dirname(file), from) : undefined;
}

function roomOf(found: Import): string | undefined {
  const target = targetOf(found);
  return target?.includes('/') ? target.split('/')[0] : target && '';
}

describe('rooms import only what lies before them', () => {
  for (const [room, allowed] of Object.entries(mayImport)) {
    test(room, () => {
      const own = imports.filter((found) => found.room === room);
      expect(own.length).toBeGreaterThan(0);
      const wrong = own.filter((found) => {
        const target = roomOf(found);
        return target !== undefined && target !== room && !allowed.includes(target);
      });
      expect(wrong.map(({ file, from }) => `${file} imports ${from}`)).toEqual([]);
    });
  }

  test('the table itself leads back nowhere', () => {
    const reached = (room: string): ReadonlySet<string> => {
      const seen = new Set<string>();
      const open = [...(mayImport[room] ?? [])];
      for (let next = open.pop(); next !== undefined; next = open.pop()) {
        if (!seen.has(next)) open.push(...(mayImport[next] ?? []));
        seen.add(next);
      }
      return seen;
    };
    expect(Object.keys(mayImport).filter((room) => reached(room).has(room))).toEqual([]);
  });

  test('every room is in the table', () => {
    const rooms = readdirSync(src, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name)
      .filter((name) => imports.some(({ room }) => room === name));
    expect(rooms.filter((room) => !(room in mayImport))).toEqual([]);
  });
});

/** Ways past a room's `index.ts`: who may take which files, and why. */
const otherDoors: readonly { readonly from: RegExp; readonly to: RegExp; readonly why: string }[] =
  [
    { from: /^browser\//, to: /^/, why: 'a page loads what it uses, not a room' },
    {
      from: /^lookup\//,
      to: /^(?:chess\/(?:fen|initial|letters|play)|contract\/[\w-]+|movetext\/parse\/parse-movetext)\.ts$/,
      why: 'is bundled for pages, which load what they use',
    },
    {
      from: /^draw\/page-board\.ts$/,
      to: /^(?:chess\/types|contract\/sentence)\.ts$/,
      why: 'is bundled for pages, which load what they use',
    },
    {
      from: /^draw\//,
      to: /^look\/(?:defaults|look-blocks)\.ts$/,
      why: 'is bundled for pages, which load what they use',
    },
    {
      from: /^cli\/diagram-command\.ts$/,
      to: /^(?:chess\/types|draw\/paint)\.ts$/,
      why: 'every command waits for the choices of this one; the rooms load what draws images',
    },
    {
      from: /^(?:cli|site)\//,
      to: /^lookup\/(?:games|search)\/index\.ts$/,
      why: 'a door of its own',
    },
    {
      from: /^(?:cli|site)\//,
      to: /^(?:draw\/(?:icon|png\/pngs|xml)|site\/render\/course-table)\.ts$/,
      why: 'loads less than the room',
    },
    {
      from: /^own-rules\/(?:api|thread)\.ts$/,
      to: /^check\/for-own-rules\.ts$/,
      why: 'is loaded by a thread, which needs no rules of ours',
    },
    { from: /^pipeline\//, to: /^chess\/second-judge\/index\.ts$/, why: 'loads chess.js' },
    {
      from: /^(?:astro|cli|dev)\//,
      to: /^pipeline\/(?:build\/index|shelf\/index|told-date)\.ts$/,
      why: 'a door of its own: what publishes loads more than what reads, and a date loads nothing',
    },
    {
      from: /^(?:cli|pipeline)\//,
      to: /^publish\/(?:book|diagram|pgn)\/index\.ts$/,
      why: 'a door of its own: the room loads what makes letters and books',
    },
    {
      from: /^strings\//,
      to: /^movetext\/glyphs\.ts$/,
      why: 'is published as source, of the movetext room with this file alone',
    },
  ];

describe('a room is entered by its index.ts', () => {
  const side = imports
    .map((found) => ({ ...found, target: targetOf(found), to: roomOf(found) }))
    .filter(({ room, to, target }) => to && room && to !== room && target !== `${to}/index.ts`);

  test('or by another door that is named here with its reason', () => {
    const wrong = side.filter(
      ({ file, target = '' }) =>
        !otherDoors.some(({ from, to }) => from.test(file) && to.test(target)),
    );
    expect(wrong.map(({ file, from }) => `${file} imports ${from}`)).toEqual([]);
  });

  test.each(otherDoors)('somebody takes the door $from to $to', ({ from, to }) => {
    const users = side.filter(({ file, target = '' }) => from.test(file) && to.test(target));
    expect(users.length).toBeGreaterThan(0);
  });
});

test('within a room too, nothing needs itself by way of others', () => {
  const needs = new Map<string, Set<string>>();
  for (const found of imports) {
    const target = targetOf(found);
    if (target === undefined || found.isType) continue;
    needs.set(found.file, (needs.get(found.file) ?? new Set()).add(target));
  }
  // What needs nothing that is left is in no circle; nor is what nothing needs.
  for (let before = -1; before !== needs.size; ) {
    before = needs.size;
    const needed = new Set([...needs.values()].flatMap((targets) => [...targets]));
    for (const [file, targets] of needs) {
      for (const target of targets) if (!needs.has(target)) targets.delete(target);
      if (targets.size === 0 || !needed.has(file)) needs.delete(file);
    }
  }
  // A block starts from a name, which stands where another block, or moves in a text, have been played.
  const bound = ['find-moves-of-text', 'find-name', 'play-block'];
  expect([...needs.keys()].sort()).toEqual(bound.map((name) => `model/play/${name}.ts`));
});

describe('some things have one door', () => {
  const importers = (test: (found: Import) => boolean) =>
    [...new Set(imports.filter(test).map(({ file }) => file))].sort();

  test('only the second judge imports chess.js', () => {
    expect(importers(({ from }) => from === 'chess.js')).toEqual([
      'chess/second-judge/judge-tree.ts',
    ]);
  });

  test('only the files room opens the files of a course', () => {
    const reading = /\b(?:readFile|readFileSync|createReadStream|open|openSync|cp|copyFile)\b/;
    const readers = [...new Set(imports.map(({ file }) => file))].filter((file) =>
      [...readFileSync(path.join(src, file), 'utf8').matchAll(/import \{([^}]*)\} from 'node:fs/g)]
        .map(([, names = '']) => names)
        .some((names) => reading.test(names)),
    );
    const others: Readonly<Record<string, string>> = {
      'astro/build.ts': 'the site that was built',
      'astro/components-of-site.ts': 'of this package',
      'astro/locate-component.ts': 'the pages of the site',
      'cli/compare/compared-games.ts': 'the games that the command line names',
      'dev/desk-files.ts': 'of this package',
      'cli/new.ts': 'the starter of this package',
      'cli/package-version.ts': 'of this package',
      'draw/card/fonts.ts': 'of this package',
      'import/read-archive.ts': 'the games that the command line names',
      'site/build/assets.ts': 'of this package',
      'chess/second-judge/index.ts': 'of this package',
      'output/carry-files.ts': 'the site that was built',
      'output/make-new-folder.ts': 'a course that is being made',
      'output/marker.ts': 'the site that was built',
      'output/begin-replacement.ts': 'the site that is being built',
      'site/build/word-index.ts': 'of this package',
      'site/offline/kept-files.ts': 'the site that is being built',
      'site/offline/write-worker.ts': 'the site that is being built',
      'draw/png/png-cache.ts': 'the cache',
    };
    const outside = readers.filter((file) => !file.startsWith('files/'));
    expect(outside.sort()).toEqual(Object.keys(others).sort());
  });

  // What is printed goes through one function, so that nothing an author quotes acts on a terminal.
  test('only the console of the commands writes to the terminal', () => {
    const writing = sources
      .filter((file) => !file.startsWith('browser/'))
      .filter((file) => /process\.std(?:out|err)|console\.\w+\(/.test(textOf(file)));
    // main.ts speaks of Node before anything is loaded; the thread turns what an author's code prints to another stream.
    expect(writing).toEqual(['cli/console.ts', 'cli/main.ts', 'own-rules/thread.ts']);
  });

  test('only the check makes a checked course', () => {
    const sealing = importers(({ from }) => from.endsWith('checked-course.ts')).filter((file) =>
      readFileSync(path.join(src, file), 'utf8').includes('sealCourse'),
    );
    expect(sealing).toEqual(['check/check-course.ts']);
  });

  test('only the reader parses Markdown and YAML', () => {
    const parsers =
      /^(remark-parse|unified|yaml|micromark|mdast-util-(from-markdown|directive|gfm))/;
    const outside = importers(({ from, room }) => parsers.test(from) && room !== 'read');
    // The package's plugin for other pipelines takes its types from unified.
    expect(outside).toEqual(['remark/index.ts']);
  });
});
