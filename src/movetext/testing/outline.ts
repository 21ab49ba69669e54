import type { PlainLine, PlainMovetext, PlainVariation } from '../plain.ts';
import type { Movetext, MovetextProblem } from '../types.ts';

/**
 * A line on one line, for expectations in tests: numbers as `<value,dots>`, glyphs as `$n`,
 * comments as `{…}` or `;…;`, variations in parentheses.
 */
export function outline(line: PlainLine): string {
  const before = line.before.map(outlineItem).join('');
  const moves = line.moves.map(
    ({ number, san, glyphs, after }) =>
      (number === undefined ? '' : `<${number.value},${number.dots}>`) +
      san.text +
      glyphs.map((glyph) => `$${glyph.nag}`).join('') +
      after.map(outlineItem).join(''),
  );
  return [before, ...moves, line.result?.text ?? ''].filter((part) => part !== '').join(' ');
}

function outlineItem(item: PlainLine['before'][number] | PlainVariation): string {
  if (item.type === 'variation') return `(${outline(item.line)})`;
  return item.form === 'brace' ? `{${item.text}}` : `;${item.text};`;
}

/** The problems as `kind "text that is meant"`. */
export function outlineProblems(text: string, problems: readonly MovetextProblem[]): string[] {
  return problems.map(({ kind, span }) => `${kind} ${text.slice(span.start, span.end)}`);
}

/** The tree without places and written numbers: what survives being written and read again. */
export function plain({ tags, line }: Movetext | PlainMovetext): PlainMovetext {
  return { tags: tags.map(({ name, value }) => ({ name, value })), line: plainLine(line) };
}

function plainLine(line: PlainLine): PlainLine {
  return {
    before: line.before.map(({ form, text }) => ({ type: 'comment', form, text })),
    moves: line.moves.map(({ san, glyphs, after }) => ({
      san: { text: san.text },
      glyphs: glyphs.map(({ nag }) => ({ nag })),
      after: after.map((item) =>
        item.type === 'variation'
          ? { type: 'variation', line: plainLine(item.line) }
          : { type: 'comment', form: item.form, text: item.text },
      ),
    })),
    ...(line.result === undefined ? {} : { result: { text: line.result.text } }),
  };
}
