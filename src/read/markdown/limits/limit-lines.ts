import { createLocator, lineStarts } from '../../../diagnostics/index.ts';
import { countLevels } from './count-levels.ts';
import type { ExcessNode } from './excess.ts';

/** What a chapter may ask of the parser of Markdown. */
export const lineLimits = {
  /**
   * The most quotes, lists and footnotes that a line may be inside. The parser matches each line with all of them,
   * and reads a list to its end to build it. Text may be nested 50 levels deep (`limitNesting`), where a list counts
   * as two levels; nobody indents a line by 120 columns.
   */
  levels: 60,
  /**
   * The most that the offsets of underlined headings may add up to. For each, the parser copies what it has read so
   * far, so the sum is about the number of characters copied. A chapter of 100 KB, as long as any in a book, may have
   * 2,000 such headings; one of 1 MB, the longest allowed, 200.
   */
  copied: 100_000_000,
  /** The most definitions `[name]: address`: the parser searches them all for each `[name]`. */
  definitions: 2000,
  /**
   * The most lines that the parser may look back over. A line that continues a quote or an item without its marker
   * makes it look back to the start of the paragraph. One paragraph of 6,000 such lines reaches the limit, or 2,000
   * of 140. Moves of 250 KB without an empty line, the longest that `import` writes, count as four million.
   */
  lookedBack: 20_000_000,
};

const blank = /^[ \t]*$/;
const definition = /^[ \t>]*\[[^\]]+\]:/;
const underline = /^[ \t>]*(?:=+|-+)[ \t]*$/;

/** Lazy: formatting the first number loads the data of its language, a twentieth of the program's start. */
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
 * Empties the lines for which the Markdown parser would take more than linear time, and returns a node for the first
 * of each kind. It knows lines and no blocks, so it counts too much rather than too little.
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

/** Returns a function that takes the lines in order and says why one of them is too much. */
function createJudge(
  limits: typeof lineLimits,
): (line: string, offset: number) => Reason | undefined {
  let copied = 0;
  let definitions = 0;
  let lookedBack = 0;
  /** Since the last empty line: how many lines, and the deepest level of one. */
  let lines = 0;
  let most = 0;
  return (line, offset) => {
    const reason = blank.test(line) ? undefined : tooMuch(line, offset);
    // The parser sees a line that is left out as empty.
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
