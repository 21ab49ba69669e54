/**
 * Text as Markdown that says the same: nothing in it is emphasis, code, a link, a directive or
 * HTML. Braces that close become character references, since a brace ends a comment of moves.
 */
export function commentMarkdown(text: string): string {
  return (
    text
      .replace(/\0/g, '\uFFFD')
      .replace(/[\\`*_<]/g, '\\$&')
      .replace(/&(?=#?\w)/g, '&amp;')
      // `:name[…]` is a directive; a name that is known is one without brackets too.
      .replace(/:(?=[:\p{L}]|[^\s[{]{1,200}[[{])/gu, '\\:')
      .replace(/\](?=[([{])/g, ']\\')
      .replace(/\}/g, '&#125;')
  );
}

/** The same as a paragraph, where a line may also begin a heading, a list, a quote or a note. */
export function paragraphMarkdown(text: string): string {
  return commentMarkdown(text)
    .replace(/\[/g, '\\[')
    .replace(/^(\d{1,9})([.)])/, '$1\\$2')
    .replace(/^[#>+\-=~|]/, '\\$&');
}

/** Text as it is, in a block that nothing in it can close. */
export function textBlock(text: string): string {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}text\n${text.replace(/\0/g, '\uFFFD').trim()}\n${fence}`;
}
