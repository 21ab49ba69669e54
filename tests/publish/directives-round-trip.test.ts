/**
 * A course as PGN with its directives, and back: the same positions, names, claims, drawings and advice, and no finding
 * more. Compared by the model, not by text. chess.js and chessops, which nobody here wrote, read every game.
 */
import { parseGames as parseTheirGames } from '@mliebelt/pgn-parser';
import { Chess } from 'chess.js';
import { makePgn, parsePgn, startingPosition } from 'chessops/pgn';
import { parseSan } from 'chessops/san';
import { describe, expect, test } from 'vitest';
import { type CheckedCourse, checkCourse } from '../../src/check/index.ts';
import { makeDraft } from '../../src/import/index.ts';
import { adviceOf, buildCourse, type Course, treesOf } from '../../src/model/index.ts';
import { createArchiveReader } from '../../src/movetext/index.ts';
import { makePgnWithDirectives } from '../../src/publish/pgn/index.ts';
import { type CourseFiles, findFiles, readCourse } from '../../src/read/index.ts';
import { soundCourses } from '../sound-courses.ts';

const courses = await Promise.all(
  soundCourses.slice(0, 2).map(async ({ name, folder }) => {
    const files = await findFiles(folder);
    const all = [...files.chapters, ...(files.settings ? [files.settings] : [])];
    const before = { course: buildCourse(readCourse(files)) };
    // They have no finding, which other tests say; to check them again would take seconds.
    const pgn = makePgnWithDirectives(before as CheckedCourse, {
      textOf: (file) => all.find(({ path }) => path === file)?.text,
    });
    const draft = await draftOf(pgn);
    const courseIn = ({ files: [settings, ...chapters] }: typeof draft) => ({
      ...files,
      games: [],
      news: [],
      chapters,
      settings: { path: 'course.yaml', text: settings?.text ?? '' },
    });
    const after = checked(courseIn(draft) as CourseFiles);
    const again = async (text: string) =>
      buildCourse(readCourse(courseIn(await draftOf(text)) as CourseFiles));
    return { name, before, pgn, draft, after, again };
  }),
);

function checked(files: CourseFiles) {
  const course = buildCourse(readCourse(files));
  const findings = checkCourse(course).diagnostics.map(
    ({ rule, message, place }) => `${place.file}:${place.start.line} ${rule}: ${message}`,
  );
  return { course, findings };
}

async function draftOf(pgn: string) {
  const parts = (async function* parts() {
    const reader = createArchiveReader();
    yield* [...reader.push(new TextEncoder().encode(pgn))];
    yield* reader.end();
  })();
  return makeDraft(parts, { by: 'game', side: 'both', title: 'x' });
}

/** All that a tree of moves says of its positions. */
function blocksOf(course: Course, file: string) {
  return course.chapters
    .filter((chapter) => chapter.file === file)
    .flatMap(({ blocks }) => blocks)
    .map((block) => ({
      kind: block.kind,
      view: block.view,
      ...('from' in block && { from: block.from?.name }),
      ...('result' in block && { result: block.result }),
      ...('tags' in block && { tags: block.tags }),
      ...('caption' in block && { marks: block.marks, arrows: block.arrows.map(arrowText) }),
      ...('hints' in block && { hints: block.hints.length }),
      trees: treesOf(block).map((nodes) =>
        nodes.map(({ position, move, glyphs, labels, marks, arrows, statements }) => ({
          key: position?.key,
          san: move?.san,
          glyphs,
          labels,
          marks,
          arrows: arrows.map(arrowText),
          said: statements.map(({ name, argument }) => `${name} ${argument.replace(/\s+/g, ' ')}`),
        })),
      ),
    }));
}

const arrowText = (arrow: { meaning: string; from: string; to: string }) =>
  `${arrow.meaning} ${arrow.from}-${arrow.to}`;

const namesOf = ({ labels }: Course) =>
  Object.values(labels).map(({ name, title, ref }) => `${ref.chapter} ${name} ${title ?? ''}`);

describe.each(courses)('$name', ({ name, before, pgn, draft, after, again }) => {
  test('nothing of the file is passed over', () => {
    expect(draft.notes).toEqual([]);
  });

  test('chapters, positions, moves, names, claims and drawings', () => {
    const heads = ({ chapters }: Course) =>
      chapters.map(({ id, title, summary, learn, file }) => ({ id, title, summary, learn, file }));
    expect(heads(after.course)).toEqual(heads(before.course));
    for (const { file } of before.course.chapters) {
      expect(blocksOf(after.course, file)).toEqual(blocksOf(before.course, file));
    }
    expect(namesOf(after.course)).toEqual(namesOf(before.course));
    expect(after.course.settings).toEqual(before.course.settings);
  });

  test('advice', () => {
    const advice = ({ course }: { readonly course: Course }) =>
      [...adviceOf(course)].map(
        ([key, each]) => `${key} ${JSON.stringify(each.map(({ san }) => san))}`,
      );
    expect(advice(after)).toEqual(advice(before));
  });

  test('no finding more', () => {
    expect(after.findings).toEqual([]);
  });

  test('the words', () => {
    const words = (course: Course) =>
      course.chapters.map(({ body }) =>
        JSON.stringify(body)
          .match(/"value":"[^"]*"/g)
          ?.join(' ')
          .match(/\p{L}{2,}/gu),
      );
    expect(words(after.course)).toEqual(words(before.course));
  });

  test('strict readers take every game', () => {
    const games = pgn.split(/\n(?=\[Event )/);
    for (const text of games) new Chess().loadPgn(text);
    // It refuses embedded commands that have no value; long comments are too deep for it.
    for (const text of games.filter(({ length }) => length < 5000)) {
      expect(parseTheirGames(text)).toHaveLength(1);
    }
    for (const game of parsePgn(pgn)) {
      const position = startingPosition(game.headers).unwrap();
      for (const { san } of game.moves.mainline()) {
        const move = parseSan(position, san);
        if (move === undefined) throw new Error(`${san} in ${game.headers.get('File')}`);
        position.play(move);
      }
    }
    expect(Math.max(...pgn.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(255);
  });

  test.runIf(name === 'demo-course')(
    'a program that writes the file anew in its own way loses nothing',
    async () => {
      const course = await again(parsePgn(pgn).map(makePgn).join('\n'));
      for (const { file } of before.course.chapters) {
        expect(blocksOf(course, file)).toEqual(blocksOf(before.course, file));
      }
    },
  );
});
