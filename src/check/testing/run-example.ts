import { initialPosition, isMoveFault, type Position, playMove } from '../../chess/index.ts';
import type { Diagnostic, Example } from '../../diagnostics/index.ts';
import { makeFactsFile, parseFactsFile } from '../../facts/index.ts';
import { findPictureFault } from '../../media/picture-fault.ts';
import { shapeOf } from '../../media/picture-shape.ts';
import { buildCourse } from '../../model/index.ts';
import {
  engineFile,
  readCourse,
  type SourceFile,
  type TranslationFiles,
} from '../../read/index.ts';
import { readTranslations } from '../../translation/index.ts';
import { checkCourse } from '../check-course.ts';
import { readFacts } from '../engine/read-facts.ts';
import { runShelf } from './run-shelf.ts';

/** The chapter that an example is, unless it names files of its own. */
export const exampleChapter = 'chapters/1.md';

/** The files of an example's course. */
export function filesOfExample({ course, side = 'white', engine }: Example): SourceFile[] {
  const files = typeof course === 'string' ? { [exampleChapter]: course } : course;
  if ('shelf.yaml' in files) return Object.entries(files).map(([path, text]) => ({ path, text }));
  const all = {
    'course.yaml': `title: Example\nid: example\nside: ${side}\n`,
    ...(engine && { [engineFile]: factsOfExample(engine) }),
    ...files,
  };
  return Object.entries(all).map(([path, text]) => ({ path, text }));
}

/** What an engine has to say in an example, as a file: its name is Example 1, and it always looks as deep. */
function factsOfExample(engine: NonNullable<Example['engine']>): string {
  const rows = Object.entries(engine).map(([where, lines]) => {
    const key = where.includes('/') ? where : positionAfter(where).key;
    return [key, 'Example 1', 'depth 20, lines 3, hash 64', 20, lines].join('\t');
  });
  return makeFactsFile(parseFactsFile(rows.join('\n')).facts);
}

function positionAfter(moves: string): Position {
  let position = initialPosition;
  for (const move of moves.split(' ').filter((word) => !/^\d+\.+$/.test(word))) {
    const played = playMove(position, move);
    if (isMoveFault(played)) throw new Error(`${move} in ${moves}: ${played.reason}`);
    position = played.after;
  }
  return position;
}

/** What one rule finds in the course of an example: for its test and its page in the handbook. */
export function runExample(files: readonly SourceFile[], rule: string): Diagnostic[] {
  const shelf = files.find(({ path }) => path === 'shelf.yaml');
  if (shelf) return runShelf(files, shelf).filter((diagnostic) => diagnostic.rule === rule);
  const media = files.filter(({ path }) => path.startsWith('media/'));
  const settings = files.find(({ path }) => path === 'course.yaml');
  const theme = files.find(({ path }) => path === 'theme.css');
  const { facts, problems } = readFacts(files.filter(({ path }) => path.startsWith('facts/')));
  const course = {
    ...(settings ? { settings } : {}),
    ...(theme ? { theme } : {}),
    chapters: files.filter(({ path }) => path.startsWith('chapters/')),
    games: files.filter(({ path }) => path.startsWith('games/')),
    media: media.map(({ path }) => path),
    unfit: new Map(
      media.flatMap(({ path, text }) => {
        const fault = path.endsWith('.svg') && findPictureFault(path, Buffer.from(text));
        return fault ? [[path, fault]] : [];
      }),
    ),
    pictures: new Map(
      media.flatMap(({ path, text }) =>
        path.endsWith('.svg') ? [[path, shapeOf(path, Buffer.from(text))]] : [],
      ),
    ),
    news: files.filter(({ path }) => path.startsWith('news/')),
    rules: files.filter(({ path }) => path.startsWith('rules/')),
    translations: translationsIn(files),
    problems,
  };
  const options = { frontMatter: 'optional' } as const;
  const translated = readTranslations(course, options).flatMap((each) => each.problems);
  const draft = readCourse({ ...course, problems: [...problems, ...translated] }, options);
  return checkCourse(buildCourse(draft), facts, 'none').diagnostics.filter(
    (diagnostic) => diagnostic.rule === rule,
  );
}

/** The translations among the files of an example. */
function translationsIn(files: readonly SourceFile[]): TranslationFiles[] {
  const inFolder = (folder: string) => files.filter(({ path }) => path.startsWith(`${folder}/`));
  const tags = inFolder('translations').map(({ path }) => path.split('/')[1] ?? '');
  return [...new Set(tags)].map((tag) => {
    const folder = `translations/${tag}`;
    const one = (name: string) => files.find(({ path }) => path === `${folder}/${name}`);
    const [settings, origin] = [one('course.yaml'), one('origin.json')];
    return {
      tag,
      folder,
      ...(settings && { settings }),
      chapters: inFolder(`${folder}/chapters`),
      pages: inFolder(`${folder}/pages`),
      news: [],
      ...(origin && { origin }),
    };
  });
}
