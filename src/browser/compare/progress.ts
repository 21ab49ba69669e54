import { make, makeButton } from '../element.ts';
import type { Speech } from './compare-words.ts';

export interface Progress {
  readonly element: HTMLElement;
  /** Shows it, for so many bytes. */
  readonly start: (size: number) => void;
  readonly show: (bytes: number, games: number) => void;
  readonly end: () => void;
}

export function makeProgress({ words, counted }: Speech, onStop: () => void): Progress {
  const bar = make('progress', '');
  bar.setAttribute('aria-label', words.progress);
  const said = make('span', '');
  const stop = makeButton(words.stop, onStop);
  const element = make('div', 'compare-progress', [bar, said, stop]);
  element.hidden = true;
  return {
    element,
    start(size) {
      bar.max = Math.max(1, size);
      bar.value = 0;
      said.textContent = counted(words.read, 0);
      element.hidden = false;
      stop.focus({ preventScroll: true });
    },
    show(bytes, games) {
      bar.value = bytes;
      said.textContent = counted(words.read, games);
    },
    end() {
      element.hidden = true;
    },
  };
}
