import { type CommentPart, makeMovetext } from '../../movetext/index.ts';
import type { DraftGame } from '../types.ts';
import { joinedTags, tagValue } from './tag-value.ts';
import { commentOf, unpackedLine } from './unpacked-line.ts';

/** The content of a block of moves, or of a game. */
export function movesBody(
  { tags, line, result }: DraftGame,
  before: readonly CommentPart[],
): string {
  const form = tagValue(tags, 'Comments') === 'plain' ? 'plain' : 'packed';
  const own = new Set(joinedTags(tags, 'OwnTags').split(' '));
  const [first] = line.moves;
  const comments = before.filter(({ text }) => text !== '').map(commentOf(form));
  const ended = result !== undefined && own.has('result') ? { result: { text: result } } : {};
  return makeMovetext(
    {
      tags: tags.filter(({ name }) => own.has(name)),
      line: { ...unpackedLine(line, form), before: comments, ...ended },
    },
    { ...(first && { number: first.number, color: first.color }), signs: true },
  );
}
