import { fill } from '../../contract/sentence.ts';
import type { ChapterWords, FreeWords } from '../../contract/words.ts';
import { element, make, makeButton } from '../element.ts';
import { makeNoteEditor } from './note-editor.ts';
import { isEmpty, type OwnEntry } from './own-entry.ts';
import type { OwnStore } from './own-store.ts';

/** The position that notes are written at. */
export interface OwnPlace {
  readonly key: string;
  /** `after 9.Bg5` */
  readonly label: string;
  /** Page and address that lead back to it. */
  readonly href: string;
  /** The moves of the reader's own that lead from there, in SAN. */
  readonly line: readonly string[] | undefined;
}

export interface OwnToolsEvents {
  /** Choosing squares draws from now on, or no longer. */
  readonly onDraw: (isOn: boolean) => void;
  readonly onSay: (message: string, offersUndo?: boolean) => void;
}

/** Where the reader writes, marks and draws at the position on the board. */
export interface OwnTools {
  /** Shown only when they were asked for. */
  readonly element: HTMLElement;
  /** The entry of the position, shown if there is one. */
  readonly shown: HTMLElement;
  /** Call when the board or the entries change. */
  update(place: OwnPlace | undefined): void;
  change(how: (entry: OwnEntry) => OwnEntry): void;
  readonly entry: OwnEntry | undefined;
}

export function makeOwnTools(
  words: FreeWords,
  page: ChapterWords,
  store: OwnStore,
  { onDraw, onSay }: OwnToolsEvents,
): OwnTools {
  let place: OwnPlace | undefined;
  const editor = makeNoteEditor(words.delete, {
    onText: (written) => change((entry) => ({ ...entry, text: written })),
    onDelete: () => onSay(words.deleted, true),
  });
  const write = makeButton(words.note, () => open(editor.element.hidden === true));
  const bookmark = makeButton(words.bookmark, () => {
    const isOn = entryHere()?.bookmark === true;
    change((entry) => ({ ...entry, bookmark: !isOn }));
    onSay(isOn ? words.unmarked : words.bookmarked, true);
  });
  const draw = makeButton(words.draw, () => setDrawing(drawing.hidden === true));
  const rubOut = makeButton(words.rubOut, () => {
    change((entry) => ({ ...entry, marks: [], arrows: [] }));
    onSay(words.rubbedOut, true);
  });
  const drawing = make('div', 'own-drawing', make('p', '', words.drawHelp), rubOut);
  const all = element('a', { href: 'notes.html' }, words.all);
  const written = make('p', 'own-note-text');
  const note = make('div', 'own-note', make('h2', 'own-title', words.noteHere), written);
  const drawn = make('p', 'own-drawn');

  function entryHere(): OwnEntry | undefined {
    return place && store.entries.get(place.key);
  }

  function change(how: (entry: OwnEntry) => OwnEntry): void {
    if (place === undefined) return;
    const changed = how({ ...entryHere(), ...place, changed: Date.now() });
    if (isEmpty(changed) && entryHere() === undefined) return;
    if (!store.keep(changed)) onSay(words.notKept);
  }

  function open(isOpen: boolean): void {
    editor.element.hidden = !isOpen;
    setState(write, 'aria-expanded', isOpen);
    show();
    if (!isOpen) return;
    editor.focus();
    // The tools are panned where they are cut; that is known once they have their place.
    requestAnimationFrame(() => editor.element.scrollIntoView({ block: 'nearest' }));
  }

  function setDrawing(isOn: boolean): void {
    setState(draw, 'aria-pressed', isOn);
    drawing.hidden = !isOn;
    onDraw(isOn);
  }

  function show(): void {
    const entry = entryHere();
    const { text = '' } = entry ?? {};
    editor.show(text, fill(words.noteLabel, { after: place?.label ?? page.start }));
    setState(bookmark, 'aria-pressed', entry?.bookmark === true);
    const marks = entry === undefined ? '' : drawingInWords(entry, words);
    rubOut.hidden = marks === '';
    drawn.hidden = marks === '';
    drawn.textContent = marks;
    written.textContent = text;
    note.hidden = text === '' || editor.element.hidden !== true;
  }

  open(false);
  setState(draw, 'aria-pressed', false);
  drawing.hidden = true;
  return {
    element: make(
      'div',
      'own-keeping',
      make('p', 'own-ways', write, bookmark, draw, all),
      editor.element,
      drawing,
    ),
    shown: make('div', '', note, drawn),
    update(now) {
      if (now?.key !== place?.key) editor.flush();
      place = now;
      show();
    },
    change,
    get entry() {
      return entryHere();
    },
  };
}

function setState(button: HTMLElement, name: string, isOn: boolean): void {
  button.setAttribute(name, String(isOn));
}

/** What the reader drew, in words for those who cannot see it. */
export function drawingInWords({ marks = [], arrows = [] }: OwnEntry, words: FreeWords): string {
  const each = [
    ...arrows.map((arrow) => fill(words.arrowInWords, { ...arrow })),
    ...marks.map((square) => fill(words.markInWords, { square })),
  ];
  return each.length === 0 ? '' : fill(words.yours, { marks: each.join(', ') });
}
