import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import type { FoundPlacement } from '../../lookup/search/find-placement.ts';
import type { FoundPosition } from '../../lookup/search/find-position.ts';
import type { PositionSearch } from '../../lookup/search/search-positions.ts';
import { counted } from '../counted.ts';
import { element } from '../element.ts';
import { answerFault } from './answer-fault.ts';
import { answerMoves } from './answer-moves.ts';
import { positionCard } from './position-card.ts';
import { positionList } from './position-list.ts';
import type { SearchResult } from './search-result.ts';
import { where } from './where.ts';

/** What a search for a position found, in words. */
export function answerPosition(
  table: CourseTable,
  search: PositionSearch,
  words: SearchWords,
): SearchResult {
  switch (search.kind) {
    case 'empty':
      return { status: [words.emptyField], found: [] };
    case 'position':
      return answerFound(table, search, words);
    case 'placement':
      return answerPlacement(table, search, words);
    case 'moves':
      return answerMoves(table, search, words);
    case 'fen-fault':
    case 'unreadable':
      return answerFault(table, search, words);
  }
}

function answerFound(
  table: CourseTable,
  { exact, alike }: FoundPosition,
  words: SearchWords,
): SearchResult {
  const has =
    exact === undefined ? words.hasNot : fill(words.has, { where: where(table, exact, words) });
  const others = positionList(
    table,
    alike.map(({ position }) => position),
    words,
    (index, place) => {
      const { differs } = alike.find(({ position }) => position === index) ?? { differs: [] };
      const reasons = differs.map((name) => words.differs[name]).join(` ${words.and} `);
      return fill(words.but, { where: place, differs: reasons });
    },
  );
  const lead = exact === undefined ? words.alike : words.alikeToo;
  return {
    status: alike.length > 0 && exact === undefined ? [has, ' ', lead] : [has],
    found: [
      ...(exact === undefined ? [] : [positionCard(table, exact, words)]),
      ...(alike.length > 0 && exact !== undefined ? [element('p', {}, lead)] : []),
      ...(alike.length > 0 ? others : []),
    ],
  };
}

/** The positions that have the pieces of a board, those without others first. */
export function answerPlacement(
  table: CourseTable,
  { exact, holding }: FoundPlacement,
  words: SearchWords,
): SearchResult {
  const [only] = exact;
  const cards =
    exact.length === 1 && only !== undefined
      ? [positionCard(table, only, words)]
      : positionList(table, exact, words);
  const groups = [
    { lead: counted(words.exactly, exact.length), count: exact.length, list: cards },
    {
      lead: counted(words.holding, holding.length),
      count: holding.length,
      list: positionList(table, holding, words),
    },
  ].filter(({ count }) => count > 0);
  const [first, ...rest] = groups;
  if (first === undefined) return { status: [words.nowhere], found: [] };
  return {
    status: [first.lead],
    found: [...first.list, ...rest.flatMap(({ lead, list }) => [element('p', {}, lead), ...list])],
  };
}
