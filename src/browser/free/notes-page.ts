/** The page of everything that a reader has kept at positions of the course. */
import type { CourseTable } from '../../contract/course-table.ts';
import type { NotesWords } from '../../contract/words.ts';
import { givenTable } from '../../lookup/given-table.ts';
import { wordsOf } from '../board/board-words.ts';
import { counted } from '../counted.ts';
import { element, make, makeButton } from '../element.ts';
import { makeProgressFile, readProgressFile } from '../practice/store/progress-file.ts';
import { saveFile } from '../practice/store/save-file.ts';
import { noteCard } from './note-card.ts';
import { notesAsText } from './notes-as-text.ts';
import { inOrder } from './notes-in-order.ts';
import { browserKeeper, type OwnStore, openOwnStore } from './own-store.ts';

const root = document.querySelector<HTMLElement>('.course-notes');
if (root !== null) startNotes(root, givenTable(), wordsOf(root, 'notes'));

function startNotes(stand: HTMLElement, table: CourseTable, words: NotesWords): void {
  const { free } = words;
  const store = openOwnStore(table.course, browserKeeper());
  const list = make('div', 'own-list');
  const status = make('div', 'own-status');
  status.setAttribute('role', 'status');
  const count = make('p', 'own-count');

  function say(message: string, offersUndo = false): void {
    const undo = makeButton(free.undo, () => {
      if (store.undo()) say(free.undone);
    });
    status.replaceChildren(make('p', '', message, ...(offersUndo ? [' ', undo] : [])));
  }

  function show(): void {
    const groups = inOrder([...store.entries.values()], table, free.beside);
    count.textContent = store.entries.size === 0 ? '' : counted(free.count, store.entries.size);
    list.replaceChildren(
      ...(groups.length === 0
        ? [make('p', '', free.none.replace('{open}', words.own))]
        : groups.map(({ title, entries }) =>
            make(
              'section',
              '',
              make('h2', '', title),
              ...entries.map((entry) =>
                noteCard(entry, table, words, () => {
                  store.keep({ key: entry.key, changed: Date.now(), label: '', href: '' });
                  say(free.deleted, true);
                  // The button is gone with its card.
                  status.querySelector('button')?.focus();
                }),
              ),
            ),
          )),
    );
    save.hidden = groups.length === 0;
    text.hidden = groups.length === 0;
  }

  const save = makeButton(free.save, () =>
    saveFile(
      `${table.course}-notes.json`,
      makeProgressFile(table, [], Date.now(), store.entries.values()),
    ),
  );
  const text = makeButton(free.text, () =>
    saveFile(
      `${table.course}-notes.txt`,
      notesAsText(table.title, inOrder([...store.entries.values()], table, free.beside), free),
      'text/plain;charset=utf-8',
    ),
  );
  const input = element('input', { type: 'file', accept: '.json,application/json', hidden: '' });
  const load = makeButton(free.load, () => input.click());
  input.addEventListener('change', async () => {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    say(await readFile(file, store, free));
    // So that the same file can be chosen again.
    input.value = '';
  });
  stand.append(count, make('p', 'own-ways', save, text, load), input, status, list);
  store.follow(show);
  show();
}

async function readFile(file: File, store: OwnStore, free: NotesWords['free']): Promise<string> {
  let text: string;
  try {
    text = await file.text();
  } catch {
    return free.unreadable;
  }
  const read = readProgressFile(text, Date.now());
  if ('fault' in read || read.notes.length === 0) return free.notNotes;
  const taken = store.take(read.notes);
  return taken === 0 ? free.nothingNew : counted(free.taken, taken);
}
