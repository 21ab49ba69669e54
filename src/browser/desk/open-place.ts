import { dataOf } from '../../contract/attributes.ts';
import { make } from '../element.ts';
import { askServer } from './ask-server.ts';
import { ownData } from './own-data.ts';

/** A button that opens a place of a file in the author's editor; the style sheet shows it where one is set. */
export function openButton(place: {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}): HTMLButtonElement {
  const button = make('button', 'desk-open', 'Open');
  button.type = 'button';
  button.title = 'Open in the editor';
  for (const [name, value] of Object.entries(place)) button.dataset[name] = String(value);
  return button;
}

/** Answers all such buttons of the page, those that the server wrote too. @param refuse says why nothing opened. */
export function openPlaces(refuse: (why: string) => void): void {
  if (ownData.editor === undefined) return;
  document.documentElement.dataset.deskEditor = '';
  addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('.desk-open') : null;
    if (button === null) return;
    const { file, line, column } = dataOf('finding', button);
    askServer('open', { file, line: Number(line), column: Number(column) }).catch((error: Error) =>
      refuse(error.message),
    );
  });
}
