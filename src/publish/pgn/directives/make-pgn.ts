import type { CheckedCourse } from '../../../check/index.ts';
import { type Block, type Chapter, type Course, writeLetters } from '../../../model/index.ts';
import {
  makeMovetext,
  type PlainComment,
  type PlainLine,
  packText,
  partCommand,
} from '../../../movetext/index.ts';
import { chapterOf } from '../chapter-of.ts';
import type { BlockGame } from './block-game.ts';
import { gameOfBlock } from './game-of-block.ts';
import { tagsOf } from './tags.ts';

export interface DirectivesOptions {
  /** The text of a file of the course. */
  readonly textOf: (file: string) => string | undefined;
  /** Id or number of the only chapter to write. */
  readonly chapter?: string | undefined;
}

/**
 * A course as PGN that `import` makes the same course of: settings, front matter, text, blocks with their
 * roles, names, claims and drawings. Every piece is a game with the tag `Directives`, and `Block` says what it
 * is: `course`, `chapter` (the front matter), `moves`, `game`, `exercise`, `diagram`, or `text` behind
 * the last of them. A comment holds the source as `packText` writes it; what stands before a block in the text
 * is the first comment of its game. Patterns, and blocks within lists and quotes, stay in the text. Moves are
 * in canonical SAN, so that any program can play them; all else that names pieces has English letters too, and the
 * setting `pieces` stays behind.
 * @throws PublishError for a chapter that the course does not have.
 */
export function makePgnWithDirectives(
  { course }: CheckedCourse,
  { textOf, chapter }: DirectivesOptions,
): string {
  const chapters = chapter === undefined ? course.chapters : [chapterOf(course, chapter)];
  const settings = (textOf('course.yaml') ?? '').replace(/^pieces:.*(?:\r?\n|$)/m, '');
  const head = { kind: 'course', line: wordsAlone([packText(settings)]) } as const;
  const games = chapters.flatMap((each) => {
    const text = writeLetters(
      { path: each.file, text: textOf(each.file) ?? '' },
      each.pieces,
      'en',
    );
    return gamesOfChapter(course, each, text);
  });
  return [gameText(course, undefined, head, '0'), ...games].join('\n');
}

function wordsAlone(parts: readonly string[]): PlainLine {
  return { before: commentsOf(parts), moves: [] };
}

/** One comment of several parts; none where there is nothing to say. */
function commentsOf(parts: readonly string[]): PlainComment[] {
  const text = parts.filter((part) => part !== '').join(' ');
  return text === '' ? [] : [{ type: 'comment', form: 'brace', text }];
}

function gamesOfChapter(course: Course, chapter: Chapter, text: string): string[] {
  const number = course.chapters.indexOf(chapter) + 1;
  const { front, body } = frontMatter(text);
  const head = { kind: 'chapter', line: wordsAlone([packText(front)]) } as const;
  const games = [gameText(course, chapter, head, `${number}.0`)];
  let written = body;
  const give = (game: BlockGame) =>
    games.push(gameText(course, chapter, game, `${number}.${games.length}`));
  for (const block of [...chapter.blocks].sort(byPlace)) {
    const { start, end } = block.place;
    if (start.column !== 1 || start.offset < written) continue;
    const game = gameOfBlock(block, text.slice(start.offset, end.offset));
    if (game === undefined) continue;
    give(withTextBefore(game, text.slice(written, start.offset)));
    written = end.offset;
  }
  const rest = text.slice(written).trim();
  if (rest !== '')
    give({ kind: 'text', line: wordsAlone([`${partCommand('text')} ${packText(rest)}`]) });
  return games;
}

const byPlace = (a: Block, b: Block) => a.place.start.offset - b.place.start.offset;

/** The text within the lines `---`, and where the body begins. */
function frontMatter(text: string): { front: string; body: number } {
  const [whole = '', front = ''] =
    /^\uFEFF?---[ \t]*\r?\n([\s\S]*?)\r?\n---[ \t]*(?:\r?\n|$)/.exec(text) ?? [];
  return { front, body: whole.length };
}

function withTextBefore(game: BlockGame, text: string): BlockGame {
  const words = text.replace(/^(?:[ \t]*\r?\n)+/, '').trimEnd();
  if (words === '') return game;
  const own = game.line.before.map((comment) => comment.text);
  const before = commentsOf([
    `${partCommand('text')} ${packText(words)} ${partCommand('block')}`,
    ...own,
  ]);
  return { ...game, line: { ...game.line, before } };
}

function gameText(
  course: Course,
  chapter: Chapter | undefined,
  game: BlockGame,
  round: string,
): string {
  const tags = tagsOf({ course, chapter, game, round });
  const result = { text: tags.find(({ name }) => name === 'Result')?.value ?? '*' };
  return makeMovetext({ tags, line: { ...game.line, result } });
}
