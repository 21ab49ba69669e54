import { numberedSan, sanIn } from '../../chess/letters.ts';
import type { PlayedMove } from '../../chess/types.ts';
import { fill } from '../../contract/sentence.ts';
import type { ChapterWords, FreeWords } from '../../contract/words.ts';
import { element, make, makeButton } from '../element.ts';
import type { OwnLine } from './own-line.ts';
import { nameOf } from './say-answer.ts';

export interface LineEvents {
  readonly onGo: (at: number) => void;
  readonly onLeave: () => void;
  readonly onAgain: () => void;
}

/** Shows the reader's own line, set apart from the author's. */
export interface LineView {
  readonly element: HTMLElement;
  /** `after` says where it leaves the text. */
  show(line: OwnLine, after: string): void;
  /** The line is left; it can be taken up again. */
  offer(line: OwnLine | undefined): void;
}

export function makeLineView(
  words: FreeWords,
  page: ChapterWords,
  { onGo, onLeave, onAgain }: LineEvents,
): LineView {
  const view = make('section', 'own-line');
  view.hidden = true;
  const title = element('h2', { class: 'own-title', id: 'own-line-title' }, words.line);
  view.setAttribute('aria-labelledby', title.id);
  const leaves = make('p', 'own-leaves');
  const moves = make('p', 'own-moves');
  const back = makeButton(words.takeBack, () => onGo(shown - 1), 'own-back');
  const leave = makeButton(words.toText, onLeave);
  view.append(title, leaves, moves, make('p', 'own-ways', back, leave));
  const again = makeButton('', onAgain, 'own-again');
  again.hidden = true;
  let shown = 0;
  return {
    element: make('div', '', view, again),
    show(line, after) {
      shown = line.at;
      view.hidden = false;
      again.hidden = true;
      leaves.textContent = fill(words.leaves, { after });
      moves.replaceChildren(...moveButtons(line, page, onGo));
    },
    offer(line) {
      view.hidden = true;
      again.hidden = line === undefined;
      if (line !== undefined) again.textContent = fill(words.again, { moves: textOf(line, page) });
    },
  };
}

function moveButtons(
  { moves, at }: OwnLine,
  page: ChapterWords,
  onGo: (at: number) => void,
): (Node | string)[] {
  return namesOf(moves, page).flatMap((text, index) => {
    const button = makeButton(text, () => onGo(index + 1), 'own-move');
    const move = moves[index];
    // Among other buttons a move of Black's needs its number.
    if (move !== undefined) button.setAttribute('aria-label', nameOf(move, page));
    if (index + 1 === at) button.setAttribute('aria-current', 'true');
    return index === 0 ? [button] : [' ', button];
  });
}

function textOf({ moves }: OwnLine, page: ChapterWords): string {
  return namesOf(moves, page).join(' ');
}

function namesOf(moves: readonly PlayedMove[], { letters }: ChapterWords): string[] {
  return moves.map((move, index) => {
    const bare = index > 0 && move.color === 'black';
    return bare ? sanIn(letters, move.san) : numberedSan(move, letters);
  });
}
