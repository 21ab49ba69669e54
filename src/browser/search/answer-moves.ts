import { numberedSan, sanIn } from '../../chess/letters.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import type { FollowedMoves } from '../../lookup/search/follow-moves.ts';
import { element } from '../element.ts';
import { positionCard } from './position-card.ts';
import type { SearchResult } from './search-result.ts';
import { where } from './where.ts';

type Played = FollowedMoves['played'][number];

/** How far the course has some moves, and how it goes on from there. */
export function answerMoves(
  table: CourseTable,
  { played, known, knownPlies, stopped }: FollowedMoves,
  words: SearchWords,
): SearchResult {
  const last = played.at(-1);
  const told: (Node | string)[] = [];
  if (stopped !== undefined) told.push(...cannotPlay(stopped, last, words), ' ');
  if (known === undefined || knownPlies === undefined) {
    const next = played[0];
    told.push(
      next ? fill(words.knowsNot, { next: numberedSan(next, words.letters) }) : words.hasNot,
    );
    return { status: told, found: [] };
  }
  const next = played[knownPlies];
  const move = played[knownPlies - 1];
  if (next === undefined) told.push(fill(words.has, { where: where(table, known, words) }));
  else if (move === undefined) {
    told.push(fill(words.knowsNot, { next: numberedSan(next, words.letters) }));
  } else {
    const gaps = { move: numberedSan(move, words.letters), next: numberedSan(next, words.letters) };
    told.push(fill(words.knowsUpTo, gaps));
  }
  return { status: told, found: [positionCard(table, known, words)] };
}

function cannotPlay(
  { written, fault }: NonNullable<FollowedMoves['stopped']>,
  last: Played | undefined,
  words: SearchWords,
): (Node | string)[] {
  const gaps = { move: written, last: last === undefined ? '' : numberedSan(last, words.letters) };
  const told: (Node | string)[] = [
    fill(last === undefined ? words.cannotPlay : words.cannotPlayAfter, gaps),
    ' ',
    ...reasonIn(fault.reason, words),
  ];
  if (fault.meant.length > 0) {
    const moves = fault.meant.map((san) => sanIn(words.letters, san)).join(` ${words.or} `);
    told.push(' ', fill(words.meant, { moves }));
  }
  return told;
}

/** The chess room gives its reasons in English: within another language they are marked as such. */
export function reasonIn(reason: string, words: SearchWords): (Node | string)[] {
  const [before = '', after = ''] = words.reason.split('{reason}');
  return [before, element('span', { lang: words.reasonLanguage }, reason), after];
}
