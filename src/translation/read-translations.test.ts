import { expect, test } from 'vitest';
import type { CourseFiles } from '../read/index.ts';
import { unitsOf } from './chapter-units.ts';
import { originOf, readOrigin, writeOrigin } from './origin.ts';
import { type ComparedFile, chapterReader, readTranslations } from './read-translations.ts';

const front = (title: string) => `---\ntitle: ${title}\n---\n\n`;

const original = `${front('The centre')}## The idea

White takes the centre at once.

A second thought, with \`1...e5\`. :mark[e4]

\`\`\`moves
1. e4 e5 {:here[open "The open game"] Black does the same. :claim[attacks e5 d4]}
  ( 1... c5 {Asymmetry. :plan[c5-d4]} )
2. Nf3! Nc6 {More in [the open game](pos:open).}
\`\`\`

\`\`\`exercise at="open"
ask: Find the best move.
answer: 2. Nf3
wrong: 2. Qh5 {Too early.}
hint: A knight.
\`\`\`
`;

const translated = `${front('Das Zentrum')}## Die Idee

Weiß nimmt gleich das Zentrum, und dann ist da \`1...e5\`. :mark[e4]

\`\`\`moves
1. e4 e5 {:claim[attacks e5 d4] Schwarz macht es ebenso. :here[open "Das offene Spiel"]}
  ( 1... c5 {Asymmetrie. :plan[c5-d4]} )
2. Nf3! Nc6 {Mehr beim [offenen Spiel](pos:open).}
\`\`\`

\`\`\`exercise at="open"
ask: Finde den besten Zug.
answer: 2. Nf3
wrong: 2. Qh5 {Zu früh.}
hint: Ein Springer.
\`\`\`
`;

function course(text: string, inGerman: string, origin?: string): CourseFiles {
  return {
    settings: { path: 'course.yaml', text: 'title: A\nid: a\nside: white\n' },
    chapters: [{ path: 'chapters/1.md', text }],
    games: [],
    media: [],
    problems: [],
    translations: [
      {
        tag: 'de',
        folder: 'translations/de',
        settings: { path: 'translations/de/course.yaml', text: 'title: B\n' },
        chapters: [{ path: 'translations/de/chapters/1.md', text: inGerman }],
        pages: [],
        news: [],
        ...(origin !== undefined && {
          origin: { path: 'translations/de/origin.json', text: origin },
        }),
      },
    ],
  };
}

function originFor(text: string): string {
  const files = course(text, '');
  const [chapter] = files.chapters;
  if (!chapter) throw new Error('no chapter');
  const { syntax } = chapterReader(files, 'en')(chapter);
  return writeOrigin(new Map([['chapters/1.md', unitsOf(syntax, text, 'en').map(originOf)]]));
}

function found(text: string, inGerman: string, origin = originFor(text)): string[] {
  return readTranslations(course(text, inGerman, origin)).flatMap(({ problems }) =>
    problems.map(
      ({ rule, place, message, related = [] }) =>
        `${place.start.line}:${place.start.column} ${rule.replace('translation-', '')} ${message}` +
        related.map((each) => ` -> ${each.place.file}:${each.place.start.line}`).join(''),
    ),
  );
}

const unpublished =
  '1:1 open Nothing of this translation is published yet: no chapter of it is ready.';

test('other words in another order say the same of the board', () => {
  expect(found(original, translated)).toEqual([]);
  const [translation] = readTranslations(course(original, translated, originFor(original)));
  expect(translation?.isPublished).toBe(true);
  expect(translation?.chapters.get('chapters/1.md')?.headings).toEqual(['The idea']);
});

test.each([
  [
    '2. Nf3!',
    '2. Nc3!',
    '12:4 differs The original has `Nf3` $1 where the translation has `Nc3` $1.',
  ],
  ['Nf3! ', 'Nf3 ', '12:4 differs The original has `Nf3` $1 where the translation has `Nf3`.'],
  [
    'open "Das',
    'opne "Das',
    '10:58 differs The original has :here[open] where the translation has :here[opne].',
  ],
  [
    ' :plan[c5-d4]',
    '',
    '11:10 differs The original has :plan[c5-d4], and the translation lacks it.',
  ],
  [' :mark[e4]', ' :mark[e4 d4]', '7:58 differs The original has :mark[e4] after 1...e5'],
  [
    'answer: 2. Nf3',
    'answer: 2. Nc3',
    '17:12 differs The original has `Nf3` where the translation has `Nc3`.',
  ],
  [
    'wrong: 2. Qh5 {Zu früh.}\n',
    '',
    'differs The original has wrong:, and the translation lacks it.',
  ],
  [
    '---\n',
    '---\nlearn: main\n',
    '1:1 differs The translation has `learn: main`, and the original does not.',
  ],
  ['## Die', '### Die', '5:1 differs The original has level 2 where the translation has level 3.'],
  ['(pos:open)', '(pos:other)', '12:24 differs The original has a link to `pos:open`'],
])('a translation with %s made %s is named', (from, to, message) => {
  const broken = translated.replace(from, to);
  expect(broken).not.toBe(translated);
  const [first = ''] = found(original, broken);
  expect(first).toContain(message);
});

