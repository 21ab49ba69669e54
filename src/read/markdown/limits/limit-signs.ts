import type { Extension as FromMarkdownExtension } from 'mdast-util-from-markdown';
import { codeText } from 'micromark-core-commonmark';
import { markdownLineEnding } from 'micromark-util-character';
import type {
  Code,
  Construct,
  Effects,
  Extension,
  State,
  TokenizeContext,
} from 'micromark-util-types';
import type { ExcessNode } from './excess.ts';

declare module 'micromark-util-types' {
  interface TokenTypeMap {
    signExcess: 'signExcess';
    openExcess: 'openExcess';
    excessData: 'excessData';
  }
}

/** Limits for one paragraph, heading, cell or comment. */
export const signLimits = {
  /**
   * The most brackets and runs of `*` and `_`. From each the parser looks back to the start, so n of them take n²
   * steps; with this limit a chapter of nothing else takes at most ten times as long as one of links. The most in the
   * courses of this repository is 24; 120 links in one sentence have 240.
   */
  signs: 300,
  /**
   * The most backticks and `<` that open nothing, which the parser knows only at the end of the paragraph. Real text
   * has one where something was forgotten.
   */
  unclosed: 50,
};

const [star, less, opening, closing, underscore, backtick] = [42, 60, 91, 93, 95, 96];

/** Takes the rest of a text unread once it has more than `most` of the given characters. */
function counter(token: 'signExcess' | 'openExcess', most: number): Construct {
  const counts = new WeakMap<TokenizeContext, number>();
  return {
    name: token,
    tokenize(this: TokenizeContext, effects: Effects, ok: State, nok: State): State {
      return (code) => {
        const count = (counts.get(this) ?? 0) + 1;
        counts.set(this, count);
        if (count <= most) return nok(code);
        effects.enter(token);
        return between(code);
      };
      // A line end must be a token of its own: asked for another line, the tokenizer would never end.
      function between(code: Code): State | undefined {
        if (code === null) {
          effects.exit(token);
          return ok(code);
        }
        if (markdownLineEnding(code)) {
          effects.enter('lineEnding');
          effects.consume(code);
          effects.exit('lineEnding');
          return between;
        }
        effects.enter('excessData');
        return within(code);
      }
      function within(code: Code): State | undefined {
        if (code === null || markdownLineEnding(code)) {
          effects.exit('excessData');
          return between(code);
        }
        effects.consume(code);
        return within;
      }
    },
  };
}

/** Goes behind all other extensions, so that characters are counted before they are read. */
export function limitSigns(limits = signLimits): Extension {
  const signs = counter('signExcess', limits.signs);
  // Runs when no other construct has taken the character.
  const unclosed: Construct = { ...counter('openExcess', limits.unclosed), add: 'after' };
  return {
    text: {
      [star]: signs,
      [opening]: signs,
      [closing]: signs,
      [underscore]: signs,
      [less]: unclosed,
      // Otherwise it would look for code inside a run of backticks.
      [backtick]: { ...unclosed, previous: codeText.previous },
    },
  };
}

/** A paragraph ends here at the latest. */
const emptyLine = /\n[ \t]*\r?\n/;
const allSigns = /[*[\]_]/g;
const allOpening = /[<`]/g;

/**
 * Whether some paragraph may exceed the limits. It knows lines and no blocks, so it counts too much rather than too
 * little. Counting while parsing would cost a tenth of the parsing, and hardly a text needs it.
 */
export function mayExceedSigns(text: string, limits = signLimits): boolean {
  return text
    .split(emptyLine)
    .some(
      (part) =>
        part.length > limits.unclosed &&
        ((part.match(allSigns)?.length ?? 0) > limits.signs ||
          (part.match(allOpening)?.length ?? 0) > limits.unclosed),
    );
}

type Excess = Pick<ExcessNode, 'type' | 'message' | 'hint'>;

const signExcess: Excess = {
  type: 'excess',
  message: `From here on this paragraph is not read: it has more than ${signLimits.signs} brackets, stars and underscores.`,
  hint: 'Divide it by empty lines, and put a backslash before signs that mean nothing.',
};

const openExcess: Excess = {
  type: 'excess',
  message: `From here on this paragraph is not read: more than ${signLimits.unclosed} backticks and angle brackets in it are not closed.`,
  hint: 'Close them, or put a backslash before them.',
};

export const signLimitFromMarkdown: FromMarkdownExtension = {
  enter: {
    signExcess(token) {
      this.enter({ ...signExcess }, token);
    },
    openExcess(token) {
      this.enter({ ...openExcess }, token);
    },
  },
  exit: {
    signExcess(token) {
      this.exit(token);
    },
    openExcess(token) {
      this.exit(token);
    },
  },
};
