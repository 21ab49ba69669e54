import { isLabel, labelHint } from '../names.ts';

/** What `:here[…]` says: `na5-qb6 "The knight goes to the rim"`. */
export interface HereText {
  readonly label: string;
  /** What readers see, with single spaces, and its range within the brackets, without quotation marks. */
  readonly title?: { readonly text: string; readonly start: number; readonly end: number };
  /** What is wrong with the title, which is then ignored; the name holds. */
  readonly problem?: { readonly message: string; readonly hint: string };
}

/** In characters: a title stands under a small board and in running text. */
export const longestTitle = 80;

const example = 'na5-qb6 "The knight goes to the rim"';

/**
 * Reads the argument of a `:here[…]`.
 * @param written the text between the brackets, with its spaces.
 * @returns the name and its title; if there is no name, a string that says why.
 */
export function readHere(
  written: string,
): HereText | { readonly message: string; readonly hint: string } {
  const [, label = '', rest = ''] = /^\s*(\S*)\s*(.*?)\s*$/s.exec(written) ?? [];
  const isTitled = rest === '' || /^["“”„«»']/.test(rest);
  if (!isLabel(label) || !isTitled) {
    return {
      message: `\`${written.replace(/\s+/g, ' ').trim()}\` is no name for a position.`,
      hint:
        rest === ''
          ? labelHint
          : `A name has no spaces; a title for readers stands behind it, as in \`:here[${example}]\`.`,
    };
  }
  if (rest === '') return { label };
  const [whole, inner = ''] = /^"([^"]*)"/.exec(rest) ?? [];
  const problem = (message: string, hint: string) => ({ label, problem: { message, hint } });
  if (whole === undefined) {
    return problem(
      `The title of \`${label}\` does not stand between two straight quotation marks.`,
      `Write \`:here[${example}]\`.`,
    );
  }
  const text = inner.replace(/\s+/g, ' ').trim();
  if (whole !== rest) {
    return /^\s*"[^"]*"$/.test(rest.slice(whole.length))
      ? problem(`\`${label}\` has two titles.`, 'Leave one of them; a position has one title.')
      : problem(
          `Behind the title of \`${label}\` stands something more.`,
          'Within a title write quotation marks as “ and ”, and nothing behind its end.',
        );
  }
  if (text === '') {
    return problem(
      `The title of \`${label}\` is empty.`,
      'Write what readers shall see, or leave the quotation marks out: then they see the move.',
    );
  }
  const { length } = [...text];
  if (length > longestTitle) {
    return problem(
      `The title of \`${label}\` has ${length} characters; ${longestTitle} are the most.`,
      'A title stands under a small board and in links. The rest belongs in the text.',
    );
  }
  const start = written.indexOf('"') + 1;
  return { label, title: { text, start, end: start + inner.length } };
}
