import { createScanner, type Scanned } from './scanner.ts';
import type { Tag } from './types.ts';

/** The next thing of a game's main line: a move as it is written, or what stops the reading. */
export type MainLineStep =
  | { readonly kind: 'move'; readonly text: string }
  | {
      readonly kind: 'text-unreadable' | 'comment-unclosed' | 'variation-unclosed';
      readonly text: string;
    };

export interface MainLine {
  /** The tag pairs before the moves, by name; of a name that is given twice, the first. */
  readonly tags: ReadonlyMap<string, string>;
  /** Read as far as they are asked for, and once. Comments, glyphs and variations are passed over. */
  readonly steps: Iterable<MainLineStep>;
}

/**
 * The tags and the main line of one game. Unlike `parseGames` it reads no further than its caller
 * does, which counts where only the beginnings of many thousand games are wanted.
 */
export function readMainLine(text: string): MainLine {
  const scanner = createScanner(text, true);
  const tags = new Map<string, string>();
  for (let token = scanner.peek(); ; token = scanner.peek()) {
    if (token.kind === 'tag') readTag(token);
    else if (token.kind !== 'comment' || !token.closed) break;
    scanner.take();
  }
  return { tags, steps: stepsOf(text, scanner) };

  function readTag({ scanned: { tag } }: Scanned & { kind: 'tag' }): void {
    const { name, value }: Tag = tag;
    if (!tags.has(name)) tags.set(name, value);
  }
}

function* stepsOf(
  text: string,
  scanner: ReturnType<typeof createScanner>,
): Generator<MainLineStep> {
  const quote = (start: number, end: number) =>
    text
      .slice(start, Math.min(end, start + longestQuote))
      .replace(/\s+/g, ' ')
      .trim();
  let opening: string | undefined;
  let depth = 0;
  for (let token = scanner.take(); token.kind !== 'end'; token = scanner.take()) {
    if (token.kind === 'comment' && !token.closed) {
      yield { kind: 'comment-unclosed', text: quote(token.start, token.end) };
    } else if (token.kind === 'open') {
      if (depth === 0) opening = quote(token.start, text.length);
      depth++;
    } else if (token.kind === 'close') depth = Math.max(0, depth - 1);
    else if (depth > 0) continue;
    else if (token.kind === 'move')
      yield { kind: 'move', text: text.slice(token.start, token.end) };
    else if (token.kind === 'result') return;
    else if (token.kind === 'words') {
      yield { kind: 'text-unreadable', text: quote(token.start, token.end) };
    }
  }
  if (depth > 0) yield { kind: 'variation-unclosed', text: opening ?? '(' };
}

/** So much of a text that cannot be read is given back. */
const longestQuote = 40;
