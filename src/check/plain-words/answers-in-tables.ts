/** Tables of replies and answers, `9.b3 | 9...Ne4`: whether the course has that answer to that reply. */
import type { Position } from '../../chess/index.ts';
import { type Mention, numberSource, readMention, sanSource } from './mentions.ts';
import { mostAsked, playAll, positionsAt } from './moves-in-words.ts';
import type { Passage } from './passage.ts';
import type { WordsScope } from './words-scope.ts';

export interface WrongAnswer {
  /** Offsets of the answer in the passage's text. */
  readonly start: number;
  readonly end: number;
  readonly reply: string;
  readonly answer: string;
  /** The moves that the course plays there. */
  readonly there: readonly string[];
}

/** What `plainText` puts behind each cell. */
const cellEnd = '|\n';

export function wrongAnswers(
  passage: Passage,
  { chapter, course, vocabulary }: WordsScope,
): WrongAnswer[] {
  const wrong: WrongAnswer[] = [];
  if (passage.kind !== 'row') return wrong;
  const cell = new RegExp(`^(\\s*)(${numberSource}${sanSource(vocabulary)})[!?]{0,2}\\s*$`, 'u');
  let before: Mention | undefined;
  let start = 0;
  for (const text of passage.text.text.split(cellEnd)) {
    const [, blanks = '', written] = cell.exec(text) ?? [];
    const mention = written === undefined ? undefined : readMention(written, vocabulary);
    if (before && mention && written !== undefined && follows(before, mention)) {
      const from = positionsAt(chapter, before);
      const after = from.length > mostAsked ? [] : playAll(from, before.spellings);
      const there = after.flatMap(({ key }) => course.ask('covered', key));
      const known = keysOf(playAll(after, there));
      const isKnown = playAll(after, mention.spellings).some(({ key }) => known.has(key));
      if (there.length > 0 && !isKnown) {
        const at = start + blanks.length;
        const names = { reply: before.name, answer: mention.name };
        wrong.push({ start: at, end: at + written.length, ...names, there: [...new Set(there)] });
      }
    }
    before = mention;
    start += text.length + cellEnd.length;
  }
  return wrong;
}

function follows(one: Mention, next: Mention): boolean {
  return one.color === 'white'
    ? next.color === 'black' && next.number === one.number
    : next.color === 'white' && next.number === one.number + 1;
}

function keysOf(positions: readonly Position[]): ReadonlySet<string> {
  return new Set(positions.map(({ key }) => key));
}
