import type { Scanned, Scanner } from '../scan/scanner.ts';
import type { Movetext, Tag } from '../types.ts';
import { LineParser } from './line-parser.ts';
import { ProblemList } from './problem-list.ts';
import * as problems from './problems.ts';

/**
 * So many moves, comments, brackets and glyphs may a game of an archive have: each takes some hundred
 * bytes of memory. A tree of a whole opening in one game has some ten thousand.
 */
const mostTokens = 250_000;

/** Reads one game or line, to the end of what the scanner scans. */
export function parseGame(
  text: string,
  scanner: Scanner,
  { ofArchive = false }: { readonly ofArchive?: boolean } = {},
): Movetext {
  const found = new ProblemList(text);
  const tags: Tag[] = [];
  const { start } = scanner.peek();
  const parser = new LineParser(text, start, found);
  const { line } = parser.root;
  let tokens = 0;
  let hasBegun = false;
  let lastEnd = start;
  for (let token = scanner.take(); token.kind !== 'end'; token = scanner.take()) {
    tokens++;
    if (ofArchive && tokens > mostTokens) {
      lastEnd = token.end;
      continue;
    }
    found.endRunBefore(token);
    if (token.kind === 'tag' && !parser.isInMoves) {
      tags.push(readTag(token, found));
      if (!hasBegun) line.span = { start: token.end, end: token.end };
      continue;
    }
    if (!hasBegun) line.span = { start: token.start, end: token.end };
    hasBegun = true;
    parser.read(token);
    lastEnd = token.end;
  }
  if (ofArchive && tokens > mostTokens) {
    const span = { start: line.span.start, end: lastEnd };
    return { tags, line: { before: [], moves: [], span }, problems: [], tooLong: true };
  }
  parser.finish(lastEnd);
  const { escaped } = scanner;
  return { tags, line, ...found.all(), ...(escaped.length > 0 && { escaped }) };
}

function readTag({ scanned }: Scanned & { kind: 'tag' }, found: ProblemList): Tag {
  if (scanned.broken !== undefined) found.report(problems.tagUnreadable(scanned.broken));
  return scanned.tag;
}
