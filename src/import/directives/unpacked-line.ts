import {
  type CommentPart,
  type PlainComment,
  type PlainLine,
  type PlainVariation,
  partsOfComment,
  unpackText,
} from '../../movetext/index.ts';
import { commentMarkdown } from '../markdown-text.ts';
import type { DraftComment, DraftLine, DraftMove } from '../types.ts';

/** Whether comments hold packed source or words alone. */
export type CommentForm = 'packed' | 'plain';

/** A line with its comments as an author writes them, each where it stood among the variations. */
export function unpackedLine(line: DraftLine, form: CommentForm): PlainLine {
  const before = line.before.flatMap((comment) => partsOf(comment, form)).map(commentOf(form));
  const moves = line.moves.map(({ san, glyphs, after }) => ({
    san: { text: san },
    glyphs,
    after: itemsOf(after, form),
  }));
  return { before, moves };
}

function itemsOf(after: DraftMove['after'], form: CommentForm): (PlainComment | PlainVariation)[] {
  const variations: PlainVariation[] = [];
  const comments: { readonly behind: number; readonly comment: PlainComment }[] = [];
  const say = (parts: readonly CommentPart[]) => {
    for (const part of parts) {
      const behind = part.name === 'comment' && part.count > 0 ? part.count : variations.length;
      comments.push({ behind, comment: commentOf(form)(part) });
    }
  };
  for (const item of after) {
    if (item.type === 'comment') say(partsOf(item, form));
    else if (item.line.moves.length > 0) {
      variations.push({ type: 'variation', line: unpackedLine(item.line, form) });
      // Of a variation whose first move cannot be played only its words are left.
    } else for (const comment of item.line.before) say(partsOf(comment, form));
  }
  const at = (count: number, isLast: boolean) =>
    comments
      .filter(({ behind }) => (isLast ? behind >= count : behind === count))
      .map(({ comment }) => comment);
  return [
    ...variations.flatMap((variation, index) => [...at(index, false), variation]),
    ...at(variations.length, true),
  ];
}

function partsOf({ text }: DraftComment, form: CommentForm): CommentPart[] {
  return form === 'packed' ? partsOfComment(text) : [{ count: 0, text }];
}

export function commentOf(form: CommentForm): (part: CommentPart) => PlainComment {
  return ({ text }) => ({
    type: 'comment',
    form: 'brace',
    text: form === 'packed' ? unpackText(text) : commentMarkdown(text),
  });
}
