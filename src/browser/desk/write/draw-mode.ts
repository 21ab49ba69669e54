import type { DrawnOnBoard } from '../../../contract/desk-write.ts';
import { fill } from '../../../contract/sentence.ts';
import type { CourseBoard } from '../../board/course-board.ts';
import { element, make, makeButton } from '../../element.ts';
import { words } from './words.ts';

export interface DrawMode {
  readonly element: HTMLElement;
  end(): void;
}

/**
 * While one of its kinds is chosen, the squares of the board are for drawing: by taps, clicks and keys alike, since
 * each of them is a click. It hears of what is done before the board itself does.
 */
export function makeDrawMode(
  board: CourseBoard,
  {
    onDraw,
    onSay,
  }: {
    readonly onDraw: (kind: DrawnOnBoard, item: string) => void;
    readonly onSay: (message: string) => void;
  },
): DrawMode {
  let kind: DrawnOnBoard | undefined;
  let from: HTMLElement | undefined;
  const buttons = new Map<DrawnOnBoard, HTMLButtonElement>();
  const help = make('p', 'write-help', words.drawHelp);
  const root = element('div', { class: 'write-draw', role: 'group', 'aria-label': words.draw });
  for (const each of ['mark', 'plan', 'threat', 'guard'] as const) {
    const button = makeButton(words.drawn[each], () => set(kind === each ? undefined : each));
    button.setAttribute('aria-pressed', 'false');
    buttons.set(each, button);
  }
  root.append(make('span', '', `${words.drawAs} `), ...buttons.values(), help);
  help.hidden = true;

  function set(now: DrawnOnBoard | undefined): void {
    kind = now;
    choose(undefined);
    help.hidden = now === undefined;
    board.classList.toggle('write-drawing', now !== undefined);
    for (const [each, button] of buttons) button.setAttribute('aria-pressed', String(each === now));
  }

  function choose(square: HTMLElement | undefined): void {
    from?.classList.remove('own-from');
    from = square;
    from?.classList.add('own-from');
  }

  const squareOf = ({ target }: Event): HTMLElement | undefined => {
    const square = target instanceof Element ? target.closest('.squares [data-square]') : null;
    return square instanceof HTMLElement ? square : undefined;
  };
  const take = (event: Event) => {
    if (kind === undefined || squareOf(event) === undefined) return false;
    event.stopPropagation();
    return true;
  };
  board.addEventListener('pointerdown', take, { capture: true });
  board.addEventListener(
    'click',
    (event) => {
      const square = squareOf(event);
      const name = square?.dataset.square;
      if (!take(event) || kind === undefined || square === undefined || name === undefined) return;
      const start = from?.dataset.square;
      if (kind === 'mark') onDraw(kind, name);
      else if (start === undefined) {
        choose(square);
        onSay(fill(words.drawFrom, { square: name }));
      } else {
        choose(undefined);
        if (start !== name) onDraw(kind, `${start}-${name}`);
      }
    },
    { capture: true },
  );
  board.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && kind !== undefined) set(undefined);
  });
  return { element: root, end: () => set(undefined) };
}
