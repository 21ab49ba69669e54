import type { SearchWords } from '../../contract/words.ts';
import { type BoardSearch, startBoardSearch } from './board-search.ts';
import { makeWordSearch } from './search-by-words.ts';
import { type SearchResult, showResult } from './search-result.ts';

/** After so many milliseconds without a key the words are searched for, though nobody asked yet. */
const pause = 350;

/** What is searched: one course, or several. */
export interface Searched {
  readonly words: SearchWords;
  readonly forWords: (query: string) => Promise<SearchResult>;
  /** For a FEN or moves. */
  readonly forPosition: (text: string) => SearchResult | Promise<SearchResult>;
  readonly onBoard: BoardSearch;
}

/** Makes the search page live. What was searched for stands in the address, so that Back finds it. */
export function startSearch(place: HTMLElement, searched: Searched): void {
  const { words } = searched;
  const forWords = formIn(place, '.for-words');
  const searchWords = makeWordSearch(forWords.section, words, searched.forWords);
  const findWords = () => {
    note({ words: forWords.field.value });
    void searchWords(forWords.field.value);
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  forWords.field.addEventListener('input', () => {
    clearTimeout(timer);
    if (forWords.field.value.trim() !== '') timer = setTimeout(findWords, pause);
  });
  forWords.form.addEventListener('submit', (event) => {
    event.preventDefault();
    clearTimeout(timer);
    findWords();
  });

  const forBoard = place.querySelector('.for-board');
  const forPosition = formIn(place, '.for-position');
  const findPosition = () => {
    // What is found stands below, and must be in sight.
    forBoard?.removeAttribute('open');
    const text = forPosition.field.value;
    note({ position: text });
    void Promise.resolve(searched.forPosition(text)).then((answer) => {
      if (text === forPosition.field.value) showResult(forPosition.section, answer);
    });
  };
  forPosition.form.addEventListener('submit', (event) => {
    event.preventDefault();
    findPosition();
  });
  // The field has lines, since games are pasted into it; Enter asks all the same.
  forPosition.field.addEventListener('keydown', (event) => {
    if (!(event instanceof KeyboardEvent) || event.key !== 'Enter' || event.shiftKey) return;
    if (event.isComposing) return;
    event.preventDefault();
    findPosition();
  });

  if (forBoard !== null) startBoardSearch(forBoard, words, searched.onBoard);

  const asked = new URLSearchParams(location.hash.slice(1));
  forWords.field.value = asked.get('words') ?? '';
  forPosition.field.value = asked.get('position') ?? '';
  if (forWords.field.value !== '') void searchWords(forWords.field.value);
  if (forPosition.field.value !== '') findPosition();
}

function note(asked: Readonly<Record<string, string>>): void {
  history.replaceState(null, '', `#${new URLSearchParams(asked)}`);
}

function formIn(place: Element, selector: string) {
  const form = place.querySelector<HTMLFormElement>(selector);
  const field = form?.querySelector<HTMLInputElement | HTMLTextAreaElement>('input, textarea');
  const section = form?.closest('section');
  if (!form || !field || !section) throw new Error(`the search page has no form ${selector}`);
  return { form, field, section };
}
