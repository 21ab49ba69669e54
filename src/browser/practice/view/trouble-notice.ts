import type { PracticeWords } from '../../../contract/words.ts';
import { make } from '../../element.ts';
import type { Trouble } from '../store/kept-store.ts';

/** Says above everything else why what is answered now is not kept. */
export function makeTroubleNotice(words: PracticeWords['practice']): {
  readonly element: HTMLElement;
  /** `undefined` takes it back. */
  show(trouble: Trouble | undefined): void;
} {
  const element = make('p', 'practice-trouble');
  element.setAttribute('role', 'alert');
  element.hidden = true;
  return {
    element,
    show(trouble) {
      const text = trouble === undefined ? '' : words[trouble];
      element.hidden = text === '';
      // Set again, it would be read out again.
      if (element.textContent !== text) element.textContent = text;
    },
  };
}
