export interface LineWriter {
  /** A word, after a space or a line break. */
  readonly word: (text: string) => void;
  /** Words with single spaces between them and without line breaks. */
  readonly words: (text: string) => void;
  /** Put before the next word, with nothing between. */
  readonly prefix: (text: string) => void;
  /** Put after the last word, with nothing between, unless its line is ended. */
  readonly suffix: (text: string) => void;
  /** Ends the line after the last word. */
  readonly endLine: () => void;
  /** All that was written, with a line break at the end if there is anything. */
  readonly finish: () => string;
}

/** Sets words into lines of at most `width` UTF-16 units; a longer word has a line of its own. */
export function createLineWriter(width: number): LineWriter {
  const parts: string[] = [];
  let column = 0;
  let pending = '';
  let opening = '';
  let isLineEnded = false;

  function flush(): void {
    if (pending === '') return;
    const lastBreak = Math.max(pending.lastIndexOf('\n'), pending.lastIndexOf('\r'));
    const firstLength = lastBreak === -1 ? pending.length : pending.search(/[\r\n]/);
    if (column > 0) {
      const fits = column + 1 + firstLength <= width;
      parts.push(fits ? ' ' : '\n');
      column = fits ? column + 1 : 0;
    }
    parts.push(pending);
    column = lastBreak === -1 ? column + pending.length : pending.length - lastBreak - 1;
    pending = '';
    if (isLineEnded) {
      parts.push('\n');
      column = 0;
      isLineEnded = false;
    }
  }

  function word(text: string): void {
    flush();
    pending = opening + text;
    opening = '';
  }

  /** Line by line: an entry for each word would be most of what a long text takes. */
  function words(text: string): void {
    flush();
    const all = opening + text;
    opening = '';
    // The last may grow.
    const last = all.lastIndexOf(' ') + 1;
    for (let start = 0; start < last; ) {
      if (column > 0) {
        const fits = column + 1 + all.indexOf(' ', start) - start <= width;
        parts.push(fits ? ' ' : '\n');
        column = fits ? column + 1 : 0;
      }
      const end = Math.max(
        all.lastIndexOf(' ', Math.min(start + width - column, last - 1)),
        all.indexOf(' ', start),
      );
      parts.push(all.slice(start, end));
      column += end - start;
      start = end + 1;
    }
    word(all.slice(last));
  }

  return {
    word,
    words,
    prefix: (text) => {
      opening += text;
    },
    suffix: (text) => {
      if (isLineEnded || pending === '') word(text);
      else pending += text;
    },
    endLine: () => {
      isLineEnded = true;
    },
    finish: () => {
      isLineEnded = pending !== '';
      flush();
      return parts.join('');
    },
  };
}
