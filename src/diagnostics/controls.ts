/**
 * Characters that no text for people has: control characters but tab and line breaks (Unicode, Cc),
 * halves of surrogate pairs, and noncharacters. Terminals act on some; HTML calls them errors; XML,
 * and so an e-book or a feed, may not hold them at all (XML 1.0, 2.2).
 */
export const unprintable = /[^\P{Cc}\t\n\r]|\p{Surrogate}|\p{Noncharacter_Code_Point}/gu;

/** The text with spaces in their place, so that all else stays where it stands. */
export function withoutControls(text: string): string {
  return text.replace(unprintable, (found) => ' '.repeat(found.length));
}

/** A sentence on one line, which a terminal only shows. */
export function onOneLine(text: string): string {
  return withoutControls(text).replace(/\s*[\n\r\t]\s*/g, ' ');
}
