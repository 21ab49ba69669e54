import { numberedSan } from '../../../chess/letters.ts';
import { listMoves, playSan } from '../../../chess/rules.ts';
import type { PlayedMove } from '../../../chess/types.ts';
import { dataOf } from '../../../contract/attributes.ts';
import type { LookAnswer, WriteAnswer } from '../../../contract/desk-write.ts';
import { readPositionAddress } from '../../../contract/position-address.ts';
import { fill } from '../../../contract/sentence.ts';
import type { BoardMove } from '../../board/board-state.ts';
import { wordsOf } from '../../board/board-words.ts';
import { element, make, makeButton } from '../../element.ts';
import { describe } from '../../words.ts';
import { askServer, Refused } from '../ask-server.ts';
import { words } from './words.ts';

type List = 'answer' | 'also' | 'wrong';

/** Offers each new move that is tried in an exercise to be written into it. */
export function writeExercises(page: { readonly version: number; readonly chapter: string }): void {
  // Before the exercise itself answers the move, while its board still shows where it was made.
  document.addEventListener(
    'course-board-move',
    (event) => {
      const { target } = event;
      const section = target instanceof Element ? target.closest<HTMLElement>('.exercise') : null;
      if (section === null) return;
      const move = firstMove(section, (event as CustomEvent<BoardMove>).detail);
      section.querySelector('.write-sheet')?.remove();
      if (move !== undefined) void offer(section, move, page);
    },
    { capture: true },
  );
}

/** The move, where it is made in the position that the exercise asks about. */
function firstMove(section: HTMLElement, made: BoardMove): PlayedMove | undefined {
  const key = positionOf(section);
  const [placement = ''] = key?.split(' ') ?? [];
  const shown = section.querySelector('svg.board')?.getAttribute('aria-label') ?? '';
  if (key === undefined || !shown.includes(describe(placement, wordsOf(section, 'chapter')))) {
    return undefined;
  }
  const position = { key, fen: `${key} 0 1` };
  const named = listMoves(position).find(
    ({ from, to, promotion }) =>
      from === made.from && to === made.to && promotion === made.promotion,
  );
  return named && playSan(position, named.san);
}

function positionOf(section: HTMLElement): string | undefined {
  const { p = '' } = dataOf('exercise', section);
  return p.includes(' ') ? p : readPositionAddress(p)?.key;
}

async function offer(
  section: HTMLElement,
  move: PlayedMove,
  page: { readonly version: number; readonly chapter: string },
): Promise<void> {
  const asked = { ...page, at: section.id };
  const status = make('p', 'write-status');
  status.setAttribute('role', 'status');
  let seen: LookAnswer;
  try {
    seen = (await askServer('look', { ...asked, moves: [] })) as LookAnswer;
  } catch {
    return;
  }
  if (seen.next.some((known) => known.replace(/^\d+\.+/, '') === move.san)) return;
  const { letters } = wordsOf(section, 'chapter');
  const name = numberedSan({ ...move, number: seen.number }, letters);
  const choice = element('fieldset', { class: 'write-as' });
  choice.append(make('legend', '', fill(words.as, { move: name })));
  let list: List = 'wrong';
  for (const each of ['answer', 'also', 'wrong'] as const) {
    const input = element('input', { type: 'radio', name: `write-${section.id}`, value: each });
    input.checked = each === list;
    input.addEventListener('change', () => {
      list = each;
    });
    choice.append(make('label', '', input, ` ${words.answers[each]}`));
  }
  const comment = element('textarea', { rows: '2', id: `write-${section.id}` });
  const write = makeButton(
    words.write,
    async () => {
      const moves = [{ san: move.san, comment: comment.value }];
      const change = { kind: 'answer', list, moves };
      try {
        const answer = await askServer('write', { ...asked, text: seen.text, change });
        const { file, line } = answer as WriteAnswer;
        status.textContent = fill(words.written, { file, line: String(line) });
      } catch (error) {
        if (!(error instanceof Refused)) throw error;
        status.textContent = error.message;
      }
    },
    'write-now',
  );
  section.append(
    element(
      'section',
      { class: 'write-sheet', 'aria-label': words.section },
      make('p', 'write-title', fill(words.exercise, { move: name })),
      make('p', 'write-where', fill(words.where, { file: seen.file, line: String(seen.line) })),
      choice,
      make(
        'div',
        'write-comment',
        element('label', { for: comment.id }, fill(words.say, { move: name })),
        comment,
      ),
      make('p', 'write-ways', write),
      status,
    ),
  );
}
