import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { multiple } from '../../tests/setup/runs.ts';
import { compareNames } from '../diagnostics/index.ts';
import type { CourseFiles, SourceFile } from '../read/index.ts';
import { planTranslation } from './plan-translation.ts';
import { readTranslations } from './read-translations.ts';

const root = path.resolve(import.meta.dirname, '../..');

function courseIn(folder: string): CourseFiles {
  const read = (sub: string) => {
    const names = readdirSync(path.join(root, folder), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && entry.name === sub)
      .flatMap((entry) => readdirSync(path.join(root, folder, entry.name)));
    return names.sort(compareNames).map((name) => `${sub}/${name}`);
  };
  const source = (file: string): SourceFile => ({
    path: file,
    text: readFileSync(path.join(root, folder, file), 'utf8'),
  });
  return {
    settings: source('course.yaml'),
    chapters: read('chapters').map(source),
    games: read('games').map(source),
    media: read('media'),
    problems: [],
  };
}

/** The course with what a plan writes. */
function written(files: CourseFiles): CourseFiles {
  const plan = planTranslation(files, 'de');
  const folder = 'translations/de';
  const made = plan.files.map(({ path: file, text }) => ({ path: file, text }));
  const settings = made.find((file) => file.path === `${folder}/course.yaml`);
  const [before] = files.translations ?? [];
  const origin = plan.origin ?? before?.origin;
  return {
    ...files,
    translations: [
      {
        tag: 'de',
        folder,
        ...(settings && { settings }),
        chapters: made.filter((file) => file.path.startsWith(`${folder}/chapters/`)),
        pages: [],
        news: [],
        ...(origin && { origin: { path: origin.path, text: origin.text } }),
      },
    ],
  };
}

/** As if somebody had translated everything: each word in capitals, each mark gone. */
function translateAll(files: CourseFiles): CourseFiles {
  return withTexts(files, (text) => text.replaceAll('(en) ', 'Ü ').replaceAll('(en changed) ', ''));
}

function withTexts(files: CourseFiles, change: (text: string) => string): CourseFiles {
  const changed = (file: SourceFile) => ({ ...file, text: change(file.text) });
  return {
    ...files,
    translations: (files.translations ?? []).map((each) => ({
      ...each,
      ...(each.settings && { settings: changed(each.settings) }),
      chapters: each.chapters.map(changed),
    })),
  };
}

const rulesIn = (files: CourseFiles) =>
  readTranslations(files).flatMap(({ problems }) =>
    problems.map(({ rule, place, message }) => `${rule} ${place.start.line} ${message}`),
  );

/** The handbook's pages of rules and claims are longer than all others together: at night they are translated too. */
const longest = multiple > 1 ? Number.POSITIVE_INFINITY : 30_000;

describe.each(['demo-course', 'content/handbook', 'content/starter'])('%s', (folder) => {
  const whole = courseIn(folder);
  const chapters = whole.chapters.filter(({ text }) => text.length < longest);
  const begun = written({ ...whole, chapters });

  test('is begun with every text marked, and the board of the original', () => {
    expect(rulesIn(begun).filter((rule) => !rule.startsWith('translation-open'))).toEqual([]);
    // What has no mark is words of the original that would be taken for a translation.
    expect(rulesIn(withTexts(begun, (text) => text.replaceAll('(en) ', '')))).toEqual([]);
  });

  test('is left alone when nothing has changed', () => {
    const done = translateAll(begun);
    expect(rulesIn(done)).toEqual([]);
    const plan = planTranslation(done, 'de');
    expect(plan.origin).toBeUndefined();
    for (const { text, before } of plan.files) expect(text).toBe(before);
  });
});

const chapter = (body: string) => `---\ntitle: One\n---\n\n${body}`;
const body = `The plan.

## Idea

Play for the centre.

Then castle.

\`\`\`moves
1. e4 e5 {Solid.} 2. Nf3 {Now :here[k "The knight"] he comes.} Nc6
\`\`\`

The end.
`;

function courseOf(text: string): CourseFiles {
  return {
    settings: { path: 'course.yaml', text: 'title: A course\nid: a\nside: white\n' },
    chapters: [{ path: 'chapters/1.md', text: chapter(text) }],
    games: [],
    media: [],
    problems: [],
  };
}

/** The German chapter after the original has become another one. */
function follow(from: string, to: string, german = translateAll(written(courseOf(from)))) {
  const { translations = [] } = german;
  const now: CourseFiles = { ...courseOf(to), translations };
  const after = written(now);
  const plan = planTranslation(now, 'de');
  return {
    text: after.translations?.[0]?.chapters[0]?.text ?? '',
    rules: rulesIn(after),
    left: plan.files.flatMap(({ left }) => left.map(({ kind }) => kind)),
    again: () => planTranslation(after, 'de').files.every(({ text, before }) => text === before),
  };
}

test('a text that changes gets a mark before its translation', () => {
  const { text, rules, again } = follow(body, body.replace('Then castle', 'Then castle at once'));
  expect(text).toContain('\n\n(en changed) Ü Then castle.\n\n');
  expect(rules).toEqual([
    'translation-open 11 1 text of this file (3 words) waits for a translation.',
    'translation-open 1 Nothing of this translation is published yet: no chapter of it is ready.',
  ]);
  expect(again()).toBe(true);
});

test('a line that is added comes in, with the words that were translated', () => {
  const longer = body
    .replace('Nc6\n', 'Nc6 3. Bb5 {The bishop.}\n')
    .replace('{Solid.}', '{Solid and :mark[e5] sound.}');
  const { text, left } = follow(body, longer);
  expect(text).toContain(
    '1. e4 e5 {(en changed) Ü Solid. :mark[e5]} 2. Nf3 {Ü Now :here[k "Ü The knight"] he comes.} Nc6 3. Bb5 {(en) The bishop.}',
  );
  expect(left).toEqual([]);
});

test('paragraphs and blocks that are new come in where the original has them', () => {
  const longer = body
    .replace('Then castle.', 'Then castle.\n\nOr do not.')
    .replace('The end.', 'The end.\n\n## More\n\n```moves\n1. d4 {Other.}\n```');
  const { text, again } = follow(body, longer);
  expect(text).toContain('Ü Then castle.\n\n(en) Or do not.\n\n```moves');
  expect(text).toContain('Ü The end.\n\n## (en) More\n\n```moves\n1. d4 {(en) Other.}\n```');
  expect(again()).toBe(true);
});

test('what is gone from the original is left to the translator', () => {
  const { text, rules, left } = follow(body, body.replace(/```[\s\S]*```\n\n/, ''));
  expect(text).toContain('1. e4 e5 {Ü Solid.}');
  expect(left).toEqual(['moves']);
  expect(rules[0]).toBe(
    'translation-stale 15 Since it was translated, the original has lost this block of moves.',
  );
});

test('a translation that is wrong is not touched', () => {
  const wrong = withTexts(translateAll(written(courseOf(body))), (text) =>
    text.replace('2. Nf3', '2. Nc3'),
  );
  const { text, rules } = follow(body, body, wrong);
  expect(text).toContain('2. Nc3');
  expect(rules.join()).toContain('translation-differs');
});
