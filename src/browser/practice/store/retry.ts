/** Between two tries, in ms; each waits twice as long as the one before. */
const [firstWait, longestWait] = [1000, 60_000];

/** Tries something again after a while, until it is called off. */
export class Retry {
  readonly #act: () => void;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #wait = firstWait;

  constructor(act: () => void) {
    this.#act = act;
  }

  plan(): void {
    this.#timer ??= setTimeout(() => {
      this.#timer = undefined;
      this.#wait = Math.min(this.#wait * 2, longestWait);
      this.#act();
    }, this.#wait);
  }

  callOff(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#wait = firstWait;
  }
}
