import { isMoveFault, type Position, playMove } from '../../../chess/index.ts';
import {
  type Movetext,
  type PlainComment,
  type PlainLine,
  type PlainMove,
  type PlainVariation,
  packText,
  partCommand,
} from '../../../movetext/index.ts';

/** A line in canonical SAN, with its comments packed; undefined where it cannot be played. */
export function packedLine(
  line: Movetext['line'],
  start: Position,
  marker = '',
): PlainLine | undefined {
  const moves: PlainMove[] = [];
  let position = start;
  for (const { san, glyphs, after } of line.moves) {
    const played = playMove(position, san.text);
    if (isMoveFault(played)) return undefined;
    const variations: PlainVariation[] = [];
    const comments: string[] = [];
    for (const item of after) {
      if (item.type === 'comment') {
        const place = partCommand('comment', variations.length);
        const isFirst = comments.length === 0 && variations.length === 0;
        comments.push(`${isFirst ? '' : `${place} `}${packComment(item.text)}`);
        continue;
      }
      const inner = packedLine(item.line, position);
      if (inner === undefined) return undefined;
      variations.push({ type: 'variation', line: inner });
    }
    moves.push({
      san: { text: played.san },
      glyphs: glyphs.map(({ nag }) => ({ nag })),
      after: [...brace(comments.join(' ')), ...variations],
    });
    position = played.after;
  }
  const before = line.before
    .map(({ text }) => packComment(text))
    .join(` ${partCommand('comment')} `);
  return { before: brace([marker, before].filter((part) => part !== '').join(' ')), moves };
}

/** A line break in a comment of moves is a space, but behind a backslash or two spaces. */
function packComment(text: string): string {
  return packText(text.trim().replace(/(?<!\\| {2})\r?\n[ \t]*/g, ' '));
}

/** A comment of these words, if there are any. */
export function brace(text: string): PlainComment[] {
  return text === '' ? [] : [{ type: 'comment', form: 'brace', text }];
}