test('a directive in prose keeps the move that it speaks of', () => {
  const moved = translated.replace(' :mark[e4]', '').replace('Weiß', ':mark[e4] Weiß');
  expect(found(original, moved)).toEqual([
    '7:1 differs The original has :mark[e4] after 1...e5 where the translation has :mark[e4]. -> chapters/1.md:9',
    unpublished,
  ]);
});

test('words of the original that change are told with both places, typography is none', () => {
  const before = originFor(original);
  expect(found(original.replace('Black does', 'Black now does'), translated, before)).toEqual([
    "10:33 stale The original's words have changed since this was translated. -> chapters/1.md:12",
  ]);
  expect(
    found(original.replace('Find the best move.', 'Find the “best”  move…'), translated, before),
  ).toHaveLength(1);
  const dotted = original.replace('A knight.', "A knight – it's good…");
  const typeset = dotted.replace('–', '—').replace("it's", 'it’s').replace('…', '...');
  expect(found(typeset, translated, originFor(dotted))).toEqual([]);
});

test('a line that the original gained since is stale, and the chapter is not shown', () => {
  const before = originFor(original);
  const longer = original.replace('2. Nf3! Nc6', '2. Nf3! Nc6 3. Bb5');
  expect(found(longer, translated, before)).toEqual([
    '12:9 stale Since it was translated: the original has `Bb5`, and the translation lacks it. -> chapters/1.md:14',
    unpublished,
  ]);
  const [translation] = readTranslations(course(longer, translated, before));
  expect(translation?.isPublished).toBe(false);
});

test('blocks that the original gained or lost since are stale; others are wrong', () => {
  const before = originFor(original);
  const block = '\n```moves\n1. d4 d5\n```\n';
  expect(found(original + block, translated, before)).toEqual([
    '20:4 stale The original has gained a block of moves here since it was translated. -> chapters/1.md:24',
    unpublished,
  ]);
  const without = original.replace(/```exercise[\s\S]*?```\n/, '');
  expect(found(without, translated, before)).toEqual([
    '15:1 stale Since it was translated, the original has lost this exercise.',
    unpublished,
  ]);
  expect(found(original, translated + block)).toEqual([
    '22:1 differs The original has no such block of moves here.',
    unpublished,
  ]);
});

test('words that wait keep a chapter from its readers', () => {
  const waiting = translated
    .replace('Weiß nimmt gleich', '(en) White takes at once')
    .replace('title: Das Zentrum', 'title: (en) The centre')
    .replace('"Das offene', '"(en changed) Das offene');
  expect(found(original, waiting)).toEqual([
    '2:8 open 3 texts of this file (16 words) wait for a translation.',
    unpublished,
  ]);
  const [translation] = readTranslations(course(original, waiting, originFor(original)));
  expect(translation?.chapters.get('chapters/1.md')).toMatchObject({
    isReady: false,
    open: { texts: 3, words: 16 },
  });
});

test('an origin is read as it was written; what is none is told', () => {
  const text = originFor(original);
  expect(writeOrigin(readOrigin(text) ?? new Map())).toBe(text);
  expect(found(original, translated, '<<<<<<<')).toEqual([
    '1:1 differs This is not what `linewright translate` writes, so it is not read.',
    '1:1 stale Nothing says which edition of the original this was made of.',
  ]);
});

test('a file that is as it was is taken as it was compared', () => {
  const kept = new Map<string, ComparedFile>();
  const made: string[] = [];
  const recall = (file: string, print: string, make: () => ComparedFile) => {
    if (!kept.has(print)) made.push(file);
    const value = kept.get(print) ?? make();
    kept.set(print, value);
    return value;
  };
  const look = (files: CourseFiles) => readTranslations(files, { recall });
  const first = look(course(original, translated, originFor(original)));
  expect(look(course(original, translated, originFor(original)))).toEqual(first);
  expect(made).toHaveLength(1);
  // Each of the three that it depends on.
  look(course(`${original}\nMore.\n`, translated, originFor(original)));
  look(course(original, `${translated}\nMehr.\n`, originFor(original)));
  look(course(original, translated));
  expect(made).toHaveLength(4);
});
