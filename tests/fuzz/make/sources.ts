import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { rules } from '../../../src/check/index.ts';
import { filesOfExample } from '../../../src/check/testing/run-example.ts';
import { soundCourses } from '../../sound-courses.ts';
import type { Files } from '../case.ts';
import type { Random } from '../random.ts';

/** Every example of a rule is a small course that is about something. */
const examples: readonly Files[] = rules
  .flatMap((rule) => rule.examples)
  // One shows a search that is given up after five million positions, which each oracle would wait for again.
  .filter(({ course }) => !JSON.stringify(course).includes('mate in 9'))
  .map((example) =>
    Object.fromEntries(
      filesOfExample(example).map(({ path, text }) => [path, withTitle(path, text)]),
    ),
  );

/** Chapters of examples have no front matter; those of a course must. */
function withTitle(file: string, text: string): string {
  return file.startsWith('chapters/') && !text.startsWith('---')
    ? `---\ntitle: ${path.basename(file, '.md')}\n---\n\n${text}`
    : text;
}

const sound: readonly Files[] = soundCourses.map(({ folder }) =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => /^course\.yaml$|\.(?:md|pgn)$/.test(file))
      .sort()
      .map((file) => [file, readFileSync(path.join(folder, file), 'utf8')]),
  ),
);

/** The whole of the example course: what archives are compared with. */
export const [demoCourse = {}] = sound;

/** A few chapters of a course of this repository, or the example of a rule. */
export function pickSource(random: Random): Files {
  if (random.chance(0.6)) return random.pick(examples);
  const course = Object.entries(random.pick(sound));
  const chapters = course.filter(([file]) => file.startsWith('chapters/'));
  const kept = new Set([random.pick(chapters)[0], random.pick(chapters)[0]]);
  // Of a long chapter a stretch is enough: each oracle reads all that there is.
  return Object.fromEntries(
    course
      .filter(([file]) => !file.startsWith('chapters/') || kept.has(file))
      .map(([file, text]) => [file, text.length > 5_000 ? stretchOf(text, random) : text]),
  );
}

function stretchOf(text: string, random: Random): string {
  const sections = text.split(/^(?=## )/m);
  const start = 1 + random.below(Math.max(1, sections.length - 2));
  return [sections[0], ...sections.slice(start, start + 2)].join('');
}
