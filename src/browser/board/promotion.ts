import type { Color, PieceKind } from '../../chess/types.ts';
import type { BoardWords } from '../../contract/words.ts';
import { pieceId } from '../../draw/piece-paths.ts';
import type { BoardMove } from './board-state.ts';

export interface Promotion {
  readonly element: HTMLElement;
  /** Offers the pieces of `moves`, which differ by nothing else. */
  ask(color: Color, moves: readonly BoardMove[], onChosen: (move: BoardMove) => void): void;
  clear(): void;
}

const kinds: readonly PieceKind[] = ['queen', 'rook', 'bishop', 'knight'];

export function askPromotion(words: BoardWords): Promotion {
  const element = document.createElement('div');
  element.className = 'promotion';
  element.setAttribute('role', 'group');
  element.setAttribute('aria-label', words.promote);
  element.hidden = true;
  const clear = () => {
    element.hidden = true;
    element.replaceChildren();
  };
  element.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') clear();
  });
  return {
    element,
    clear,
    ask(color, moves, onChosen) {
      const choices = kinds.flatMap((kind) => {
        const move = moves.find(({ promotion }) => promotion === kind);
        if (move === undefined) return [];
        const choice = document.createElement('button');
        choice.type = 'button';
        choice.setAttribute('aria-label', words.pieces[kind]);
        choice.title = words.pieces[kind];
        choice.innerHTML = `<svg viewBox="0 0 10 10" aria-hidden="true"><use href="#${pieceId({ color, kind })}"/></svg>`;
        choice.addEventListener('click', () => {
          clear();
          onChosen(move);
        });
        return [choice];
      });
      element.replaceChildren(`${words.promote} `, ...choices);
      element.hidden = false;
      choices[0]?.focus();
    },
  };
}
