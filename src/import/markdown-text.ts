/** With more brackets than this each has a backslash: a reader of Markdown takes a limited number. */
const mostBrackets = 100;

/**
 * Text as Markdown that says the same: nothing in it is emphasis, code, a link, a directive or
 * HTML. Braces that close become character references, since a brace ends a comment of moves.
 */
export function commentMarkdown(text: string): string {
  const brackets = text.match(/[[\]]/g)?.length ?? 0;
  const escaped = escapeSigns(text);
  return brackets > mostBrackets ? escapeBrackets(escaped) : escaped.replace(/\](?=[([{])/g, ']\\');
}

/** Text as code, which no rule reads as words of the author. No sign in code stands for a brace, so braces are round. */
export function codeMarkdown(text: string): string {
  const longest = Math.max(0, ...[...text.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  const round = text.replace(/\0/g, '\uFFFD').replaceAll('{', '(').replaceAll('}', ')');
  return `${fence}${round}${fence}`;
}

/** The same as a paragraph, where a line may also begin a heading, a list, a quote or a note. */
export function paragraphMarkdown(text: string): string {
  return escapeBrackets(escapeSigns(text))
    .replace(/^(\d{1,9})([.)])/, '$1\\$2')
    .replace(/^[#>+\-=~|]/, '\\$&');
}

/** Text as it is, in a block that nothing in it can close. */
export function textBlock(text: string): string {
  let longest = 2;
  for (const [run] of text.matchAll(/`+/g)) longest = Math.max(longest, run.length);
  const fence = '`'.repeat(longest + 1);
  return `${fence}text\n${text.replace(/\0/g, '\uFFFD').trim()}\n${fence}`;
}

function escapeSigns(text: string): string {
  return (
    text
      .replace(/\0/g, '\uFFFD')
      .replace(/[\\`*_<]/g, '\\$&')
      .replace(/&(?=#?\w)/g, '&amp;')
      // `:name[…]` is a directive; a name that is known is one without brackets too.
      .replace(/:(?=[:\p{L}]|[^\s[{]{1,200}[[{])/gu, '\\:')
      .replace(/\}/g, '&#125;')
  );
}

function escapeBrackets(text: string): string {
  return text.replace(/[[\]]/g, '\\$&');
}
