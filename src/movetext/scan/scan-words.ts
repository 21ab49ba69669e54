import { isBlank, isLineBreak, isWordCharacter } from './characters.ts';

/** Words end at a space or bracket; a run of other characters also where a word may begin. */
export function wordsEnd(text: string, start: number, limit: number): number {
  const isWord = isWordCharacter(text.charCodeAt(start));
  let end = start + 1;
  while (end < limit) {
    const code = text.charCodeAt(end);
    if (isSpaceOrBracket(code)) break;
    if (!isWord && (isWordCharacter(code) || code === 36 || code === 42 || code === 91)) break;
    end++;
  }
  return end;
}

export function isSpace(code: number): boolean {
  return isBlank(code) || isLineBreak(code);
}

export function isSpaceOrBracket(code: number): boolean {
  return isSpace(code) || code === 40 || code === 41 || code === 59 || code === 123 || code === 125;
}
