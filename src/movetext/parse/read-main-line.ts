import { scanResult } from '../scan/scan-result.ts';
import { type Scanned, Scanner } from '../scan/scanner.ts';
import type { Tag } from '../types.ts';

/** The next thing of a game's main line: a move as it is written, or what stops the reading. */
export type MainLineStep =
  | string
  | {
      readonly kind: 'text-unreadable' | 'comment-unclosed' | 'variation-unclosed';
      readonly text: string;
    };

export interface MainLine {
  /** The tag pairs before the moves, by name; of a name that is given twice, the first. */
  readonly tags: ReadonlyMap<string, string>;
  /**
   * The next step, or undefined at the end. Read as far as it is asked for, and once. Comments, glyphs and
   * variations are passed over.
   */
  readonly next: () => MainLineStep | undefined;
  /** The same without passing it. */
  readonly peek: () => MainLineStep | undefined;
  /** The result behind the moves, as the PGN standard spells it; undefined where there is none, or before it is read. */
  readonly result: () => string | undefined;
}

/**
 * The tags and the main line of one game. Unlike `parseGames` it reads no further than its caller
 * does, which counts where only the beginnings of many thousand games are wanted.
 */
export function readMainLine(text: string): MainLine {
  const scanner = new Scanner(text);
  const tags = new Map<string, string>();
  for (let token = scanner.peek(); ; token = scanner.peek()) {
    // What stands in brackets before the moves is a tag that cannot be read.
    const isTagLike = token.kind === 'words' && text.charCodeAt(token.start) === 91;
    if (token.kind === 'tag') readTag(token);
    else if (!isTagLike && (token.kind !== 'comment' || !token.closed)) break;
    scanner.take();
  }
  return { tags, ...createSteps(text, scanner) };

  function readTag({ scanned: { tag } }: Scanned & { kind: 'tag' }): void {
    const { name, value }: Tag = tag;
    if (!tags.has(name)) tags.set(name, value);
  }
}

/** The steps one by one; no generator, which takes as long as to read the moves. */
function createSteps(text: string, scanner: Scanner): Pick<MainLine, 'next' | 'peek' | 'result'> {
  let opening: string | undefined;
  let depth = 0;
  let ended = false;
  let result: string | undefined;
  let ahead: MainLineStep | undefined;

  function read(): MainLineStep | undefined {
    while (!ended) {
      const plain = depth === 0 ? scanner.takePlainMove() : undefined;
      if (plain !== undefined) return plain;
      const token = scanner.take();
      if (token.kind === 'end') {
        ended = true;
        if (depth > 0) return { kind: 'variation-unclosed', text: opening ?? '(' };
      } else if (token.kind === 'comment') {
        if (!token.closed) return quoted('comment-unclosed', token);
      } else if (token.kind === 'open') {
        if (depth === 0) opening = quote(text, token.start, text.length);
        depth++;
      } else if (token.kind === 'close') depth = Math.max(0, depth - 1);
      else if (depth > 0) continue;
      else if (token.kind === 'move') return text.slice(token.start, token.end);
      else if (token.kind === 'result') {
        ended = true;
        result = scanResult(text, token.start)?.result;
      } else if (token.kind === 'words' || token.kind === 'near-move') {
        return quoted('text-unreadable', token);
      }
    }
    return undefined;
  }

  function quoted(kind: 'comment-unclosed' | 'text-unreadable', { start, end }: Scanned) {
    return { kind, text: quote(text, start, end) };
  }

  function peek(): MainLineStep | undefined {
    ahead ??= read();
    return ahead;
  }

  function next(): MainLineStep | undefined {
    const step = peek();
    ahead = undefined;
    return step;
  }

  return { next, peek, result: () => result };
}

function quote(text: string, start: number, end: number): string {
  return text
    .slice(start, Math.min(end, start + longestQuote))
    .replace(/\s+/g, ' ')
    .trim();
}

/** So much of a text that cannot be read is given back. */
const longestQuote = 40;
