/** Bounds of a board's width in CSS pixels: below it nothing can be told apart. */
const smallest = 32;
const largest = 4096;

/** @throws RangeError unless `size` is a width in CSS pixels that a board can be drawn at. */
export function checkSize(size: number): void {
  if (!Number.isFinite(size) || size < smallest || size > largest) {
    throw new RangeError(
      `a board cannot be ${size} pixels wide: give a number from ${smallest} to ${largest}`,
    );
  }
}
