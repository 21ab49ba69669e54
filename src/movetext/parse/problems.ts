import type { MovetextProblem, Span } from '../types.ts';

type Kind = MovetextProblem['kind'];

function problem(kind: Kind, span: Span, message: string, hint: string): MovetextProblem {
  return { kind, span, message, hint };
}

/** At most so much of the author's text is repeated in a message. */
const longestQuote = 40;

function quote(written: string): string {
  const flat = written.replace(/\s+/gu, ' ');
  const units = Array.from(flat.slice(0, longestQuote + 1));
  if (flat.length <= longestQuote) return `“${flat}”`;
  return `“${units.slice(0, -1).join('')}…”`;
}

export function commentUnclosed(span: Span): MovetextProblem {
  return problem(
    'comment-unclosed',
    span,
    'This comment is opened here and never closed.',
    'Put } after its last word.',
  );
}

export function variationUnclosed(span: Span): MovetextProblem {
  return problem(
    'variation-unclosed',
    span,
    'This variation is opened here and never closed.',
    'Put ) after its last move.',
  );
}

export function variationUnopened(span: Span): MovetextProblem {
  return problem(
    'variation-unopened',
    span,
    'This ) closes a variation that was never opened.',
    'Put ( before the first move of the variation, or remove the ).',
  );
}

/** @param lost from the `(` to the `)`. */
export function variationWithoutMove(span: Span, lost: Span): MovetextProblem {
  const found = problem(
    'variation-without-move',
    span,
    'This variation stands before any move, so there is no move that it could replace.',
    'Put it after the move whose alternative it is: 1. e4 (1. d4).',
  );
  return { ...found, lost };
}

export function variationEmpty(span: Span): MovetextProblem {
  return problem(
    'variation-empty',
    span,
    'This variation has no move.',
    'Write its moves between ( and ), or remove it; words belong in braces.',
  );
}

export function numberWithoutMove(span: Span, written: string): MovetextProblem {
  return problem(
    'number-without-move',
    span,
    `No move follows the move number ${quote(written)}.`,
    'Write the move after it, or remove the number.',
  );
}

/** @param lost all that follows. */
export function textAfterResult(span: Span, result: string, lost: Span): MovetextProblem {
  const found = problem(
    'text-after-result',
    span,
    `The result ${result} ends the moves, but more text follows it; that text is left out.`,
    'Remove the result or what follows it; another game needs a block of its own.',
  );
  return { ...found, lost };
}

export function tagUnreadable(span: Span): MovetextProblem {
  return problem(
    'tag-unreadable',
    span,
    'This tag is not of the form [Name "value"].',
    'Put the value between two quotes on one line, and write \\" for a quote within it.',
  );
}

export function tagMisplaced(span: Span): MovetextProblem {
  return problem(
    'tag-misplaced',
    span,
    'This tag stands after the first move; it is left out.',
    'Move it above the moves; another game needs a block of its own.',
  );
}

export function glyphUnreadable(span: Span, written: string): MovetextProblem {
  if (written === '$') {
    return problem(
      'glyph-unreadable',
      span,
      'A $ stands here without a number.',
      'Write the number of the glyph right after it: $1 for a good move, $16 for ±.',
    );
  }
  if (written.startsWith('$')) {
    return problem(
      'glyph-unreadable',
      span,
      `There is no glyph ${quote(written)}: the numbers go from 0 to 255.`,
      'Write one of the numbers of the PGN standard, such as $1 for a good move or $16 for ±.',
    );
  }
  return problem(
    'glyph-unreadable',
    span,
    `${quote(written)} is no mark of a move.`,
    'Write one of ! ? !! ?? !? ?!',
  );
}

export function suffixRepeated(span: Span, written: string, first: string): MovetextProblem {
  return problem(
    'glyph-unreadable',
    span,
    `This move is marked ${quote(first)} already; ${quote(written)} is left out.`,
    'Keep one of the two.',
  );
}

export function glyphMisplaced(span: Span, written: string): MovetextProblem {
  return problem(
    'glyph-misplaced',
    span,
    `${quote(written)} stands before a move, so it belongs to none.`,
    'Put it right after the move that it marks.',
  );
}

/** What is no part of movetext; the message depends on what it looks like. */
export function textUnreadable(span: Span, written: string): MovetextProblem {
  const [message, hint] = explainText(written);
  return problem('text-unreadable', span, message, hint);
}

function explainText(written: string): [message: string, hint: string] {
  if (written.includes('}')) {
    return [
      'This } closes no comment: the first } after a { ends it, and braces do not nest.',
      'Remove the }, or use round brackets within the comment.',
    ];
  }
  if (/^[.…]+$/u.test(written)) {
    return [
      'Periods stand here without a move number.',
      'Write the number before them, such as 3... for a move of Black, or remove them.',
    ];
  }
  if (/^[+#†‡]+$/u.test(written)) {
    return [
      `The sign ${quote(written)} stands apart from its move.`,
      'Put + or # right after the move, before any ! or ?.',
    ];
  }
  const number = /^[\dlIO]{1,3}(?=\.)/.exec(written)?.[0];
  if (number !== undefined && /[lIO]/.test(number)) {
    const meant = number.replace(/[lI]/g, '1').replaceAll('O', '0');
    return [
      `${quote(written)} has a letter where a digit of the move number should stand.`,
      `Write ${meant} with digits.`,
    ];
  }
  if (/^=?\p{Lu}$/u.test(written)) {
    return [
      `${quote(written)} stands apart from its move.`,
      'A move is written in one word: Nf3, e8=Q.',
    ];
  }
  if (/^e\.?\s?p\.?$/u.test(written)) {
    return [
      `${quote(written)} stands apart from the capture that it belongs to.`,
      'Remove it: the en passant capture is written like any other, such as exd6.',
    ];
  }
  if (/^,+$/u.test(written)) {
    return ['A comma stands between the moves.', 'Part the moves by a space and nothing else.'];
  }
  if (written.startsWith('%')) {
    return [
      'A % stands here that is not at the start of a line.',
      'Remove it; only a line that begins with % is skipped.',
    ];
  }
  if (written.startsWith('[')) {
    return [
      `${quote(written)} is neither a move nor a tag.`,
      'Variations are put between ( and ), comments between { and }.',
    ];
  }
  return [`${quote(written)} cannot be a move.`, 'Put words into a comment, between { and }.'];
}
