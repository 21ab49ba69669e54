import { withoutControls } from '../diagnostics/index.ts';
import { slug } from '../model/index.ts';
import type { ArchiveGame } from '../movetext/index.ts';
import { chaptersByBranch } from './chapters-by-branch.ts';
import { chaptersByGame } from './chapters-by-game.ts';
import { createPieceJoiner, isPiece, pieceOfGame } from './directives/index.ts';
import type { DraftChapter } from './draft-chapter.ts';
import { createFormalNotes } from './formal-notes.ts';
import { gamesIn, longGame } from './games-in.ts';
import { paragraphMarkdown } from './markdown-text.ts';
import { cutName, known } from './name-game.ts';
import { tellSigns } from './tell-game.ts';
import type { DraftGame, ImportNote } from './types.ts';
import { yamlText } from './yaml-text.ts';

export interface DraftOptions {
  /** A chapter for each game, or for each branch after the moves that all games share. */
  readonly by: 'game' | 'branch';
  readonly side: 'white' | 'black' | 'both';
  /** Title of the course where the games do not tell one. */
  readonly title: string;
  readonly withoutClocks?: boolean;
}

export interface DraftFile {
  /** Relative to the course folder, with `/`. */
  readonly path: string;
  readonly text: string;
}

export interface Draft {
  readonly files: readonly DraftFile[];
  readonly notes: readonly ImportNote[];
  /** How many notes there are more, where there are too many to be kept. */
  readonly untold: number;
  readonly games: number;
  /** Whether no game has a move, a word or an unreadable rest. */
  readonly isEmpty: boolean;
  readonly chapters: number;
}

/** A chapter may have 1 MB, and signs take up to three bytes. */
const largest = 300_000;

/** The most notes that are kept. Of what is no PGN each word may be one. */
const mostNotes = 20_000;

/**
 * Makes a course of a PGN file: a draft, since nothing is added to what the file says. Names are
 * made of tags and moves. Each game keeps its tags, so that an export has them again. Games are
 * forgotten one by one as their blocks are written.
 * @throws UserError where there would be too many chapters.
 */
export async function makeDraft(
  parts: AsyncIterable<ArchiveGame>,
  options: DraftOptions,
): Promise<Draft> {
  const notes: ImportNote[] = [];
  let untold = 0;
  const note = (each: ImportNote) => {
    if (notes.length < mostNotes) notes.push(each);
    else untold++;
  };
  let label = 0;
  const nextLabel = () => {
    label += 1;
    return `position-${label}`;
  };
  const pieces = createPieceJoiner();
  const formal = createFormalNotes();
  const { withoutClocks } = options;
  const quietly = { note: () => {}, formal: createFormalNotes(), withoutClocks };
  const maker =
    options.by === 'branch'
      ? chaptersByBranch(nextLabel, (part) => {
          const { games } = gamesIn({ ...part, line: 1 }, quietly);
          return games.filter((game) => !isPiece(game));
        })
      : chaptersByGame(nextLabel);
  const events = createTally();
  const annotators = createTally();
  let count = 0;
  let isEmpty = true;
  for await (const { text: written, line, tooLong, isWindows = false } of parts) {
    const text = withoutControls(written);
    const number = count + 1;
    if (tooLong) {
      count++;
      note({ game: number, line, message: longGame, text: '' });
      continue;
    }
    const { games, all } = gamesIn({ text, line, number }, { note, formal, withoutClocks });
    tellSigns(written, { isWindows, game: number, line }, formal);
    for (const game of games) {
      events.add(known(game.tags, 'Event'));
      annotators.add(known(game.tags, 'Annotator'));
      isEmpty &&= !isPiece(game) && hasNothing(game);
    }
    count += all;
    for (const game of games) if (isPiece(game)) pieces.add(pieceOfGame(game));
    const others = games.filter((game) => !isPiece(game));
    if (others.length > 0) maker.add(others, { text, number });
  }
  for (const each of formal.all()) note(each);
  const told = pieces.files();
  const made = chapterFiles(maker.makeChapters().flatMap(divide), told.chapters);
  const files = [...told.chapters, ...made];
  const settings = told.settings ?? settingsOf(events.mostSay(), annotators.mostSay(), options);
  return {
    files: [{ path: 'course.yaml', text: settings }, ...files],
    notes,
    untold,
    games: count,
    isEmpty,
    chapters: files.length,
  };
}

function hasNothing({ line, unread }: DraftGame): boolean {
  return line.moves.length === 0 && line.before.length === 0 && unread === undefined;
}

/** Counts what games say; `mostSay` is what more than half of them do, else nothing. */
function createTally() {
  const counts = new Map<string, number>();
  let all = 0;
  return {
    add(value: string): void {
      all++;
      counts.set(value, (counts.get(value) ?? 0) + 1);
    },
    mostSay: () => [...counts].find(([, count]) => count > all / 2)?.[0] ?? '',
  };
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

/** @param others files that come before them. */
function chapterFiles(
  chapters: readonly DraftChapter[],
  others: readonly DraftFile[],
): DraftFile[] {
  const digits = Math.max(2, String(others.length + chapters.length).length);
  const taken = new Map<string, number>();
  return chapters.map(({ title, blocks }, index) => {
    const slug = freshSlug(title, taken);
    const body = blocks.flatMap(({ heading, text }) =>
      heading === '' ? [text] : [`## ${paragraphMarkdown(heading)}`, text],
    );
    return {
      path: `chapters/${String(others.length + index + 1).padStart(digits, '0')}-${slug}.md`,
      text: `---\ntitle: ${JSON.stringify(title)}\nid: ${yamlText(slug)}\n---\n\n${body.join('\n\n')}\n`,
    };
  });
}

/** Files are named by it, and whole letters have up to four bytes. */
const shorten = (text: string) => [...text].slice(0, 45).join('');

/** `taken` has for each name the last number that was put behind it. */
function freshSlug(title: string, taken: Map<string, number>): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-');
  const short = shorten(plain).replace(/^-+|-+$/g, '');
  // A page of the site may have the name that a single word gives.
  const base = short.includes('-') ? short : `line-${short || 'one'}`;
  let count = (taken.get(base) ?? 0) + 1;
  while (count > 1 && taken.has(`${base}-${count}`)) count += 1;
  taken.set(base, count);
  const slug = count === 1 ? base : `${base}-${count}`;
  if (count > 1) taken.set(slug, 1);
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

function settingsOf(event: string, author: string, { side, title }: DraftOptions): string {
  const name = cutName(event || title);
  return [
    `title: ${JSON.stringify(name)}`,
    `id: ${JSON.stringify(slug(shorten(name)))}`,
    `side: ${side}`,
    ...(author === '' ? [] : [`author: ${JSON.stringify(author)}`]),
    '# While this is a draft these are warnings. Take them out when the course is to be proved.',
    'rules:',
    ...open.map((rule) => `  ${rule}: warning`),
    '',
  ].join('\n');
}
