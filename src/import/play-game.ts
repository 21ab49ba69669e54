import {
  initialPosition,
  isFenFault,
  isMoveFault,
  type Position,
  parseFen,
  playForgiving,
} from '../chess/index.ts';
import {
  type Comment,
  isOtherVariant,
  type Line,
  type Movetext,
  type WrittenMove,
} from '../movetext/index.ts';
import { isPiece } from './directives/index.ts';
import type { FormalNotes } from './formal-notes.ts';
import {
  hasOtherThanAscii,
  type Tell,
  tellGame,
  tellLostTags,
  type WrittenGame,
} from './tell-game.ts';
import type { DraftComment, DraftGame, DraftLine, DraftMove, ImportNote } from './types.ts';
import { withoutClocks } from './without-clocks.ts';

/** A line that is being played. `at` is its next move, `item` the next thing after the move before. */
interface Walk {
  readonly line: Line;
  readonly out: DraftLine;
  at: number;
  item: number;
  /** Before and after the last move. */
  before: Position;
  position: Position;
  /** Whether a wrong number has been told: those behind it are wrong for the same reason. */
  misnumbered?: true;
}

export interface PlayOptions {
  readonly note: (note: ImportNote) => void;
  readonly formal: FormalNotes;
  readonly withoutClocks?: boolean | undefined;
}

/**
 * Plays a game. A line is kept up to a move that cannot be played; the rest of it becomes a comment
 * there, with a note of it. Nothing else is lost: what the parser could not read is told too. The notes
 * come in the order of the text. Nesting is held on a stack of its own, so that it may have any depth.
 */
export function playGame(game: WrittenGame, { note, ...options }: PlayOptions): DraftGame {
  const { number, lineAt } = game;
  const told: { readonly offset: number; readonly note: ImportNote }[] = [];
  const tell: Tell = (offset, message, quoted = '') => {
    told.push({ offset, note: { game: number, line: lineAt(offset), message, text: quoted } });
  };
  const draft = playTold(game, tell, options);
  for (const each of told.sort((a, b) => a.offset - b.offset)) note(each.note);
  return draft;
}

