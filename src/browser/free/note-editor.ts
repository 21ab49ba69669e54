import { element, make, makeButton } from '../element.ts';

export interface NoteEditor {
  readonly element: HTMLElement;
  /** The note as it is kept; what is being written stays until it is kept. */
  show(text: string, label: string): void;
  flush(): void;
  focus(): void;
}

/** Milliseconds after the last key at which what was written is kept. */
const pause = 600;

/** `onText` gets what is to be kept; an empty text is none. */
export function makeNoteEditor(
  deleteWords: string,
  { onText, onDelete }: { readonly onText: (text: string) => void; readonly onDelete: () => void },
): NoteEditor {
  const label = element('label', { for: 'own-note' });
  const area = element('textarea', { id: 'own-note', rows: '3', maxlength: '20000' });
  let kept = '';
  let timer: ReturnType<typeof setTimeout> | undefined;

  function flush(): void {
    clearTimeout(timer);
    timer = undefined;
    if (kept === area.value) return;
    kept = area.value;
    onText(kept);
  }
  area.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(flush, pause);
  });
  area.addEventListener('change', flush);
  addEventListener('pagehide', flush);
  const remove = makeButton(deleteWords, () => {
    area.value = '';
    flush();
    onDelete();
    area.focus();
  });
  return {
    element: make('div', 'own-editor', label, area, remove),
    show(text, words) {
      label.textContent = words;
      remove.hidden = text === '';
      if (timer !== undefined) return;
      kept = text;
      if (area.value !== text) area.value = text;
    },
    flush,
    focus: () => area.focus(),
  };
}
