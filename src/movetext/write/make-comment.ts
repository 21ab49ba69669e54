import type { PlainComment } from '../plain.ts';
import type { LineWriter } from './line-writer.ts';

/**
 * A space at which a comment may be broken: a single one, outside embedded commands `[%…]`, and not before
 * what opens a fence of code, or looks like a tag, since many programs take any line that begins with one for the next game's first.
 */
const breakable = /\[%[^[\]]*\]|(?<=\S) (?![\s%]|`{3}|~{3}|\[\w+ ")/gu;

/**
 * Writes a comment in its own form where its text allows: braces cannot hold a `}`, and a `;`
 * comment no line break. Then the other form is taken, and for a text with both one `;` comment a
 * line, so that no character is lost. Comments in braces are broken at single spaces; `;` comments
 * keep their line, however long.
 */
export function makeComment(comment: PlainComment, writer: LineWriter): void {
  const fitsBraces = !comment.text.includes('}');
  const lines = comment.text.split(/\r\n?|\n/);
  if (fitsBraces && (comment.form === 'brace' || lines.length > 1)) {
    const text = `{${comment.text}}`;
    if (unbreakable.test(text)) for (const piece of splitAtSpaces(text)) writer.word(piece);
    else writer.words(text);
    return;
  }
  for (const line of lines) {
    writer.word(`;${line}`);
    writer.endLine();
  }
}

/** What keeps a single space from being breakable somewhere in a text, or breaks a line. */
const unbreakable = /\s\s|[[`~%\r\n]/;

function splitAtSpaces(text: string): string[] {
  const pieces: string[] = [];
  let start = 0;
  for (const match of text.matchAll(breakable)) {
    if (match[0] !== ' ') continue;
    pieces.push(text.slice(start, match.index));
    start = match.index + 1;
  }
  pieces.push(text.slice(start));
  return pieces;
}
