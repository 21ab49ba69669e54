import type { Point } from './place.ts';

/**
 * Makes a function from an offset in `text` (UTF-16 units) to its point. Lines end where
 * CommonMark ends them: at LF, CR or CR LF.
 * @param known where they begin, if that has been asked already.
 */
export function createLocator(text: string, known?: readonly number[]): (offset: number) => Point {
  let starts = known;
  return (offset) => {
    starts ??= lineStarts(text);
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - (starts[low] ?? 0) + 1, offset };
  };
}

/** The offsets at which the lines of `text` begin. */
export function lineStarts(text: string): number[] {
  const starts = [0];
  if (!text.includes('\r')) {
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
    return starts;
  }
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10) starts.push(at + 1);
    else if (code === 13 && text.charCodeAt(at + 1) !== 10) starts.push(at + 1);
  }
  return starts;
}