function playTold(game: WrittenGame, tell: Tell, options: Omit<PlayOptions, 'note'>): DraftGame {
  const { number, movetext, text } = game;
  const { line } = movetext;
  const start = startOf(movetext);
  const whole = () => wholeOf(movetext, text);
  if (isNoGame(movetext, whole)) {
    tell(line.span.start, noGame, whole());
    return { number, tags: [], line: { from: { labels: [] }, before: [], moves: [] } };
  }
  const comments = commentsWith(options);
  const tags = uniqueTags(movetext);
  const out: DraftLine = { from: { labels: [] }, before: comments(line.before), moves: [] };
  const draft = { number, tags, line: out, result: line.result?.text };
  if ('reason' in start) {
    tell(start.offset, `${start.reason}. The game is kept as text.`, whole());
    return { ...draft, unread: whole() };
  }
  tellGame(game, tell, options.formal);
  const stack: Walk[] = [{ line, out, at: 0, item: 0, before: start, position: start }];
  for (let walk = stack.at(-1); walk; walk = stack.at(-1)) {
    const last = walk.out.moves.at(-1);
    const item = walk.line.moves[walk.at - 1]?.after[walk.item];
    if (item !== undefined && last !== undefined) {
      walk.item += 1;
      if (item.type === 'comment') last.after.push(...comments([item]));
      else {
        tellResult(item.line, tell);
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
    const played = playForgiving(walk.position, move.san.text);
    if (isMoveFault(played)) {
      const begin = move.number?.span.start ?? move.san.span.start;
      const rest = text.slice(begin, endOfMoves(walk.line));
      tell(begin, `\`${move.san.text}\` cannot be played: ${played.reason}.`, rest);
      // On one line: at the start of one some words would open a block.
      const words = `[not read: ${rest.replace(/\s+/g, ' ')}]`;
      (last?.after ?? walk.out.before).push({ type: 'comment', text: words, isUnread: true });
      stack.pop();
      continue;
    }
    const { san, number: moveNumber, color } = played;
    tellMove(game, { move, walk, number: moveNumber }, tell, options.formal);
    const glyphs = move.glyphs.map(({ nag }) => ({ nag }));
    const made: DraftMove = { san, number: moveNumber, color, glyphs, labels: [], after: [] };
    walk.out.moves.push(made);
    walk.before = walk.position;
    walk.position = played.after;
    walk.at += 1;
    walk.item = 0;
  }
  if (out.moves.length === 0 && !isPiece(draft)) tellLostTags(game, tell);
  return draft;
}

/** All that stands in a game, with what stands before its tags and what is passed over. */
function wholeOf({ tags, line, problems, escaped = [] }: Movetext, text: string): string {
  const comments = line.before.map(({ outer }) => outer);
  const spans = [line, ...tags, ...problems].map(({ span }) => span);
  const all = [...spans, ...comments, ...escaped];
  const start = all.reduce((least, span) => Math.min(least, span.start), text.length);
  return text.slice(
    start,
    all.reduce((most, span) => Math.max(most, span.end), 0),
  );
}

/** Where the moves of a line end, without its result. */
function endOfMoves({ moves, result, span }: Line): number {
  const last = moves.at(-1);
  const item = last?.after.at(-1);
  const end = item === undefined ? undefined : 'outer' in item ? item.outer.end : item.span.end;
  const glyph = last?.glyphs.at(-1)?.span.end;
  return end ?? glyph ?? last?.san.span.end ?? result?.span.start ?? span.end;
}

/** Comments with single spaces, as far as there is anything in them. */
function commentsWith(options: Pick<PlayOptions, 'withoutClocks'>) {
  return (written: readonly Comment[]): DraftComment[] =>
    written.flatMap(({ text }) => {
      const kept = options.withoutClocks ? withoutClocks(text) : text;
      const words = kept.replace(/\s+/g, ' ').trim();
      return words === '' ? [] : [{ type: 'comment', text: words }];
    });
}

/** Tells how a move is written, where nobody else would know it afterwards. */
function tellMove(
  { number: game, text, lineAt }: WrittenGame,
  { move, walk, number }: { move: WrittenMove; walk: Walk; number: number },
  tell: Tell,
  formal: FormalNotes,
): void {
  const { number: written, san } = move;
  if (written && written.value !== number && !walk.misnumbered) {
    walk.misnumbered = true;
    const quoted = text.slice(written.span.start, san.span.end);
    tell(
      written.span.start,
      `\`${san.text}\` has the number “${written.text}”, but is move ${number}.`,
      quoted,
    );
  }
  const place = () => ({ game, line: lineAt(san.span.start) });
  if (hasOtherThanAscii(san.text)) formal.see('signs', place(), san.text);
  if (/^0-?0/.test(san.text)) formal.see('zeros', place(), san.text);
}

function tellResult({ result }: Line, tell: Tell): void {
  if (result === undefined) return;
  tell(
    result.span.start,
    'The result of a variation is left out: a game alone has one (18).',
    result.text,
  );
}

const noGame = 'This is a position, as in FEN or EPD (16), and no game; it is left out.';

/** Whether there is nothing but the fields of a position. */
function isNoGame({ tags }: Movetext, whole: () => string): boolean {
  return tags.length === 0 && positionFields.test(whole());
}

const positionFields =
  /^\s*[1-8rnbqkp]+(?:\/[1-8rnbqkp]+){7}\s+[wb]\s+(?:-|[KQkq]+)\s+(?:-|[a-h][36])(?:\s|$)/i;

function uniqueTags({ tags }: Movetext) {
  const found = new Map<string, string>();
  for (const { name, value } of tags) if (!found.has(name)) found.set(name, value);
  return [...found].map(([name, value]) => ({ name, value }));
}

function startOf({ tags }: Movetext): Position | { reason: string; offset: number } {
  const variant = tags.find(({ name }) => name === 'Variant');
  if (variant !== undefined && isOtherVariant(variant.value)) {
    const reason = `The tag Variant says \`${variant.value}\`, which is another game than chess`;
    return { reason, offset: variant.span.start };
  }
  const tag = tags.find(({ name }) => name === 'FEN');
  if (tag === undefined) return initialPosition;
  const position = parseFen(tag.value);
  if (!isFenFault(position)) return position;
  return { reason: `The FEN is no position: ${position.reason}`, offset: tag.span.start };
}
