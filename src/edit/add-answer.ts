import { createLocator } from '../diagnostics/index.ts';
import type { ExerciseBlock, ExerciseLine } from '../model/index.ts';
import { movesText } from './move-text.ts';
import { endOfLine, startOfLine } from './node-text.ts';
import { EditRefusedError, type Edits, type NewMove, type WrittenChapter } from './types.ts';

/** Where an exercise lists moves: those to find, those that are good too, those that are not. */
export type AnswerKey = 'answer' | 'also' | 'wrong';

/**
 * Adds a line to an exercise, from its position on.
 * @param block the exercise's `key`.
 * @throws EditRefusedError
 */
export function addAnswer(
  { text, chapter }: WrittenChapter,
  block: string,
  key: AnswerKey,
  moves: readonly NewMove[],
): Edits {
  const exercise = chapter.blocks.find((each) => each.key === block);
  if (exercise?.kind !== 'exercise' || exercise.position === undefined) {
    throw new EditRefusedError(
      'The chapter has no such exercise any more',
      'load the page again, and play the moves once more',
    );
  }
  const line = movesText(exercise.position, moves, { gap: ' ', pieces: chapter.pieces });
  const [first] = moves;
  const has = first && linesOf(exercise).find((each) => each[1]?.move?.san === first.san);
  if (has !== undefined) {
    throw new EditRefusedError(
      `The exercise has ${first?.san ?? 'this move'} already`,
      'play another move, or change the line in the file',
    );
  }
  const pointAt = createLocator(text);
  const edit = addItem(text, exercise, key, line);
  const place = { file: chapter.file, start: pointAt(edit.start), end: pointAt(edit.end) };
  return [{ place, text: edit.text }];
}

function linesOf({ answer, also, wrong }: ExerciseBlock): readonly ExerciseLine[] {
  return [...answer, ...also, ...wrong];
}

interface TextEdit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * Adds an item to a list of the exercise's YAML: a new name, an item more, or a list in place of one text. What has
 * none of the common forms is refused: the reader would not know it again.
 */
function addItem(text: string, { place }: ExerciseBlock, key: AnswerKey, line: string): TextEdit {
  const newline = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
  const fence = startOfLine(text, place.start.offset);
  const prefix = text.slice(fence, place.start.offset).replace(/[^>\s]/g, ' ');
  const body = endOfLine(text, place.start.offset);
  const end = startOfLine(text, place.end.offset);
  const lead = newline + prefix;
  const content = text.slice(body, end);
  const named = new RegExp(`(?:\\r\\n|\\r|\\n)[ \\t>]*${key}:[ \\t]*`).exec(content);
  if (named === null) {
    const behind = body + content.replace(/\s+$/, '').length;
    return { start: behind, end: behind, text: `${lead}${key}: ${scalar(line)}` };
  }
  const value = body + named.index + named[0].length;
  const lineEnd = endOfLine(text, value);
  const given = text.slice(value, lineEnd);
  // The lines that belong to it: indented further, or items of its list.
  const more = /^(?:(?:\r\n|\r|\n)[ \t>]*(?:[ \t]|-[ \t])[^\r\n]*)*/.exec(text.slice(lineEnd, end));
  const last = lineEnd + (more?.[0] ?? '').replace(/\s+$/, '').length;
  if (given.trim() === '') {
    const item = /^(?:\r\n|\r|\n)([ \t>]*)-[ \t]/.exec(text.slice(lineEnd));
    if (item !== null) {
      return { start: last, end: last, text: `${newline}${item[1] ?? ''}- ${scalar(line)}` };
    }
  } else if (last === lineEnd && !/^[[{|>&*!#]/.test(given)) {
    const list = `${lead}  - ${given.trimEnd()}${lead}  - ${scalar(line)}`;
    return { start: value - (/[ \t]*$/.exec(named[0])?.[0].length ?? 0), end: lineEnd, text: list };
  }
  throw new EditRefusedError(
    `\`${key}\` is written here in a form that nothing can be added to by itself`,
    'write it as a list, a line for each, beginning with `- `',
  );
}

/** A text as a YAML scalar: plain where nothing in it means something to YAML. */
function scalar(text: string): string {
  const isPlain = /^[\p{L}\p{N}]/u.test(text) && !/: |:$| #|\t/.test(text);
  return isPlain ? text : `'${text.replaceAll("'", "''")}'`;
}
