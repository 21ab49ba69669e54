import { createLocator, lineStarts } from '../../../diagnostics/index.ts';
import { countLevels } from './count-levels.ts';
import type { ExcessNode } from './excess.ts';

/** What a chapter may ask of the parser of Markdown. */
export const lineLimits = {
  /**
   * The most quotes, lists and footnotes that a line may stand in. The parser matches each line with
   * all of them, and makes a list by reading all that is in it. A text may be nested 50 levels deep
   * (`limitNesting`), where a list is two levels; nobody indents a line by 120 columns.
   */
  levels: 60,
  /**
   * The most offsets of underlined headings, added up. For each of them the parser copies what it has
   * read of the chapter, so this is about the number of signs copied. A chapter of 100 KB, as long as
   * any in a book, may have 2,000 such headings; one of 1 MB, the longest there is, 200.
   */
  copied: 100_000_000,
  /** The most definitions `[name]: address`: for each `[name]` the parser looks through all of them. */
  definitions: 2000,
  /**
   * The most lines looked back to. A line that goes on with a quote or an item without its sign makes
   * the parser look back to the beginning of the paragraph. This is one of 6,000 such lines, or 2,000
   * of 140. Moves of 250 KB without an empty line, the longest that `import` writes, look like four
   * million.
   */
  lookedBack: 20_000_000,
};

const blank = /^[ \t]*$/;
const definition = /^[ \t>]*\[[^\]]+\]:/;
const underline = /^[ \t>]*(?:=+|-+)[ \t]*$/;

/** Not at once: the first number that is written in a language loads its data, a twentieth of the program's start. */
const reasons = () =>
  ({
    depth: {
      message: `This line could stand in more than ${lineLimits.levels} quotes and lists, so it is not read.`,
      hint: 'Leave out most of the signs and of the space at its beginning.',
    },
    headings: {
      message: 'This chapter has too many underlined headings; this one is not read.',
      hint: 'Begin headings with `#` instead of underlining them.',
    },
    definitions: {
      message: `This chapter defines more than ${lineLimits.definitions.toLocaleString('en')} addresses and footnotes; this one is not read.`,
      hint: 'Divide the chapter into several.',
    },
    lazy: {
      message: 'This line is not read: too many go on with a quote or a list without its sign.',
      hint: 'Begin each line of a quote with `>`, indent the lines of a list, and leave lines empty.',
    },
  }) as const;

type Reason = keyof ReturnType<typeof reasons>;

/**
 * Empties the lines of a chapter for which the parser of Markdown would take more than a number of
 * steps that grows with the chapter, and returns a node for the first of each kind. It knows lines
 * and no blocks, and so counts too much rather than too little.
 */
export function limitLines(
  text: string,
  limits = lineLimits,
): { text: string; excess: ExcessNode[] } {
  const judge = createJudge(limits);
  const found = new Map<Reason, { start: number; end: number }>();
  const parts: string[] = [];
  let done = 0;
  const starts = lineStarts(text);
  for (const [index, start] of starts.entries()) {
    const line = text.slice(start, starts[index + 1]).replace(/[\r\n]+$/, '');
    const reason = judge(line, start);
    if (reason === undefined) continue;
    const end = start + line.length;
    if (!found.has(reason)) found.set(reason, { start, end });
    parts.push(text.slice(done, start), ' '.repeat(line.length));
    done = end;
  }
  if (parts.length === 0) return { text, excess: [] };
  const pointAt = createLocator(text);
  const excess = [...found].map(
    ([reason, { start, end }]): ExcessNode => ({
      type: 'excess',
      ...reasons()[reason],
      position: { start: pointAt(start), end: pointAt(end) },
    }),
  );
  return { text: parts.join('') + text.slice(done), excess };
}

/** A function that is given the lines in their order and tells why one of them is too much. */
function createJudge(
  limits: typeof lineLimits,
): (line: string, offset: number) => Reason | undefined {
  let copied = 0;
  let definitions = 0;
  let lookedBack = 0;
  /** Of the lines since the last empty one: their number, and the most levels of one. */
  let lines = 0;
  let most = 0;
  return (line, offset) => {
    const reason = blank.test(line) ? undefined : tooMuch(line, offset);
    // What is not read is an empty line to the parser.
    if (reason !== undefined || blank.test(line)) {
      lines = 0;
      most = 0;
    }
    return reason;
  };

  function tooMuch(line: string, offset: number): Reason | undefined {
    const { levels, signs } = countLevels(line);
    if (signs > 0 && levels > limits.levels) return 'depth';
    if (lines > 0 && underline.test(line)) {
      copied += offset;
      if (copied > limits.copied) return 'headings';
    }
    if (definition.test(line)) {
      definitions++;
      if (definitions > limits.definitions) return 'definitions';
    }
    if (levels < most) {
      lookedBack += lines;
      if (lookedBack > limits.lookedBack) return 'lazy';
    }
    lines++;
    most = Math.max(most, levels);
    return undefined;
  }
}
