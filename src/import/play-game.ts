import {
  initialPosition,
  isFenFault,
  isMoveFault,
  type Position,
  parseFen,
  playMove,
} from '../chess/index.ts';
import type { Comment, Line, Movetext } from '../movetext/index.ts';
import type { DraftComment, DraftGame, DraftLine, DraftMove, ImportNote } from './types.ts';

/** A game as it was read, the text that it stands in, and where. */
export interface WrittenGame {
  readonly number: number;
  readonly movetext: Movetext;
  readonly text: string;
  /** The line of the file that an offset of `text` stands in. */
  readonly lineAt: (offset: number) => number;
}

/** A line that is being played. `at` is its next move, `item` the next thing after the move before. */
interface Walk {
  readonly line: Line;
  readonly out: DraftLine;
  at: number;
  item: number;
  /** Before and after the last move. */
  before: Position;
  position: Position;
}

/**
 * Plays a game. A line is kept up to a move that cannot be played; the rest of it becomes a comment
 * there, with `note` told of it. Nothing else is lost: what the parser could not read is told too.
 * Nesting is held on a stack of its own, so that it may have any depth.
 */
export function playGame(game: WrittenGame, note: (note: ImportNote) => void): DraftGame {
  const { number, movetext, text, lineAt } = game;
  const tell = (offset: number, message: string, quoted = '') =>
    note({ game: number, line: lineAt(offset), message, text: quoted });
  for (const { span, message } of movetext.problems) {
    tell(span.start, message, text.slice(span.start, span.end));
  }
  const last = movetext.problems.at(-1);
  if (movetext.untold && last) {
    tell(
      last.span.end,
      `${movetext.untold.toLocaleString('en')} more places of this game cannot be read.`,
    );
  }
  const tags = uniqueTags(movetext);
  const { line } = movetext;
  const out: DraftLine = { from: { labels: [] }, before: comments(line.before), moves: [] };
  const draft = { number, tags, line: out, result: line.result?.text };
  const start = startOf(movetext);
  if ('reason' in start) {
    const whole = text.slice(line.span.start, line.span.end);
    tell(start.offset, `The FEN is no position: ${start.reason}. The game is kept as text.`, whole);
    return { ...draft, unread: whole };
  }
  const stack: Walk[] = [{ line, out, at: 0, item: 0, before: start, position: start }];
  for (let walk = stack.at(-1); walk; walk = stack.at(-1)) {
    const last = walk.out.moves.at(-1);
    const item = walk.line.moves[walk.at - 1]?.after[walk.item];
    if (item !== undefined && last !== undefined) {
      walk.item += 1;
      if (item.type === 'comment') last.after.push(...comments([item]));
      else {
        const from = walk.out.moves.at(-2) ?? walk.out.from;
        const inner: DraftLine = { from, before: comments(item.line.before), moves: [] };
        last.after.push({ type: 'variation', line: inner });
        const { before } = walk;
        stack.push({ line: item.line, out: inner, at: 0, item: 0, before, position: before });
      }
      continue;
    }
    const move = walk.line.moves[walk.at];
    if (move === undefined) {
      stack.pop();
      continue;
    }
    const played = playMove(walk.position, move.san.text);
    if (isMoveFault(played)) {
      const begin = move.number?.span.start ?? move.san.span.start;
      const rest = text.slice(begin, endOfMoves(walk.line));
      tell(begin, `\`${move.san.text}\` cannot be played: ${played.reason}.`, rest);
      // On one line: at the start of one some words would open a block.
      const words = `[not read: ${rest.replace(/\s+/g, ' ')}]`;
      (last?.after ?? walk.out.before).push({ type: 'comment', text: words });
      stack.pop();
      continue;
    }
    const { san, number: moveNumber, color } = played;
    const glyphs = move.glyphs.map(({ nag }) => ({ nag }));
    const made: DraftMove = { san, number: moveNumber, color, glyphs, labels: [], after: [] };
    walk.out.moves.push(made);
    walk.before = walk.position;
    walk.position = played.after;
    walk.at += 1;
    walk.item = 0;
  }
  return draft;
}

/** Where the moves of a line end, without its result. */
function endOfMoves({ moves, result, span }: Line): number {
  const last = moves.at(-1);
  const item = last?.after.at(-1);
  const end = item === undefined ? undefined : 'outer' in item ? item.outer.end : item.span.end;
  const glyph = last?.glyphs.at(-1)?.span.end;
  return end ?? glyph ?? last?.san.span.end ?? result?.span.start ?? span.end;
}

function comments(written: readonly Comment[]): DraftComment[] {
  return written.flatMap(({ text }) => {
    const words = text.replace(/\s+/g, ' ').trim();
    return words === '' ? [] : [{ type: 'comment', text: words }];
  });
}

function uniqueTags({ tags }: Movetext) {
  const found = new Map<string, string>();
  for (const { name, value } of tags) if (!found.has(name)) found.set(name, value);
  return [...found].map(([name, value]) => ({ name, value }));
}

function startOf({ tags }: Movetext): Position | { reason: string; offset: number } {
  const tag = tags.find(({ name }) => name === 'FEN');
  if (tag === undefined) return initialPosition;
  const position = parseFen(tag.value);
  if (!isFenFault(position)) return position;
  return { reason: position.reason, offset: tag.span.start };
}
