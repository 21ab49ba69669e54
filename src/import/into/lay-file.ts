import { initialPosition, isFenFault, parseFen } from '../../chess/index.ts';
import { UserError, withoutControls } from '../../diagnostics/index.ts';
import type { Course, GameBlock } from '../../model/index.ts';
import { type ArchiveGame, makeMovetext } from '../../movetext/index.ts';
import { fenced } from '../directives/fenced.ts';
import { isPiece, pieceOfGame } from '../directives/index.ts';
import { createFormalNotes } from '../formal-notes.ts';
import { gamesIn, longGame } from '../games-in.ts';
import { nameGame } from '../name-game.ts';
import type { DraftGame, ImportNote } from '../types.ts';
import { plainGame } from '../write-blocks.ts';
import { hasLines, isPlayedGame, type TakenAs } from './is-played-game.ts';
import { Findings, layLines } from './lay-lines.ts';
import type { Laid, PlayedGame, SourceGame } from './types.ts';

export interface LayOptions {
  readonly as: TakenAs;
  readonly withoutClocks?: boolean;
  /** Whether lines go on where the course ends on purpose. */
  readonly pastEnds?: boolean | undefined;
}

/** Lays the games of a PGN file against a course: what is new in them, and what disagrees. Nothing is written. */
export async function layFile(
  course: Course,
  parts: AsyncIterable<ArchiveGame>,
  { as, withoutClocks, pastEnds = false }: LayOptions,
): Promise<Laid> {
  const found = new Findings();
  const notes: ImportNote[] = [];
  const note = (each: ImportNote) => void notes.push(each);
  const formal = createFormalNotes();
  const played: PlayedGame[] = [];
  const apart: SourceGame[] = [];
  let count = 0;
  for await (const { text, line, tooLong } of parts) {
    const number = count + 1;
    if (tooLong) {
      note({ game: number, line, message: longGame, text: '' });
      count += 1;
      continue;
    }
    const part = { text: withoutControls(text), line, number };
    const { games, all } = gamesIn(part, { note, formal, withoutClocks });
    count += all;
    for (const game of games) {
      const source = { number: game.number, name: nameGame(game) };
      if (isPlayedGame(game, as)) {
        checkNumber(played.length + 1);
        if (game.line.moves.length > 0) played.push({ ...source, ...playedGame(course, game) });
      } else if (hasLines(game)) {
        const start = startOf(game);
        const meets =
          start !== undefined && layLines(course, { game, start, source, pastEnds }, found);
        if (!meets) apart.push(source);
      }
    }
  }
  return {
    games: count,
    known: found.known,
    branches: [...found.branches.values()],
    against: [...found.against.values()],
    past: [...found.past.values()],
    said: [...found.said.values()],
    played,
    apart,
    notes,
  };
}

/** The most whole games that are taken into a course: a chapter of them is gone through by hand. */
const mostPlayed = 500;

function checkNumber(played: number): void {
  if (played <= mostPlayed) return;
  throw new UserError(
    `the file has more than ${mostPlayed} whole games`,
    'ask `compare` where they leave the course, and give a file of those that illustrate it',
  );
}

function startOf({ tags }: DraftGame) {
  const fen = tags.find(({ name }) => name === 'FEN');
  if (fen === undefined) return initialPosition;
  const position = parseFen(fen.value);
  return isFenFault(position) ? undefined : position;
}

function playedGame(course: Course, game: DraftGame): Pick<PlayedGame, 'block' | 'isThere'> {
  const sans = game.line.moves.map(({ san }) => san).join(' ');
  const shown = course.chapters
    .flatMap(({ blocks }) => blocks)
    .filter((block): block is GameBlock => block.kind === 'game');
  const isThere = shown.some((block) => mainLineOf(block) === sans);
  if (isPiece(game)) return { block: pieceOfGame(game).text, isThere };
  return { block: fenced('game', '', makeMovetext(plainGame(game), { signs: true })), isThere };
}

function mainLineOf({ nodes }: GameBlock): string {
  const sans: string[] = [];
  for (let node = nodes[nodes[0]?.children[0] ?? -1]; node; node = nodes[node.children[0] ?? -1]) {
    sans.push(node.move?.san ?? '');
  }
  return sans.join(' ');
}
