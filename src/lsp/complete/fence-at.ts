/** The fenced block around an offset of a chapter, found in its text alone: it may be half written. */
export interface FenceAt {
  readonly name: string;
  /** The opening line, from the marks on. */
  readonly opening: string;
  readonly marks: string;
  readonly start: number;
  /** Where the line after the opening one begins. */
  readonly contentStart: number;
  readonly isOnOpening: boolean;
}

const fence = /^[ \t>]*(`{3,}|~{3,})[ \t]*([^\s`]*)(.*)$/;

export function fenceAt(text: string, offset: number): FenceAt | undefined {
  let open: FenceAt | undefined;
  for (let at = 0; at <= offset; ) {
    const found = text.slice(at).search(/\r\n?|\n/);
    const end = found < 0 ? text.length : at + found;
    const next = found < 0 ? end + 1 : end + (text.startsWith('\r\n', end) ? 2 : 1);
    const [whole = '', marks = '', name = '', rest = ''] = fence.exec(text.slice(at, end)) ?? [];
    if (open) {
      if (marks.startsWith(open.marks) && name === '' && rest.trim() === '' && end < offset) {
        open = undefined;
      } else open = { ...open, isOnOpening: false };
    } else if (marks !== '') {
      const start = at + whole.indexOf(marks);
      const opening = text.slice(start, end);
      open = { name, opening, marks, start, contentStart: next, isOnOpening: end >= offset };
    }
    at = next;
  }
  return open;
}
