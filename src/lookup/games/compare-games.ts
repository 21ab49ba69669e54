import { initialPosition, isFenFault, type Position, parseFen } from '../../chess/index.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import {
  type ArchiveGame,
  createArchiveReader,
  isOtherVariant,
  readMainLine,
} from '../../movetext/index.ts';
import { followMoves } from './follow-moves.ts';
import type { ComparedGame, GameHead } from './types.ts';

/** Compares the games of one PGN file with a course while the file is read. */
export interface Comparison {
  /**
   * The games that end within the bytes given so far, in the order of the file. They are compared
   * one by one as the caller asks for them, so that it can rest in between; all of them must be
   * taken before the next bytes.
   */
  readonly push: (chunk: Uint8Array) => Iterable<ComparedGame>;
  readonly end: () => Iterable<ComparedGame>;
}

export function compareGames(table: CourseTable): Comparison {
  const reader = createArchiveReader();
  let number = 0;
  function* compared(games: Iterable<ArchiveGame>): Generator<ComparedGame> {
    for (const game of games) {
      const result = compareGame(table, game, number + 1);
      if (result === undefined) continue;
      number++;
      yield result;
    }
  }
  return {
    push: (chunk) => compared(reader.push(chunk)),
    end: () => compared(reader.end()),
  };
}

/** One game; nothing where there is neither tag nor move, as in the covering words of a mail. */
function compareGame(
  table: CourseTable,
  { text, tooLong }: ArchiveGame,
  number: number,
): ComparedGame | undefined {
  const line = readMainLine(text);
  const { tags } = line;
  const head = headOf(tags, number);
  const broken = (kind: 'start' | 'too-long', written: string, reason: string): ComparedGame => ({
    ...head,
    kind: 'broken',
    fault: { kind, written, at: '', reason },
  });
  // A game without the tag is closed by its result as well (PGN standard, 8.2.6).
  const ended = (): GameHead =>
    head.result === '*' ? { ...head, result: resultIn(line.result()) } : head;
  if (tooLong) return broken('too-long', '', '');
  const variant = tags.get('Variant') ?? '';
  if (isOtherVariant(variant)) return { ...head, kind: 'variant', variant };
  const start = startOf(tags);
  if (isFenFault(start)) return broken('start', tags.get('FEN') ?? '', start.reason);
  const first = line.peek();
  if (first === undefined) return tags.size === 0 ? undefined : { ...ended(), kind: 'empty' };
  if (typeof first !== 'string' && tags.size === 0) return undefined;
  const { exit, aside, fault } = followMoves(table, start, line);
  if (fault !== undefined) return { ...head, kind: 'broken', fault };
  if (exit === undefined) return { ...ended(), kind: 'apart' };
  return { ...ended(), kind: 'met', exit, ...(aside && { aside }) };
}

/** The `FEN` tag (PGN standard, 9.7.2), else the initial position. */
function startOf(tags: ReadonlyMap<string, string>): ReturnType<typeof parseFen> | Position {
  const fen = tags.get('FEN') ?? '';
  return fen.trim() === '' ? initialPosition : parseFen(fen);
}

function headOf(tags: ReadonlyMap<string, string>, number: number): GameHead {
  const value = (name: string) => {
    const text = (tags.get(name) ?? '').trim();
    return /^[?.]*$/.test(text) ? '' : text;
  };
  return {
    number,
    white: value('White'),
    black: value('Black'),
    event: value('Event'),
    date: value('Date').replace(/(?:\.\?+)+$/, ''),
    result: resultIn(value('Result')),
  };
}

function resultIn(written: string | undefined): GameHead['result'] {
  return results.find((each) => each === written) ?? '*';
}

const results = ['1-0', '0-1', '1/2-1/2', '*'] as const;
