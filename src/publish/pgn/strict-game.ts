import type { PlainComment, PlainLine, PlainMove, PlainMovetext } from '../../movetext/index.ts';

/** The longest line that a reader must take, in characters (PGN standard, 4.3). */
const longestLine = 255;

/**
 * A game as strict readers take it: one comment in a place, since many know no second one beside it, each
 * in braces and with none within, and no word or tag that would make a line longer than the standard lets it
 * be. No word is lost; a `}` becomes a `)`.
 */
export function strictGame({ tags, line }: PlainMovetext): PlainMovetext {
  return {
    tags: tags.map(({ name, value }) => ({ name, value: fitTag(name, value) })),
    line: strictLine(line),
  };
}

/** No tree is deeper than its check allows, so that this may call itself once a level. */
function strictLine(line: PlainLine): PlainLine {
  return { ...line, before: joined(line.before), moves: line.moves.map(strictMove) };
}

/** Words behind a variation go before it: readers that take no second comment take none there either. */
function strictMove(move: PlainMove): PlainMove {
  const comments = move.after.filter((item) => item.type === 'comment');
  const variations = move.after
    .filter((item) => item.type === 'variation')
    .map(({ type, line }) => ({ type, line: strictLine(line) }));
  return { ...move, after: [...joined(comments), ...variations] };
}

/** The comments as one, with what braces cannot hold in other signs. */
function joined(comments: readonly PlainComment[]): PlainComment[] {
  const text = comments
    .map((each) => each.text.trim())
    .filter((each) => each !== '')
    .join(' ')
    .replace(/\{/g, '(')
    .replace(/\}/g, ')')
    .replace(notCommand, '[ %')
    .replace(longWord, (word) => word.replace(/.{200}/gsu, '$& ').trimEnd());
  return text === '' ? [] : [{ type: 'comment', form: 'brace', text }];
}

/**
 * What looks like an embedded command and is none, for which strict readers refuse a game: `[%line]` in a text that
 * speaks of commands. A command has a name and a value (supplement of 2001, `[%clk 1:05:23]`).
 */
const notCommand = /\[%(?=[\w.-]*\])/g;

/** Such as an address: it is taken apart rather than left out. Looked for at the beginning of each word, not within. */
const longWord = /(?<!\S)\S{201,}/gu;

/** A value that its line has room for; a longer one is cut. */
export function fitTag(name: string, value: string): string {
  const lineOf = (text: string) => `[${name} "${text.replace(/["\\]/g, '\\$&')}"]`;
  if (lineOf(value).length <= longestLine) return value;
  const signs = [...value];
  while (lineOf(`${signs.join('')}…`).length > longestLine) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
