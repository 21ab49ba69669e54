import { createLocator, withoutControls } from '../../diagnostics/index.ts';
import { slug } from '../../model/index.ts';
import { parseGames } from '../../movetext/index.ts';
import { chaptersByBranch } from './chapters-by-branch.ts';
import { addBlocks, type DraftChapter } from './draft-chapter.ts';
import { paragraphMarkdown } from './markdown-text.ts';
import { known, nameGame } from './name-game.ts';
import { playGame } from './play-game.ts';
import type { ArchivePart } from './read-archive.ts';
import type { DraftGame, ImportNote } from './types.ts';
import { writeBlocks } from './write-blocks.ts';

export interface DraftOptions {
  /** A chapter for each game, or for each branch after the moves that all games share. */
  readonly by: 'game' | 'branch';
  readonly side: 'white' | 'black' | 'both';
  /** Title of the course where the games do not tell one. */
  readonly title: string;
}

export interface DraftFile {
  /** Relative to the course folder, with `/`. */
  readonly path: string;
  readonly text: string;
}

export interface Draft {
  readonly files: readonly DraftFile[];
  readonly notes: readonly ImportNote[];
  readonly games: number;
  /** Whether no game has a move, a word or an unreadable rest. */
  readonly isEmpty: boolean;
  readonly chapters: number;
}

/** A chapter may have 1 MB, and signs take up to three bytes. */
const largest = 300_000;

/**
 * Makes a course of a PGN file: a draft, since nothing is added to what the file says. Names are
 * made of tags and moves. Each game keeps its tags, so that an export has them again.
 */
export async function makeDraft(
  parts: AsyncIterable<ArchivePart>,
  options: DraftOptions,
): Promise<Draft> {
  const notes: ImportNote[] = [];
  const games: DraftGame[] = [];
  for await (const { text: written, line } of parts) {
    const text = withoutControls(written);
    const pointAt = createLocator(text);
    const lineAt = (offset: number) => line - 1 + pointAt(offset).line;
    for (const movetext of parseGames(text)) {
      const number = games.length + 1;
      games.push(playGame({ number, movetext, text, lineAt }, (note) => notes.push(note)));
    }
  }
  let label = 0;
  const nextLabel = () => {
    label += 1;
    return `position-${label}`;
  };
  const chapters =
    options.by === 'branch' ? chaptersByBranch(games, nextLabel) : chaptersByGame(games, nextLabel);
  const files = chapterFiles(chapters.flatMap(divide));
  return {
    files: [{ path: 'course.yaml', text: settingsOf(games, options) }, ...files],
    notes,
    games: games.length,
    isEmpty: games.every(
      ({ line, unread }) =>
        line.moves.length === 0 && line.before.length === 0 && unread === undefined,
    ),
    chapters: files.length,
  };
}

/** Games that follow one another with the same `Chapter` tag, as our export has it, stay together. */
function chaptersByGame(games: readonly DraftGame[], nextLabel: () => string): DraftChapter[] {
  const chapters: DraftChapter[] = [];
  let last = '';
  for (const game of games) {
    const title = nameGame(game);
    const told = known(game.tags, 'Chapter');
    const previous = chapters.at(-1);
    const chapter = told !== '' && told === last && previous ? previous : { title, blocks: [] };
    if (chapter !== previous) chapters.push(chapter);
    last = told;
    addBlocks(chapter, writeBlocks(game, { nextLabel }), known(game.tags, 'Section'));
  }
  return chapters;
}

/** A chapter that is too long for a file becomes several. */
function divide({ title, blocks }: DraftChapter): DraftChapter[] {
  const parts: DraftChapter['blocks'][] = [[]];
  let size = 0;
  for (const block of blocks) {
    size += block.text.length;
    if (size > largest && parts.at(-1)?.length) {
      parts.push([]);
      size = block.text.length;
    }
    parts.at(-1)?.push(block);
  }
  return parts.map((part, index) => ({
    title: index === 0 ? title : `${title} (${index + 1})`,
    blocks: part,
  }));
}

function chapterFiles(chapters: readonly DraftChapter[]): DraftFile[] {
  const digits = Math.max(2, String(chapters.length).length);
  const taken = new Set<string>();
  return chapters.map(({ title, blocks }, index) => {
    const slug = freshSlug(title, taken);
    const body = blocks.flatMap(({ heading, text }) =>
      heading === '' ? [text] : [`## ${paragraphMarkdown(heading)}`, text],
    );
    return {
      path: `chapters/${String(index + 1).padStart(digits, '0')}-${slug}.md`,
      text: `---\ntitle: ${JSON.stringify(title)}\nid: ${slug}\n---\n\n${body.join('\n\n')}\n`,
    };
  });
}

function freshSlug(title: string, taken: Set<string>): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, 50)
    .replace(/^-+|-+$/g, '');
  // A page of the site may have the name that a single word gives.
  const base = plain.includes('-') ? plain : `line-${plain || 'one'}`;
  let slug = base;
  for (let count = 2; taken.has(slug); count += 1) slug = `${base}-${count}`;
  taken.add(slug);
  return slug;
}

/** Findings that only the author can settle: they do not keep a draft from being shown. */
const open = [
  'transposition-untold',
  'advice-conflict',
  'assessment-conflict',
  'reply-unanswered',
  'line-repeated',
  'game-result',
];

function settingsOf(games: readonly DraftGame[], { side, title }: DraftOptions): string {
  /** What more than half of the games say. */
  const shared = (name: string) => {
    const counts = new Map<string, number>();
    for (const { tags } of games) {
      const value = known(tags, name);
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    return [...counts].find(([, count]) => count > games.length / 2)?.[0] ?? '';
  };
  const author = shared('Annotator');
  const name = shared('Event') || title;
  return [
    `title: ${JSON.stringify(name)}`,
    `id: ${JSON.stringify(slug(name))}`,
    `side: ${side}`,
    ...(author === '' ? [] : [`author: ${JSON.stringify(author)}`]),
    '# While this is a draft these are warnings. Take them out when the course is to be proved.',
    'rules:',
    ...open.map((rule) => `  ${rule}: warning`),
    '',
  ].join('\n');
}
