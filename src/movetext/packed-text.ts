/**
 * Text of the course language as words of a PGN comment, and back: a comment holds no brace that closes, no
 * line break that anybody keeps and no two spaces. What it cannot hold becomes an embedded command, in the form
 * that the supplement of 2001 to the PGN standard gives to them; programs leave those alone that they do
 * not know, and many do not show them. Strict ones want each to have a value. `[%line 4]` is a line break and four
 * spaces, `[%sign 7B 20]` signs by their code points, `[%join 0]` a space that is none.
 */

/** Commands that part a comment: what follows one is of its kind, up to the next. */
const partNames = [
  'text',
  'block',
  'body',
  'ask',
  'hint',
  'answer',
  'also',
  'wrong',
  'comment',
] as const;
export type PartName = (typeof partNames)[number];

/** The command that begins a part. */
export function partCommand(name: PartName, count = 0): string {
  return `[%${name} ${count}]`;
}

export interface CommentPart {
  /** Absent for what stands before the first command. */
  readonly name?: PartName;
  /** `2` in `[%comment 2]`. */
  readonly count: number;
  /** Still packed. */
  readonly text: string;
}

/** Line breaks, runs of spaces, other spaces, braces, and what looks like one of our commands. */
const unholdable = new RegExp(
  `(?<break>\\n) *|[^\\S\\n ]+| {2,}| +(?=\\n|$)|^ +|[{}]|\\[(?=%(?:line|sign|join|${partNames.join('|')})\\b)`,
  'g',
);

/** More than a line may have in one word; no command is taken apart. */
const longWord = /(?:[^\s[]|\[(?!%(?:line|sign)\b)){100}(?=\S)/g;

export function packText(text: string): string {
  const signs = text.replace(/\r\n?/g, '\n').replace(unholdable, (found: string, ...rest) => {
    const groups = rest.at(-1) as { readonly break?: string };
    if (groups.break === undefined) return `[%sign ${[...found].map(codeOf).join(' ')}]`;
    return ` [%line ${found.length - 1}] `;
  });
  return signs.replace(longWord, '$& [%join 0] ');
}

const codeOf = (sign: string) => (sign.codePointAt(0) ?? 0).toString(16).toUpperCase();

const packed =
  /\s*\[%line(?:\s+(\d{1,4}))?\]\s?|\[%sign((?:\s+[0-9A-Fa-f]{1,6})+)\]|\s*\[%join(?:\s+\d+)?\]\s?/g;

/** What `packText` packed. Spaces that a program has put around a command are gone. */
export function unpackText(text: string): string {
  const flat = text.replace(/\s+/g, ' ');
  return flat.replace(packed, (found: string, indent?: string, codes?: string) => {
    if (codes !== undefined) return codes.trim().split(/\s+/).map(signOf).join('');
    return found.includes('%line') ? `\n${' '.repeat(Number(indent ?? 0))}` : '';
  });
}

function signOf(code: string): string {
  const value = Number.parseInt(code, 16);
  return value <= 0x10ffff ? String.fromCodePoint(value) : '\uFFFD';
}

const parting = new RegExp(`\\[%(${partNames.join('|')})(?:\\s+(\\d{1,4}))?\\]`, 'g');

/** The parts of a comment, in their order; an empty one before the first command is left out. */
export function partsOfComment(text: string): CommentPart[] {
  const parts: CommentPart[] = [];
  let start = 0;
  let open: Omit<CommentPart, 'text'> = { count: 0 };
  const close = (end: number) => {
    const words = text.slice(start, end).trim();
    if (words !== '' || open.name !== undefined) parts.push({ ...open, text: words });
  };
  for (const match of text.matchAll(parting)) {
    close(match.index);
    open = { name: match[1] as PartName, count: Number(match[2] ?? 0) };
    start = match.index + match[0].length;
  }
  close(text.length);
  return parts;
}
