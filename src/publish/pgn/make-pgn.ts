import type { RootContent } from 'mdast';
import type { CheckedCourse } from '../../check/index.ts';
import { initialPosition } from '../../chess/index.ts';
import type { Chapter, CourseSettings } from '../../model/index.ts';
import { makeMovetext, type PlainComment, type PlainTag } from '../../movetext/index.ts';
import {
  contextOf,
  freshParts,
  type PartMaker,
  type Parts,
  type RenderContext,
} from '../../render/index.ts';
import { chapterOf } from './chapter-of.ts';
import { type BlockInPgn, blockInPgn } from './game-of-block.ts';
import { comment } from './lines-of-tree.ts';
import { plainWords, type WordsContext } from './plain-words.ts';
import { strictGame } from './strict-game.ts';

export interface PgnOptions {
  /** Id or number of the only chapter to write. */
  readonly chapter?: string | undefined;
  /** Address of the site; else the course's own setting. */
  readonly site?: string | undefined;
  /** What is made of single chapters; made anew unless given. */
  readonly parts?: Parts | undefined;
}

/**
 * A course, or a chapter of it, in the export format of the PGN standard (section 8): each block of
 * moves, game and exercise is a game, and the text before it a comment before its first move.
 * Beside the seven tags a game has `Annotator`, `Chapter` and `Section`: the author, and the titles
 * that it stands under. Programs list games by their players, so where a block has none, its chapter and its
 * section stand there. The standard wants ISO 8859-1; this is UTF-8 text, as programs read today.
 * @throws PublishError for a chapter that the course does not have.
 */
export function makePgn(
  { course }: CheckedCourse,
  { chapter, site, parts = freshParts(contextOf(course)) }: PgnOptions = {},
): string {
  const chapters = chapter === undefined ? course.chapters : [chapterOf(course, chapter)];
  const maker = pgnPart(site);
  return chapters.flatMap((each) => parts.of(maker, each)).join('\n');
}

/** The games of a chapter. @param site address of the site; else the course's own setting. */
export function pgnPart(site: string | undefined): PartMaker<readonly string[]> {
  const make = (context: RenderContext) =>
    gamesOf(context, site).map((game) => makeMovetext(strictGame(game)));
  return { kind: 'moves', inputs: site ?? '', make };
}

type Game = Parameters<typeof makeMovetext>[0];

/** Text that no game has taken yet, and the heading it stands under. */
interface Pending {
  words: PlainComment[];
  section: string;
  games: number;
}

function gamesOf({ ask, settings, chapter }: RenderContext, site: string | undefined): Game[] {
  const context: WordsContext = { ask, settings, chapter: chapter.file };
  const number = ask('chapter', chapter.file)?.number ?? 0;
  const games: Game[] = [];
  const pending: Pending = { words: comment(chapter.summary ?? ''), section: '', games: 0 };
  const close = (block: BlockInPgn & { kind: 'game' }): void => {
    const round = `${number}.${games.length + 1}`;
    pending.games += 1;
    const { section, games: place } = pending;
    const tags = tagsOf(settings, chapter, { block, round, section, place, site });
    const result = { text: tags.find(({ name }) => name === 'Result')?.value ?? '*' };
    const before = [...pending.words, ...block.line.before];
    games.push({ tags, line: { ...block.line, before, result } });
    pending.words = [];
  };
  for (const part of partsOf(chapter.body.children)) {
    if (part.type === 'courseBlock') {
      const block = chapter.blocks[part.block];
      const made = block && blockInPgn(block, context);
      if (made?.kind === 'game') close(made);
      else if (made) pending.words.push(...comment(made.words));
    } else if (part.type === 'heading') {
      const title = plainWords(part.children, context);
      pending.section = title === chapter.title ? '' : title;
      pending.games = 0;
    } else pending.words.push(...comment(plainWords([part], context)));
  }
  // Text behind the last game ends it; a chapter of text alone is a game without moves.
  const last = games.pop();
  if (last === undefined) {
    close({ kind: 'game', line: { before: [], moves: [] }, position: initialPosition, tags: [] });
  } else games.push({ ...last, line: withLastWords(last.line, pending.words) });
  return games;
}

function withLastWords(line: Game['line'], words: readonly PlainComment[]): Game['line'] {
  const move = line.moves.at(-1);
  if (move === undefined) return { ...line, before: [...line.before, ...words] };
  const moves = [...line.moves.slice(0, -1), { ...move, after: [...move.after, ...words] }];
  return { ...line, moves };
}

/** The text in order, taken apart where a block stands within a quote or a list. */
function partsOf(nodes: readonly RootContent[]): RootContent[] {
  return nodes.flatMap((node) => (holdsBlock(node) ? partsOf(node.children) : [node]));
}

function holdsBlock(node: RootContent): node is RootContent & { children: RootContent[] } {
  if (!('children' in node)) return false;
  const children: readonly RootContent[] = node.children;
  return children.some((child) => child.type === 'courseBlock' || holdsBlock(child));
}

interface TagFacts {
  readonly block: BlockInPgn & { readonly kind: 'game' };
  readonly round: string;
  readonly section: string;
  /** Which of the games under its heading it is, from 1. */
  readonly place: number;
  readonly site: string | undefined;
}

/** All that a `Result` tag may say (8.1.1.7). */
const results: readonly string[] = ['1-0', '0-1', '1/2-1/2', '*'];

/** `The main line (2)` */
function placeWords(section: string, place: number): string {
  if (section === '') return String(place);
  return place === 1 ? section : `${section} (${place})`;
}

/** The seven tags of the standard in its order, then the others by their names (8.1.1). */
function tagsOf(
  settings: CourseSettings,
  { title }: Chapter,
  { block, round, section, place, site }: TagFacts,
): PlainTag[] {
  const own = new Map(block.tags.map(({ name, value }) => [name, value]));
  if (!results.includes(own.get('Result') ?? '*')) own.delete('Result');
  const hasPlayers = own.has('White') || own.has('Black');
  const roster: readonly (readonly [string, string])[] = [
    ['Event', settings.title],
    ['Site', site ?? settings.site ?? '?'],
    ['Date', '????.??.??'],
    ['Round', round],
    ['White', hasPlayers ? '?' : title],
    ['Black', hasPlayers ? '?' : placeWords(section, place)],
    ['Result', block.result ?? '*'],
  ];
  const others = new Map(own);
  for (const [name] of roster) others.delete(name);
  const add = (name: string, value: string | undefined) => {
    if (value && !others.has(name)) others.set(name, value);
  };
  add('Annotator', settings.author);
  others.set('Chapter', title);
  others.delete('Section');
  add('Section', section);
  others.delete('FEN');
  others.delete('SetUp');
  if (block.position.fen !== initialPosition.fen) {
    others.set('SetUp', '1');
    others.set('FEN', block.position.fen);
  }
  const sorted = [...others].sort(([a], [b]) => (a < b ? -1 : 1));
  return [...roster.map(([name, value]) => [name, own.get(name) ?? value] as const), ...sorted].map(
    ([name, value]) => ({ name, value }),
  );
}
