import { bodyTexts, type ExerciseBlock } from '../../../model/index.ts';
import { type PlainLine, packText, parseMovetext, partCommand } from '../../../movetext/index.ts';
import type { BlockGame, WrittenBlock } from './block-game.ts';
import { brace, packedLine } from './packed-line.ts';

const lists = ['answer', 'also', 'wrong'] as const;

/**
 * An exercise as a game that starts at its question: question and hints first, its answer as the main line,
 * further answers and what is good or wrong as variations on it. Undefined where it has moves of other forms.
 */
export function exerciseLine(
  block: ExerciseBlock,
  { attributes, content }: WrittenBlock,
): BlockGame | undefined {
  const { position } = block;
  if (position === undefined) return undefined;
  const texts = bodyTexts(content);
  const lines: PlainLine[] = [];
  for (const name of lists) {
    for (const text of texts.get(name) ?? []) {
      const { line, problems, tags } = parseMovetext(text);
      const isFirst = lines.length === 0;
      const packed = packedLine(line, position, isFirst ? '' : partCommand(name));
      const isPlain = problems.length === 0 && tags.length === 0 && line.result === undefined;
      if (!isPlain || packed === undefined || packed.moves.length === 0) return undefined;
      lines.push(packed);
    }
  }
  const [main, ...others] = lines;
  const [first, ...rest] = main?.moves ?? [];
  if (!main || !first) return undefined;
  const ask = (texts.get('ask') ?? []).map(
    (text) => `${partCommand('ask')} ${packText(text.trim())}`,
  );
  const hints = (texts.get('hint') ?? []).map(
    (text) => `${partCommand('hint')} ${packText(text.trim())}`,
  );
  const own = main.before.map(({ text }) => `${partCommand('block')} ${text}`);
  const variations = others.map((line) => ({ type: 'variation' as const, line }));
  const [before] = texts.get('before') ?? [];
  return {
    kind: 'exercise',
    attributes: before === undefined ? attributes : `${attributes} before="${before}"`.trim(),
    position,
    line: {
      before: brace([...ask, ...hints, ...own].join(' ')),
      moves: [{ ...first, after: [...first.after, ...variations] }, ...rest],
    },
  };
}
