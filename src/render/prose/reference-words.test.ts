import { expect, test } from 'vitest';
import { readableText, renderCourse } from '../../site/render/testing/render-course.ts';

/** A comment with a directive in it, as a page shows it, without the moves around it. */
function shown(comment: string, language: 'en' | 'de' | 'es'): string {
  const text =
    '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[knights]} 3. Bb5\n```\n\n' +
    `\`\`\`moves\n1. Nf3 Nc6 2. e4 e5 {${comment}}\n\`\`\`\n\n` +
    '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bc4 {:here[italian]}\n```\n';
  const [page = ''] = renderCourse([text], { language }).map(readableText);
  return /2\.\s?e4 e5 (.*?)\s*(?:1\.\s?e4|$)/s.exec(page)?.[1] ?? page;
}

// Sentences written for this test, in the settings that authors may write the directives in.
test.each([
  // A comment by itself, and sentences around it.
  ['en', ':same[knights]', 'The same position as after 2...Nc6.'],
  ['en', ':same[knights] The main road.', 'The same position as after 2...Nc6. The main road.'],
  ['en', ':same[knights], and we go on.', 'The same position as after 2...Nc6, and we go on.'],
  ['en', ':same[knights] and we go on.', 'The same position as after 2...Nc6 and we go on.'],
  ['en', 'Good. :later[italian]', 'Good. More on this later, after 3.Bc4.'],
  ['en', ':later[italian] Now.', 'More on this later, after 3.Bc4. Now.'],
  // Within a sentence.
  ['en', 'This is :same[knights].', 'This is the same position as after 2...Nc6.'],
  ['en', 'Sound, :same[knights].', 'Sound, the same position as after 2...Nc6.'],
  [
    'en',
    'Sound, as we shall see :later[italian].',
    'Sound, as we shall see (more on this later, after 3.Bc4).',
  ],
  ['en', 'Sound, :later[italian].', 'Sound, more on this later, after 3.Bc4.'],
  ['en', 'Sound (:later[italian]).', 'Sound (more on this later, after 3.Bc4).'],
  ['en', 'Sound *indeed* :later[italian]', 'Sound indeed (more on this later, after 3.Bc4)'],
  ['de', ':same[knights] Es geht weiter.', 'Dieselbe Stellung wie nach 2...Sc6. Es geht weiter.'],
  ['de', 'Das führt zu :same[knights].', 'Das führt zu derselben Stellung wie nach 2...Sc6.'],
  ['de', 'Das ergibt :same[knights].', 'Das ergibt dieselbe Stellung wie nach 2...Sc6.'],
  ['de', 'Gut. :later[italian]', 'Gut. Dazu später mehr, nach 3.Lc4.'],
  [
    'de',
    'Gut, wie man sieht :later[italian].',
    'Gut, wie man sieht (dazu später mehr, nach 3.Lc4).',
  ],
  ['es', ':same[knights]', 'La misma posición que tras 2...Cc6.'],
  ['es', 'Llegamos a :same[knights].', 'Llegamos a la misma posición que tras 2...Cc6.'],
  ['es', 'Bueno :later[italian].', 'Bueno (más sobre esto después, tras 3.Ac4).'],
] as const)('%s: %s', (language, comment, words) => {
  expect(shown(comment, language)).toBe(words);
});
