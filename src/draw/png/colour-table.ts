/** A share of the places that is left free, so that a search ends soon. */
const fullest = 0.5;

/**
 * Numbers kept by colour: a hash table in two arrays, since a `Map` takes three times as long, and
 * a picture asks for hundreds of thousands of pixels. Colours are of 24 bits, values above 0.
 */
export class ColourTable {
  #colours = new Int32Array(1 << 12);
  #values = new Int32Array(1 << 12);
  #size = 0;

  /** The value of a colour; 0 if it has none. */
  get(colour: number): number {
    return this.#values[this.#place(colour)] ?? 0;
  }

  add(colour: number, value: number): void {
    const place = this.#place(colour);
    const old = this.#values[place] ?? 0;
    this.#colours[place] = colour;
    this.#values[place] = old + value;
    if (old === 0) this.#size += 1;
    if (this.#size > this.#values.length * fullest) this.#grow();
  }

  /** All colours with their values, in no order. */
  entries(): [colour: number, value: number][] {
    const found: [number, number][] = [];
    for (let place = 0; place < this.#values.length; place += 1) {
      const value = this.#values[place] ?? 0;
      if (value > 0) found.push([this.#colours[place] ?? 0, value]);
    }
    return found;
  }

  /** Where the colour is, or the free place where it would come. */
  #place(colour: number): number {
    const last = this.#values.length - 1;
    // Multiplied by 2^32 over the golden ratio, the high bits depend on all bits (Knuth, 6.4).
    let place = (Math.imul(colour, 0x9e3779b1) >>> 8) & last;
    while (this.#values[place] !== 0 && this.#colours[place] !== colour) place = (place + 1) & last;
    return place;
  }

  #grow(): void {
    const entries = this.entries();
    this.#colours = new Int32Array(this.#colours.length * 4);
    this.#values = new Int32Array(this.#values.length * 4);
    this.#size = 0;
    for (const [colour, value] of entries) this.add(colour, value);
  }
}
