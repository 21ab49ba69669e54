import type { NewMove } from '../../edit/index.ts';
import { type Course, nodeAt } from '../../model/index.ts';
import { partsOfComment, unpackText } from '../../movetext/index.ts';
import { isPiece } from '../directives/index.ts';
import { tagValue } from '../directives/tag-value.ts';
import { codeMarkdown, commentMarkdown } from '../markdown-text.ts';
import type { DraftComment, DraftGame } from '../types.ts';

/** A comment as words, and as it is written into a chapter. */
export interface Words {
  readonly text: string;
  readonly written: Pick<NewMove, 'comment' | 'source'>;
}

/** The comments that a comment of a game is; that of our own export keeps its directives. */
export function wordsOf(game: DraftGame, { text, isUnread }: DraftComment): Words[] {
  if (isUnread) return [{ text, written: { source: codeMarkdown(text) } }];
  if (!isPiece(game) || tagValue(game.tags, 'Comments') === 'plain') {
    return [{ text, written: { comment: commentMarkdown(text) } }];
  }
  return partsOfComment(text)
    .filter((part) => part.name !== 'text' && part.text !== '')
    .map((part) => unpackText(part.text))
    .map((source) => ({ text: source, written: { source } }));
}

/** Whether the course says all these words at a position already. */
export function hasWords(course: Course, key: string, text: string): boolean {
  const said = (course.graph[key]?.at ?? [])
    .flatMap((ref) => nodeAt(course, ref)?.after ?? [])
    .map((item) => (item.type === 'comment' ? JSON.stringify(item.content) : ''))
    .join(' ');
  const words = text.match(/[\p{L}\p{N}]{2,}/gu) ?? [];
  return words.every((word) => said.includes(word));
}
