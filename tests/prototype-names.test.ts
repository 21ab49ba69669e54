/**
 * Names that every JavaScript object has by itself, `constructor` and the like, are names as any
 * other: of files, chapters, positions, tags and players. As keys that do not exist they are told.
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import vm from 'node:vm';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { compareCourses } from '../src/changes/index.ts';
import { type LoadedCourse, loadCourse } from '../src/cli/load-course.ts';
import type { CourseTable } from '../src/contract/course-table.ts';
import { compareGames, withPlayer } from '../src/lookup/games/index.ts';
import { positionOf } from '../src/lookup/index.ts';
import { nodeAt } from '../src/model/index.ts';
import { makeBook } from '../src/publish/book/index.ts';
import { makeLetter } from '../src/publish/index.ts';
import { makePgn } from '../src/publish/pgn/index.ts';
import { linewright } from './browser/browser.ts';

const svg =
  '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path d="M0 0h9v9z"/></svg>';

const named: Readonly<Record<string, string>> = {
  'course.yaml': 'title: constructor\nid: constructor\nside: white\nauthor: toString\n',
  'chapters/__proto__.md': `---
title: __proto__
summary: hasOwnProperty
---

## toLocaleString

## toLocaleString

Text[^__proto__] and[^constructor], [a][toString], [b](pos:toString), [c](pos:hasOwnProperty),
[d](constructor.md#isPrototypeOf). ![x](../media/__proto__.svg) ![y](../media/constructor.svg)
<constructor>x</constructor> <b constructor="x" tostring="y">z</b>

[^__proto__]: one
[^constructor]: two

[toString]: pos:constructor

\`\`\`moves
1. e4 {:here[constructor]} e5 {:here[toString]} 2. Nf3 {:here[valueOf] :plan[f3-e5]} Nc6 (2... d6 {:here[hasOwnProperty]} 3. d4) 3. Bb5 {:same[isPrototypeOf]}
\`\`\`

\`\`\`diagram at="constructor"
caption: constructor
alt: toString
\`\`\`

\`\`\`exercise at="toString"
ask: What?
answer: 2. Nf3
hint: constructor
\`\`\`

\`\`\`pattern
title: constructor
white: e4
black: e5
at: toString
\`\`\`
`,
  'chapters/constructor.md': `---
title: toString
id: constructor
---

\`\`\`moves from="valueOf"
2... Nc6 3. Bb5 {:here[isPrototypeOf]} a6 4. Ba4 {:end[constructor]}
\`\`\`

\`\`\`game file="games/__proto__.pgn" to="valueOf"
\`\`\`

\`\`\`game
[White "constructor"]
[__proto__ "x"]
[constructor "y"]
[Result "1-0"]

1. e4 e5 2. Nf3 1-0
\`\`\`
`,
  'chapters/hasOwnProperty.md': '---\ntitle: valueOf\nid: toString\n---\n\n## valueOf\n\nText.\n',
  'games/__proto__.pgn':
    '[White "__proto__"]\n[Black "constructor"]\n[__proto__ "x"]\n\n1. e4 e5 2. Nf3 Nc6 *\n',
  'media/__proto__.svg': svg,
  'media/constructor.svg': svg,
  'news/__proto__.md':
    '---\ntitle: constructor\ndate: 2026-01-02\nfrom: __proto__\n---\n\n[x](pos:constructor)\n',
};

let work: string;
let own: readonly string[];

function write(name: string, files: Readonly<Record<string, string>>): string {
  const folder = path.join(work, name);
  for (const [file, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), content);
  }
  return folder;
}

beforeAll(() => {
  work = mkdtempSync(path.join(inject('runFolder'), 'prototype-'));
  own = Object.getOwnPropertyNames(Object.prototype);
});

describe('a course of such names', () => {
  let folder: string;
  let loaded: LoadedCourse;
  beforeAll(async () => {
    folder = write('named', named);
    loaded = await loadCourse(folder);
  });

  test('is checked', () => {
    expect(loaded.diagnostics).toEqual([]);
    expect(Object.keys(loaded.course.labels).sort()).toEqual(
      ['constructor', 'hasOwnProperty', 'isPrototypeOf', 'toString', 'valueOf'].sort(),
    );
  });

  test('is sent out', async () => {
    const { checked } = loaded;
    if (checked === undefined) throw new Error('it has errors');
    const date = new Date(0);
    const book = await makeBook(checked, { folder, modified: date });
    expect(book.length).toBeGreaterThan(1000);
    for (const choice of [
      { chapter: 'constructor' },
      { positions: ['constructor', 'toString'] },
      { news: '__proto__' },
    ]) {
      const letter = await makeLetter(checked, choice, { folder, date });
      expect(letter.text).toContain('constructor');
    }
    expect(makePgn(checked)).toContain('[__proto__ "x"]');
    expect(compareCourses(loaded.course, checked).chapters).toEqual([]);
  });

  test('is built, and found in the tables of its pages', async () => {
    const out = path.join(work, 'site');
    await linewright(['build', folder, '--out', out, '--site', 'https://example.org/constructor']);
    const files = readdirSync(out);
    expect(files).toEqual(
      expect.arrayContaining(['proto.html', 'constructor.html', 'toString.html']),
    );
    const script = files.find((file) => /^course-table\..*\.js$/.test(file)) ?? '';
    const context = vm.createContext({}) as { courseTable?: CourseTable };
    vm.runInContext(readFileSync(path.join(out, script), 'utf8'), context);
    const table = structuredClone(context.courseTable);
    if (table === undefined) throw new Error('there is no table');
    const [label] = Object.keys(loaded.course.labels);
    const ref = loaded.course.labels[label ?? '']?.ref;
    const node = ref && nodeAt(loaded.course, ref);
    const position = table.positions[positionOf(table, node?.position?.key ?? '') ?? -1];
    expect(position?.names).toContain(label);
    const comparison = compareGames(table);
    const games = [
      ...comparison.push(Buffer.from(named['games/__proto__.pgn'] ?? '')),
      ...comparison.end(),
    ];
    expect(games).toMatchObject([{ kind: 'met', white: '__proto__', black: 'constructor' }]);
    expect(withPlayer(table, games, '__proto__').games).toHaveLength(1);
    expect(withPlayer(table, games, 'toString').games).toHaveLength(0);
  });
});

test('as keys each is told with its line', async () => {
  const { diagnostics } = await loadCourse(
    write('keys', {
      'course.yaml': `title: A
side: white
id: a
__proto__: {side: black}
constructor: 2
rules:
  __proto__: {move-number: off}
  toString: off
`,
      'chapters/1.md': `---
title: One
__proto__: x
valueOf: y
---

\`\`\`diagram fen="8/8/8/4k3/8/8/8/4K3 w - - 0 1" constructor="x"
__proto__: x
toString: y
\`\`\`

\`\`\`exercise fen="8/8/8/4k3/8/8/8/4K3 w - - 0 1"
ask: x
answer: Kd2
__proto__: x
\`\`\`

\`\`\`pattern
title: x
white: e4
__proto__: x
\`\`\`

\`\`\`moves toString="1"
1. e4 {:constructor[x] :claim[toString e4] :claim[__proto__] :allow[constructor x]} e5 2. Nf3 {:mark[constructor] :same[valueOf]}
\`\`\`

[x](pos:propertyIsEnumerable)
`,
    }),
  );
  const told = diagnostics.map(
    ({ place, message }) => `${place.file}:${place.start.line} ${message}`,
  );
  expect(told).toEqual([
    'chapters/1.md:3 The front matter has no `__proto__`.',
    'chapters/1.md:4 The front matter has no `valueOf`.',
    'chapters/1.md:7 A `diagram` block has no attribute `constructor`.',
    'chapters/1.md:8 A diagram has no setting `__proto__`.',
    'chapters/1.md:9 A diagram has no setting `toString`.',
    'chapters/1.md:15 An exercise has no setting `__proto__`.',
    'chapters/1.md:21 A pattern has no setting `__proto__`.',
    'chapters/1.md:24 A `moves` block has no attribute `toString`.',
    'chapters/1.md:25 There is no directive `:constructor[…]`.',
    'chapters/1.md:25 The claim `toString e4` cannot be read: there is no claim `toString`.',
    'chapters/1.md:25 The claim `__proto__` cannot be read: there is no claim `__proto__`.',
    'chapters/1.md:25 There is no rule `constructor`.',
    'chapters/1.md:25 `constructor` is no square of the board.',
    'chapters/1.md:25 No position of the course is named `valueOf`.',
    'chapters/1.md:28 No position of the course is named `propertyIsEnumerable`.',
    'course.yaml:4 course.yaml has no `__proto__`.',
    'course.yaml:5 course.yaml has no `constructor`.',
    'course.yaml:7 There is no rule `__proto__`.',
    'course.yaml:8 There is no rule `toString`.',
  ]);
  expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(own);
});
