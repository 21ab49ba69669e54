import { initialPosition } from '../../chess/initial.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import { firstMoves } from '../../lookup/first-moves.ts';
import type { PositionSearch } from '../../lookup/search/search-positions.ts';
import { element } from '../element.ts';
import { reasonIn } from './answer-moves.ts';
import type { SearchResult } from './search-result.ts';

type Fault = Extract<PositionSearch, { kind: 'fen-fault' | 'unreadable' }>;

/** Why a text names no position, where it goes wrong, and what would. */
export function answerFault(table: CourseTable, search: Fault, words: SearchWords): SearchResult {
  if (search.kind === 'unreadable') {
    const shown = search.words.length > 60 ? `${search.words.slice(0, 60)} …` : search.words;
    const example = firstMoves(table, words.letters) || initialPosition.fen;
    const sentence = fill(words.unreadable, { words: shown, example });
    return { status: [sentence], found: [] };
  }
  const { text, fault } = search;
  const [before = '', after = ''] = words.fenHelp.split('{example}');
  return {
    status: [words.noFen, ' ', ...reasonIn(fault.reason, words)],
    found: [
      element(
        'p',
        {},
        `${words.fenHere} `,
        element(
          'code',
          {},
          text.slice(0, fault.offset),
          element('mark', {}, text.slice(fault.offset).split(/[\s/]/, 1)[0] || '…'),
        ),
      ),
      element('p', {}, before, element('code', {}, initialPosition.fen), after),
    ],
  };
}
