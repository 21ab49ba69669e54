/** Files that leave the site: PGN, the pages of a book, letters, what changed. */
import { Chess } from 'chess.js';
import { type ChildNode, type PgnNodeData, parsePgn, startingPosition } from 'chessops/pgn';
import { parseSan } from 'chessops/san';
import { compareCourses, writeChanges } from '../../../src/changes/index.ts';
import { makeNews } from '../../../src/changes/make-news.ts';
import type { CheckedCourse } from '../../../src/check/index.ts';
import { compareGames } from '../../../src/lookup/games/index.ts';
import { documentsInBook } from '../../../src/model/index.ts';
import { type Movetext, makeMovetext, parseGames } from '../../../src/movetext/index.ts';
import { bookPages } from '../../../src/publish/book/book-pages.ts';
import { bookPart } from '../../../src/publish/book/chapter-part.ts';
import { makePgn } from '../../../src/publish/pgn/index.ts';
import { readNews } from '../../../src/read/read-news.ts';
import { assignAddresses } from '../../../src/render/addresses.ts';
import { contextOf, freshParts } from '../../../src/render/index.ts';
import { makeCourseTable } from '../../../src/site/render/course-table.ts';
import type { Oracle } from '../case.ts';
import type { CourseRun } from './course-run.ts';
import { readXml } from './xml.ts';

/** The PGN of a course is read by others, and by ourselves, as the same moves. */
export const readablePgn: Oracle<CourseRun> = {
  name: 'readable PGN',
  *examine({ checked }) {
    if (checked === undefined) return;
    const pgn = makePgn(checked);
    const ours = parseGames(pgn);
    const problem = ours.flatMap(({ problems }) => problems)[0];
    if (problem) yield `our own reader finds ${problem.kind}`;
    const theirs = parsePgn(pgn, () => new Map());
    if (theirs.length !== ours.length)
      yield `${theirs.length} games by chessops, ${ours.length} by us`;
    for (const [index, game] of theirs.entries()) {
      const start = startingPosition(game.headers);
      if (start.isErr) yield `chessops: ${start.error.message}`;
      else yield* unplayable(game.moves.children, start.value);
      const main = [...game.moves.mainline()].map(({ san }) => san);
      const own = ours[index]?.line.moves.map(({ san }) => san.text) ?? [];
      if (main.join(' ') !== own.join(' '))
        yield `chessops reads ${main.join(' ')}, not ${own.join(' ')}`;
    }
    for (const game of ours) yield* unplayableByChessJs(game);
    const table = makeCourseTable(checked.course, assignAddresses(checked.course));
    const comparison = compareGames(table);
    const games = [...comparison.push(new TextEncoder().encode(pgn)), ...comparison.end()];
    for (const game of games)
      if (game.kind === 'broken') yield `compared with itself: ${JSON.stringify(game.fault)}`;
  },
};

/** chess.js knows few forms of comments and variations: it gets the bare main line. */
function* unplayableByChessJs({ tags, line }: Movetext): Generator<string> {
  const moves = line.moves.map(({ san }) => ({ san, glyphs: [], after: [] }));
  const bare = makeMovetext({
    tags: tags.filter(({ name }) => name === 'FEN' || name === 'SetUp'),
    line: { before: [], moves },
  });
  const chess = new Chess();
  try {
    chess.loadPgn(bare);
  } catch (error) {
    yield `chess.js: ${error instanceof Error ? error.message : error} in ${bare}`;
  }
}

function* unplayable(
  children: readonly ChildNode<PgnNodeData>[],
  position: Parameters<typeof parseSan>[0],
): Generator<string> {
  for (const { data, children: next } of children) {
    const move = parseSan(position, data.san);
    if (move === undefined) {
      yield `chessops cannot play ${data.san}`;
      continue;
    }
    const after = position.clone();
    after.play(move);
    yield* unplayable(next, after);
  }
}

/** The pages of a book are XML, each id and link of them sound. */
export const soundBook: Oracle<CourseRun> = {
  name: 'sound book',
  *examine({ checked }) {
    if (checked === undefined) return;
    const { course } = checked;
    const maker = bookPart({ site: undefined, pictures: new Map() });
    const parts = freshParts(contextOf(course));
    const pages = bookPages(
      course,
      documentsInBook(course).map((document) => ({
        file: document.file,
        title: document.title,
        part: parts.of(maker, document),
      })),
      undefined,
    );
    for (const { content } of pages) {
      const { faults, ids, links } = readXml(content);
      yield* faults;
      if (new Set(ids).size < ids.length) yield 'an id stands twice in a page of the book';
      for (const link of links) {
        if (link.startsWith('#') && !ids.includes(decodeURIComponent(link.slice(1)))) {
          yield `a link to ${link} leads nowhere in the book`;
        }
      }
    }
  },
};

/** Editions are compared without a fault; an edition is no change of itself. */
export const calmChanges = (other: CheckedCourse): Oracle<CourseRun> => ({
  name: 'calm changes',
  *examine({ course, checked }) {
    writeAll(compareCourses(course, other));
    if (checked === undefined) return;
    const { chapters, side } = compareCourses(course, checked);
    if (chapters.length > 0 || side) yield `changes of itself: ${JSON.stringify(chapters[0])}`;
    const changes = compareCourses(other.course, checked);
    writeAll(changes);
    const text = makeNews(changes, {
      language: course.settings.language,
      date: '2026-11-25',
      from: 'x',
    });
    const targets = {
      chapters: new Set(course.chapters.map(({ file }) => file)),
      media: new Set<string>(),
      unfit: new Map(),
    };
    const { problems } = readNews({ path: 'news/2026-11-25.md', text }, targets);
    for (const { message } of problems) yield `the news written of it: ${message}`;
  },
});

function writeAll(changes: ReturnType<typeof compareCourses>): void {
  for (const form of ['text', 'markdown'] as const) writeChanges(changes, { language: 'en', form });
}
