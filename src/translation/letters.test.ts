import { expect, test } from 'vitest';
import { buildCourse } from '../model/index.ts';
import { type CourseFiles, readCourse } from '../read/index.ts';
import { inTranslation } from './in-translation.ts';
import { planTranslation } from './plan-translation.ts';
import { readTranslations } from './read-translations.ts';

const english = `---
title: One
---

Play \`2.Nf3\`.

\`\`\`moves
1. e4 e5 2. Nf3 {Now \`2...Nc6\`. :claim[legal Nc6]} Nc6 3. Bb5
\`\`\`
`;

/** A course in English with a German translation that has letters of its own. */
function courseOf(original: string, german?: string, origin?: string): CourseFiles {
  const folder = 'translations/de';
  return {
    settings: { path: 'course.yaml', text: 'title: A course\nid: a\nside: both\n' },
    chapters: [
      { path: 'chapters/1.md', text: original },
      { path: 'chapters/2.md', text: english.replace('One', 'Two') },
    ],
    games: [],
    media: [],
    problems: [],
    translations: [
      {
        tag: 'de',
        folder,
        settings: { path: `${folder}/course.yaml`, text: 'title: Ein Kurs\npieces: de\n' },
        chapters: german ? [{ path: `${folder}/chapters/1.md`, text: german }] : [],
        pages: [],
        news: [],
        ...(origin !== undefined && {
          origin: { path: `${folder}/origin.json`, text: origin },
        }),
      },
    ],
  };
}

const differing = (files: CourseFiles) =>
  readTranslations(files).flatMap(({ problems }) =>
    problems.filter(({ rule }) => rule !== 'translation-open').map(({ message }) => message),
  );

const begun = planTranslation(courseOf(english), 'de');
const german = begun.files.find(({ path }) => path.endsWith('/1.md'))?.text ?? '';
const translated = german.replaceAll('(en) ', '').replace('Play', 'Spiele').replace('Now', 'Nun');

test('a translation is begun in its own letters, and held equal to the original', () => {
  expect(german).toContain('1. e4 e5 2. Sf3 {(en) Now `2...Sc6`. :claim[legal Sc6]} Sc6 3. Lb5');
  expect(german).toContain('(en) Play `2.Sf3`.');
  expect(differing(courseOf(english, translated, begun.origin?.text))).toEqual([]);
  const other = translated.replace('3. Lb5', '3. Lc4');
  expect(differing(courseOf(english, other, begun.origin?.text))[0]).toContain('Bc4');
});

test('and follows the original in them', () => {
  const longer = english.replace('3. Bb5', '3. Bb5 Nf6 4. O-O');
  const plan = planTranslation(courseOf(longer, translated, begun.origin?.text), 'de');
  const text = plan.files.find(({ path }) => path.endsWith('/1.md'))?.text ?? '';
  expect(text).toContain('Sc6 3. Lb5 Sf6 4. O-O');
  expect(differing(courseOf(longer, text, plan.origin?.text))).toEqual([]);
});

test('it has the moves of the original, and what is not translated has the letters of the original', () => {
  const files = courseOf(english, translated, begun.origin?.text);
  const [translation] = readTranslations(files);
  if (!translation) throw new Error('a translation');
  const shown = buildCourse(readCourse(inTranslation(files, translation, 'written')));
  const sanOf = ({ blocks }: (typeof shown.chapters)[number]) =>
    blocks[0]?.nodes.flatMap(({ move }) => move?.san ?? []);
  const right = ['e4', 'e5', 'Nf3', 'Nc6', 'Bb5'];
  expect(shown.chapters.map(sanOf)).toEqual([right, right]);
  expect(shown.chapters.map(({ pieces }) => pieces)).toEqual(['de', undefined]);
  expect(shown.chapters.flatMap(({ problems }) => problems)).toEqual([]);
});
