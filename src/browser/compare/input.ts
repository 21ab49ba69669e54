import type { CompareWords } from '../../contract/words.ts';
import { headLength, utf16Of } from '../../movetext/archive/encoding.ts';
import { make } from '../element.ts';

/**
 * Where games are given: chosen or dropped as files, or pasted.
 * @param example how a game may begin.
 */
export function makeInput(
  words: CompareWords,
  example: string,
  onGames: (games: Blob) => void,
): HTMLElement {
  const take = async (files: readonly File[]) => {
    const games = await Promise.all(files.map(inUtf8));
    // A blank line between files, as between games.
    if (games.length > 0) onGames(new Blob(games.flatMap((each) => [each, '\n\n'])));
  };

  const file = make('input', 'unseen');
  file.type = 'file';
  file.multiple = true;
  file.accept = '.pgn,.txt,application/vnd.chess-pgn,application/x-chess-pgn,text/plain';
  file.addEventListener('change', () => {
    void take([...(file.files ?? [])]);
    // The same file may be chosen again, after it was changed.
    file.value = '';
  });
  const choose = make('label', 'choose', [file, make('span', '', words.choose)]);
  const zone = make('div', 'drop-zone', [choose, make('span', 'drop-hint', words.drop)]);
  dropTarget(zone, take);

  const text = make('textarea', 'pasted');
  text.rows = 4;
  text.spellcheck = false;
  text.placeholder = example && `${example} …`;
  const go = make('button', '', words.go);
  const label = make('label', '', [make('span', '', words.paste), text]);
  const form = make('form', 'paste', [label, go]);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    if (text.value.trim() === '') text.focus();
    else onGames(new Blob([text.value]));
  });
  return make('div', 'compare-input', [zone, form]);
}

/** A file as it is, or what is in one of UTF-16; one that cannot be read is told where it is read. */
async function inUtf8(file: File): Promise<Blob> {
  try {
    const utf16 = utf16Of(new Uint8Array(await file.slice(0, headLength).arrayBuffer()));
    return utf16 ? new Blob([new TextDecoder(utf16).decode(await file.arrayBuffer())]) : file;
  } catch {
    return file;
  }
}

/** Files may be dropped anywhere on the page: a miss would make the browser leave it. */
function dropTarget(zone: HTMLElement, take: (files: readonly File[]) => Promise<void>): void {
  const hasFiles = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes('Files') ?? false;
  document.addEventListener('dragover', (event) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    zone.classList.add('over');
  });
  document.addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) zone.classList.remove('over');
  });
  document.addEventListener('drop', (event) => {
    zone.classList.remove('over');
    if (!hasFiles(event)) return;
    event.preventDefault();
    void take([...(event.dataTransfer?.files ?? [])]);
  });
}
