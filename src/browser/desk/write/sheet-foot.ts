import { make, makeButton } from '../../element.ts';

/** The end of the sheet, which stays in sight: what became of what was asked for, beside what asks for it. */
export class SheetFoot {
  readonly element = make('div', 'write-foot');
  readonly #status = make('p', 'write-status');
  readonly #write: HTMLButtonElement;

  constructor(onWrite: () => void) {
    this.#write = makeButton('', onWrite, 'write-now');
    this.#write.hidden = true;
    this.#status.id = 'write-status';
    this.#status.setAttribute('role', 'status');
    this.element.append(this.#status, this.#write);
  }

  /** @param name of the button; without one there is nothing to be written to. */
  offer(name: string | undefined): void {
    this.#write.hidden = name === undefined;
    this.#write.textContent = name ?? '';
  }

  say(message: string): void {
    this.#tell(message, false);
  }

  /** What was not done is said at once, in the middle of whatever else is read aloud. */
  refuse(message: string): void {
    // The same words again are said again.
    if (this.#status.textContent === message) this.#status.textContent = '';
    this.#tell(message, true);
  }

  #tell(message: string, isRefusal: boolean): void {
    this.#status.setAttribute('aria-live', isRefusal ? 'assertive' : 'polite');
    this.#status.classList.toggle('write-refused', isRefusal);
    this.#status.textContent = message;
  }
}
