import { readFileSync } from 'node:fs';
import { type ChildNode, type Node, type PgnNodeData, parsePgn } from 'chessops/pgn';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { parseGames } from './parse/parse-games.ts';
import { parseMovetext } from './parse/parse-movetext.ts';
import type { PlainComment, PlainLine, PlainMovetext } from './plain.ts';
import {
  arbitraryMovetext,
  arbitraryText,
  proseText,
  regularMoves,
} from './testing/arbitrary-movetext.ts';
import { plain } from './testing/outline.ts';
import type { Comment, Line, Movetext, Span, WrittenMove } from './types.ts';
import { makeMovetext } from './write/make-movetext.ts';

describe('writing and reading are inverse', () => {
  test('a tree is read back as it was, when lines may be of any length', () => {
    fc.assert(
      fc.property(arbitraryMovetext(), (tree) => {
        const read = parseMovetext(makeMovetext(tree, { width: Number.POSITIVE_INFINITY }));
        expect(read.problems).toEqual([]);
        expect(plain(read)).toEqual(plain(tree));
      }),
      { numRuns: runs(100) },
    );
  });

  test('in lines of 79 columns, a line break may stand for a space in a comment, nothing else', () => {
    fc.assert(
      fc.property(arbitraryMovetext(), (tree) => {
        const read = parseMovetext(makeMovetext(tree));
        expect(read.problems).toEqual([]);
        expect(flatten(plain(read))).toEqual(flatten(plain(tree)));
      }),
      { numRuns: runs(100) },
    );
  });

  test('whatever is read from any text is written so that it is read back', () => {
    fc.assert(
      fc.property(arbitraryText, (text) => {
        const read = parseMovetext(text);
        const written = makeMovetext(read);
        const again = parseMovetext(written);
        expect(again.problems).toEqual([]);
        expect(flatten(plain(again))).toEqual(flatten(plain(read)));
        expect(makeMovetext(again)).toBe(written);
      }),
      { numRuns: runs(1000) },
    );
  });

  test('every line has fewer than 80 columns (PGN standard, 8.2.1)', () => {
    const options = { forms: ['brace'] as const, text: proseText };
    fc.assert(
      fc.property(arbitraryMovetext(options), ({ line }) => {
        for (const written of makeMovetext({ tags: [], line }).split('\n')) {
          expect(written.length).toBeLessThan(80);
          expect(written).toBe(written.trim());
        }
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('any text', () => {
  test('is read without an exception, with places that are in range, in order and exact', () => {
    fc.assert(
      fc.property(arbitraryText, (text) => checkPlaces(text, parseMovetext(text))),
      { numRuns: runs(2000) },
    );
  });

  test('is read as an archive too, one game after another', () => {
    fc.assert(
      fc.property(arbitraryText, (text) => {
        let end = 0;
        for (const game of parseGames(text)) {
          checkPlaces(text, game);
          const start = Math.min(game.tags[0]?.span.start ?? text.length, game.line.span.start);
          expect(start).toBeGreaterThanOrEqual(end);
          end = game.line.span.end;
        }
      }),
      { numRuns: runs(2000) },
    );
  });

  test.each(['1. e4 {a} (1. d4 $1) e5!', '((((', '[A "b"', '{'])('cut anywhere: %s', (text) => {
    for (let end = 0; end <= text.length; end++) {
      checkPlaces(text.slice(0, end), parseMovetext(text.slice(0, end)));
    }
  });
});

// A reader that recurses does not come back from these, at night five times as long; that the time grows no faster than
// the text is what tests/growth counts.
describe('the worst, and very long', () => {
  const size = Math.min(runs(20_000), 100_000);
  test.each([
    '(',
    ')',
    '{',
    '}',
    '[',
    ';',
    '%',
    '$',
    '!',
    '+',
    '-',
    '=',
    '*',
    '1',
    '½',
    '0-',
    '1 ',
    '1. ',
    '. ',
    'e4(',
    'e8(',
    '()',
    'e4()',
    '[A "',
    '[A "x\n',
    '\n\n[Event "x"]\n\n{',
    '\n[Event "x"]',
    'x',
    'a-',
    'exd6   ',
    '-- ',
    '♘',
    '😀',
    '\n',
    '\n%',
    '{[%',
    'words ',
    '1-0 (',
    '"',
    '\\',
  ])('%j', (part) => {
    const text = `e4${part.repeat(Math.ceil(size / part.length))}`;
    const read = parseMovetext(text);
    expect(read.line.span.end).toBeLessThanOrEqual(text.length);
    expect(parseGames(text).length).toBeGreaterThan(0);
    expect(typeof makeMovetext(read)).toBe('string');
  });

  test('100,000 variations within one another', () => {
    const depth = 100_000;
    const text = `${'1. e4 ('.repeat(depth)}1. d4${')'.repeat(depth)}`;
    const read = parseMovetext(text);
    expect(read.problems).toEqual([]);
    let line = read.line;
    let deepest = 0;
    for (let item = line.moves[0]?.after[0]; item?.type === 'variation'; deepest++) {
      line = item.line;
      item = line.moves[0]?.after[0];
    }
    expect(deepest).toBe(depth);
    expect(makeMovetext(read).replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
  });
});

// chessops is an independent reader of PGN; GPL, so for tests only.
describe('as chessops reads it', () => {
  test('what we write has the same moves, glyphs and variations there', () => {
    const options = { moves: regularMoves, forms: ['brace'] as const };
    fc.assert(
      fc.property(arbitraryMovetext(options), ({ line }) => {
        const [game] = parsePgn(makeMovetext({ tags: [], line }));
        expect(game === undefined ? undefined : readTheirs(game.moves)).toEqual(
          readOurs(line.moves),
        );
      }),
    );
  });
});

/** Moves with their glyphs, each with the variations to it. */
interface Step {
  readonly san: string;
  readonly nags: readonly number[];
  readonly others: readonly (readonly Step[])[];
}

function readOurs(moves: PlainLine['moves']): Step[] {
  return moves.map(({ san, glyphs, after }) => ({
    san: san.text,
    nags: glyphs.map(({ nag }) => nag),
    others: after.flatMap((item) =>
      item.type === 'variation' ? liftFirst(readOurs(item.line.moves)) : [],
    ),
  }));
}

/** A variation to the first move of a variation is, there, one more to the move before. */
function liftFirst(line: readonly Step[]): (readonly Step[])[] {
  const [first, ...rest] = line;
  return first === undefined ? [] : [[{ ...first, others: [] }, ...rest], ...first.others];
}

/** There, a variation is a later child of the node before the move that it replaces. */
function readTheirs(start: Node<PgnNodeData>): Step[] {
  const steps: Step[] = [];
  for (let node = start; node.children[0] !== undefined; node = node.children[0]) {
    const [main, ...others] = node.children;
    steps.push(
      makeStep(
        main,
        others.map((other) => [makeStep(other, []), ...readTheirs(other)]),
      ),
    );
  }
  return steps;
}

function makeStep({ data }: ChildNode<PgnNodeData>, others: readonly (readonly Step[])[]): Step {
  return { san: data.san, nags: data.nags ?? [], others };
}

function flatten(tree: PlainMovetext): PlainMovetext {
  const flattenComment = (comment: PlainComment) => ({
    ...comment,
    text: comment.text.replace(/\n/g, ' '),
  });
  const flattenLine = (line: PlainLine): PlainLine => ({
    ...line,
    before: line.before.map(flattenComment),
    moves: line.moves.map((move) => ({
      ...move,
      after: move.after.map((item) =>
        item.type === 'comment' ? flattenComment(item) : { ...item, line: flattenLine(item.line) },
      ),
    })),
  });
  return { ...tree, line: flattenLine(tree.line) };
}

function checkPlaces(text: string, { tags, line, problems }: Movetext): void {
  checkOrder(
    text,
    tags.map((tag) => tag.span),
  );
  checkOrder(
    text,
    problems.map(({ span }) => ({ start: span.start, end: span.start })),
  );
  for (const { span } of problems) checkRange(text, span);
  checkLine(text, line);
}

function checkLine(text: string, line: Line): void {
  checkRange(text, line.span);
  const inner: Span[] = line.before.map((comment) => comment.outer);
  for (const comment of line.before) checkComment(text, comment);
  for (const move of line.moves) {
    checkMove(text, move);
    inner.push(
      move.san.span,
      ...move.after.map((item) => ('outer' in item ? item.outer : item.span)),
    );
  }
  const outside = inner.filter(({ start, end }) => start < line.span.start || end > line.span.end);
  if (outside.length > 0) expect(outside).toEqual([]);
  checkOrder(
    text,
    line.moves.map((move) => move.san.span),
  );
}

function checkMove(text: string, move: WrittenMove): void {
  const parts = [...(move.number ? [move.number] : []), move.san, ...move.glyphs];
  for (const { span, text: own } of parts) {
    const there = text.slice(span.start, span.end);
    if (there !== own) expect(there).toBe(own);
  }
  checkOrder(
    text,
    parts.map(({ span }) => span),
  );
  for (const item of move.after) {
    if (item.type === 'comment') checkComment(text, item);
    else {
      const { span, line } = item;
      const isWithin = line.span.start === span.start + 1 && line.span.end <= span.end;
      if (text[span.start] !== '(' || !isWithin)
        expect.fail(`no variation: ${JSON.stringify(span)}`);
      checkLine(text, line);
    }
  }
}

function checkComment(text: string, comment: Comment): void {
  const inner = text.slice(comment.span.start, comment.span.end);
  if (inner !== comment.text) expect(inner).toBe(comment.text);
  const outer = text.slice(comment.outer.start, comment.outer.end);
  const opened = `${comment.form === 'brace' ? '{' : ';'}${comment.text}`;
  if (outer !== opened && outer !== `${opened}}`) expect(outer).toBe(opened);
}

function checkOrder(text: string, spans: readonly Span[]): void {
  let end = 0;
  for (const span of spans) {
    checkRange(text, span);
    if (span.start < end) expect.fail(`${span.start} lies before ${end}`);
    end = span.end;
  }
}

/** Without an expectation for each: a text of 100,000 characters has as many places. */
function checkRange(text: string, { start, end }: Span): void {
  const isWithin = 0 <= start && start <= end && end <= text.length;
  if (!isWithin) expect.fail(`${start} to ${end} is no range of ${text.length} characters`);
}

const ecoFile = '/usr/share/pgn-extract/eco.pgn';
const eco = readIfPresent(ecoFile);

function readIfPresent(file: string): string | undefined {
  try {
    return readFileSync(file, 'latin1');
  } catch {
    return undefined;
  }
}

// Debian's package pgn-extract; the counts were taken with grep and with chessops.
describe.skipIf(eco === undefined)(`${ecoFile}, 2,014 lines of openings`, () => {
  const games = parseGames(eco ?? '');

  test('is read without a problem', () => {
    expect(games.length).toBe(2014);
    expect(games.reduce((sum, game) => sum + game.line.moves.length, 0)).toBe(20_697);
    expect(games.flatMap((game) => game.problems)).toEqual([]);
  });

  test('has the moves and tags that chessops reads', () => {
    // There, the comment at the top of the file is a game without moves.
    const theirs = parsePgn(eco ?? '', () => new Map()).slice(1);
    expect(games.map((game) => readOurs(game.line.moves))).toEqual(
      theirs.map((game) => readTheirs(game.moves)),
    );
    expect(games.map((game) => game.tags.map(({ name, value }) => [name, value]))).toEqual(
      theirs.map((game) => [...game.headers]),
    );
  });

  test('is read back after being written', () => {
    const written = games.map((game) => makeMovetext(game)).join('\n');
    expect(parseGames(written).map(plain)).toEqual(games.map(plain));
  });
});
