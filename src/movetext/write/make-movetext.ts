import { glyphSign, isAssessment, isMoveSuffix } from '../glyphs.ts';
import type { PlainLine, PlainMove, PlainMovetext, PlainTag } from '../plain.ts';
import { createLineWriter, type LineWriter } from './line-writer.ts';
import { makeComment } from './make-comment.ts';

export interface MakeMovetextOptions {
  /** The longest line, in UTF-16 units; default 79 (PGN standard, 8.2.1). */
  readonly width?: number;
  /** The number of the first move, from 1. */
  readonly number?: number;
  /** The side that makes the first move. */
  readonly color?: 'white' | 'black';
  /** Whether glyphs are signs where these are read as the same again, as authors write them: `!`, `⩲`. */
  readonly signs?: boolean;
}

/** A line that is being written, and how far. */
interface Task {
  readonly line: PlainLine;
  /** The next move, and the next of the things after the move before it. */
  move: number;
  after: number;
  /** Half-moves counted so that half of it, rounded down, is the move number, and an odd one is Black's. */
  ply: number;
  /** Whether the next move shows its number even if it is Black's. */
  interrupted: boolean;
  readonly signs: boolean;
}

/**
 * Writes movetext in the PGN standard's export format (8.2), a line break at its end: the inverse
 * of `parseMovetext`, which reads back the same tags, moves, glyphs, comments, variations and
 * result; a line break may then stand for a space within a comment, and numbers are regular.
 * Tags keep their order, moves their spelling; glyphs are written `$n`. With no result, none is
 * written. What a comment may hold is told at `makeComment`.
 *
 * Numbering starts as the options say, else as the FEN tag does, else at the written number of
 * the first move, else at 1 for White.
 */
export function makeMovetext(movetext: PlainMovetext, options: MakeMovetextOptions = {}): string {
  const tags = movetext.tags.map(makeTag).join('');
  const writer = createLineWriter(options.width ?? 79);
  writeLines(movetext.line, firstPly(movetext, options), writer, options.signs === true);
  const moves = writer.finish();
  return tags !== '' && moves !== '' ? `${tags}\n${moves}` : tags + moves;
}

function makeTag({ name, value }: PlainTag): string {
  const escaped = value.replace(/["\\]/g, '\\$&').replace(/[\r\n]+/g, ' ');
  return `[${name} "${escaped}"]\n`;
}

function firstPly(movetext: PlainMovetext, options: MakeMovetextOptions): number {
  const fields = movetext.tags
    .find((tag) => tag.name === 'FEN')
    ?.value.trim()
    .split(/\s+/);
  const written = movetext.line.moves[0]?.number;
  const told = fields
    ? { number: Number(fields[5] ?? 1), isBlack: fields[1] === 'b' }
    : { number: written?.value ?? 1, isBlack: (written?.dots ?? 0) > 1 };
  const number = options.number ?? told.number;
  const isBlack = options.color === undefined ? told.isBlack : options.color === 'black';
  const isUsable = number >= 1 && Number.isSafeInteger(2 * number);
  return 2 * (isUsable ? number : 1) + (isBlack ? 1 : 0);
}

/** Variations wait on a stack of our own: their depth is not bounded by that of the runtime. */
function writeLines(line: PlainLine, ply: number, writer: LineWriter, signs: boolean): void {
  const stack = [beginLine(line, ply, writer, signs)];
  for (let task = stack.at(-1); task !== undefined; task = stack.at(-1)) {
    const item = task.line.moves[task.move - 1]?.after[task.after];
    if (item?.type === 'comment') {
      task.after++;
      task.interrupted = true;
      makeComment(item, writer);
    } else if (item?.type === 'variation') {
      task.after++;
      task.interrupted = true;
      // Empty parentheses are no movetext; such a line has nothing but comments.
      if (item.line.moves.length > 0) writer.prefix('(');
      const variation = beginLine(item.line, task.ply - 1, writer, signs);
      if (item.line.moves.length > 0) stack.push(variation);
    } else if (task.move < task.line.moves.length) {
      const move = task.line.moves[task.move];
      if (move !== undefined) writeMove(move, task, writer);
      task.move++;
      task.after = 0;
    } else {
      if (task.line.result !== undefined) writer.word(task.line.result.text);
      stack.pop();
      if (stack.length > 0) writer.suffix(')');
    }
  }
}

function beginLine(line: PlainLine, ply: number, writer: LineWriter, signs: boolean): Task {
  for (const comment of line.before) makeComment(comment, writer);
  return { line, move: 0, after: 0, ply, interrupted: true, signs };
}

function writeMove(move: PlainMove, task: Task, writer: LineWriter): void {
  const isBlack = task.ply % 2 === 1;
  const number = Math.floor(task.ply / 2);
  if (!isBlack) writer.word(`${number}.`);
  else if (task.interrupted) writer.word(`${number}...`);
  writer.word(move.san.text);
  for (const { nag } of move.glyphs) {
    if (task.signs && isMoveSuffix(nag)) writer.suffix(glyphSign(nag) ?? '');
    else writer.word(task.signs ? signOf(nag) : `$${nag}`);
  }
  task.ply++;
  task.interrupted = false;
}

/** One sign serves several numbers, and is read as the first of them. */
function signOf(nag: number): string {
  const isFirst = isAssessment(nag) && ![11, 12, 20, 21].includes(nag);
  return (isFirst ? glyphSign(nag) : undefined) ?? `$${nag}`;
}
