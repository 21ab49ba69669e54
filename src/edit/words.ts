import { directiveNames } from '../read/index.ts';
import { EditRefusedError, type NewDirective, type NewWords } from './types.ts';

/** A colon that would begin a directive, with the backslashes before it. */
const opening = new RegExp(
  `(\\\\*):(?=(?:${directiveNames.join('|')})(?![\\p{L}\\p{N}_-])|\\p{L}[\\p{L}\\p{N}_-]*[[{])`,
  'gu',
);

/** Makes words fit for a comment: they stay on one line, end no comment and begin no directive. */
function commentText(words: string): string {
  const isEscaped = (backslashes: string) => backslashes.length % 2 === 1;
  return (
    words
      .replace(/\s+/g, ' ')
      .trim()
      .replace(opening, (all, before: string) => (isEscaped(before) ? all : `${before}\\:`))
      // Nothing escapes a brace in movetext; what stands for it in Markdown does.
      .replace(/(\\*)\}/g, (_, before: string) => {
        return `${isEscaped(before) ? before.slice(1) : before}&#125;`;
      })
      // One that is left over would escape what follows the words.
      .replace(/(\\*)$/, (before) => (isEscaped(before) ? `${before}\\` : before))
  );
}

/**
 * A directive as it is written.
 * @throws EditRefusedError for an argument that would end it before its end.
 */
export function directiveText({ name, argument }: NewDirective): string {
  const text = argument.replace(/\s+/g, ' ').trim();
  if (/[[\]{}\\]/.test(text)) {
    throw new EditRefusedError(
      `\`${text}\` cannot stand in the brackets of a directive`,
      'leave out brackets, braces and backslashes',
    );
  }
  return `:${name}[${text}]`;
}

/** What stands between the braces; empty where nothing is said. */
export function wordsText({ directives = [], comment = '', source = '' }: NewWords): string {
  const written = source.replace(/\s+/g, ' ').trim().replace(/\}/g, '&#125;');
  return [...directives.map(directiveText), commentText(comment), written]
    .filter((part) => part !== '')
    .join(' ');
}
