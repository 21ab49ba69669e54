/** So long may a line of an engine be; the longest of an honest one has a few thousand characters. */
const longest = 65_536;

/**
 * Cuts what an engine writes into lines. A line that is longer than any can be is passed over, however long it gets,
 * and so is a last one without its end: it may be half of one.
 */
export function createLineSplitter(): (chunk: string) => string[] {
  let rest = '';
  let isTooLong = false;
  return (chunk) => {
    const [first = '', ...more] = chunk.split('\n');
    const lines: string[] = [];
    let open = rest + first;
    for (const next of more) {
      if (!isTooLong && open.length <= longest) lines.push(open);
      isTooLong = false;
      open = next;
    }
    if (open.length > longest) isTooLong = true;
    rest = isTooLong ? '' : open;
    return lines;
  };
}
