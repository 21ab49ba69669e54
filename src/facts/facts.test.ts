import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import {
  initialPosition,
  isMoveFault,
  legalMoves,
  type Position,
  playMove,
} from '../chess/index.ts';
import {
  beforeMove,
  type EngineFact,
  inPawns,
  makeEngineFacts,
  makeFactsFile,
  parseFactsFile,
  parseScore,
  type Score,
  scoreOfMove,
  writeScore,
} from './index.ts';

const pawns = (hundredths: number): Score => ({ kind: 'pawns', hundredths });
const mate = (moves: number): Score => ({ kind: 'mate', moves });

const anyScore = fc.oneof(
  fc.integer({ min: -99_999, max: 99_999 }).map(pawns),
  fc
    .integer({ min: -300, max: 300 })
    .filter((moves) => moves !== 0)
    .map(mate),
);

/** A position some random moves away from the start, and a line from it. */
const anyFact = fc
  .record({
    way: fc.array(fc.nat(), { maxLength: 12 }),
    engine: fc.constantFrom('Fake 1', 'Fake 2', 'Größer 3 & more'),
    settings: fc.constantFrom('depth 12, lines 3, hash 16', 'nodes 400000, lines 1, hash 64'),
    depth: fc.integer({ min: 1, max: 245 }),
    scores: fc.array(anyScore, { minLength: 1, maxLength: 4 }),
  })
  .map(({ way, scores, ...rest }): EngineFact => {
    let position: Position = initialPosition;
    for (const at of way) {
      const moves = legalMoves(position);
      const played = moves.length > 1 && playMove(position, moves[at % moves.length] ?? '');
      // A game that is over has no line to go on with.
      if (!played || isMoveFault(played) || legalMoves(played.after).length === 0) break;
      position = played.after;
    }
    const legal = legalMoves(position);
    const lines = scores.map((score, at) => ({ score, moves: [legal[at % legal.length] ?? ''] }));
    return { ...rest, key: position.key, lines };
  });

describe('a file of facts', () => {
  test('is read as it was written, and written as it was read', () => {
    fc.assert(
      fc.property(fc.array(anyFact, { maxLength: 8 }), (facts) => {
        const text = makeFactsFile(facts);
        const read = parseFactsFile(text);
        expect(read.faults).toEqual([]);
        const name = ({ key, engine, settings }: EngineFact) => `${key} ${engine} ${settings}`;
        const wanted = new Map(facts.map((fact) => [name(fact), fact]));
        expect(new Map(read.facts.map((fact) => [name(fact), fact]))).toEqual(wanted);
        expect(makeFactsFile([...read.facts].reverse())).toBe(text);
      }),
      { numRuns: runs(100) },
    );
  });

  const row = (cells: readonly string[]) => `${cells.join('\t')}\n`;
  const key = '8/8/4k3/8/8/4K3/4P3/8 w - -';
  test.each([
    [[key, 'E', 's', '3'], 'it has 4 columns, and five are needed'],
    [['8/8 w - -', 'E', 's', '3', '+0.10 e4'], 'its position is none: '],
    [[`${key} 0 1`, 'E', 's', '3', '+0.10 e4'], `its position is none: ${key} 0 1`],
    [[key, ' ', 's', '3', '+0.10 e4'], 'it names no engine'],
    [[key, 'E', 's', 'x', '+0.10 e4'], 'its depth is no number: x'],
    [[key, 'E', 's', '3', '+0.1 e4'], '+0.1 is no score'],
    [[key, 'E', 's', '3', '+0.10'], 'no move stands behind +0.10'],
    [[key, 'E', 's', '3', '+0.10 e4 e9'], 'e9 is no move'],
    [['<<<<<<< HEAD'], 'it is a mark of a merge that git left open'],
  ])('names what is wrong in a line: %j', (cells, reason) => {
    const good = row([key, 'E', 's', '3', '+2.10 e4 Kd6; #5 Kd4']);
    const { facts, faults } = parseFactsFile(`# head\n${row(cells)}\r\n${good}`);
    expect(faults).toEqual([{ line: 2, reason: expect.stringContaining(reason) }]);
    expect(facts).toHaveLength(1);
  });
});

describe('scores', () => {
  test.each([
    ['+0.31', pawns(31)],
    ['0.00', pawns(0)],
    ['-12.05', pawns(-1205)],
    ['#3', mate(3)],
    ['#-2', mate(-2)],
  ])('%s', (text, score) => {
    expect(writeScore(score)).toBe(text);
    expect(parseScore(text)).toEqual(score);
  });

  test.each(['', '+', '0', '.10', '#', '#x', '+0.100', '1e5', 'NaN'])('%j is none', (text) => {
    expect(parseScore(text)).toBeUndefined();
  });

  test('before the move that led there they are the other side’s', () => {
    expect(beforeMove(pawns(31))).toEqual(pawns(-31));
    expect(beforeMove(pawns(0))).toEqual(pawns(0));
    // Who is mated in two was mated in three by the move that led here.
    expect(beforeMove(mate(-2))).toEqual(mate(3));
    expect(beforeMove(mate(2))).toEqual(mate(-2));
  });

  test('beyond five pawns all is won', () => {
    expect([pawns(80), pawns(730), mate(4), mate(-1)].map(inPawns)).toEqual([0.8, 5, 5, -5]);
  });
});

test('the deepest result counts', () => {
  const fact = (depth: number, engine = 'B'): EngineFact => ({
    key: initialPosition.key,
    engine,
    settings: 's',
    depth,
    lines: [{ score: pawns(depth), moves: ['e4'] }],
  });
  const { at, size } = makeEngineFacts([fact(8), fact(12), fact(12, 'A'), fact(10)]);
  expect(size).toBe(1);
  expect(at(initialPosition.key)).toEqual(fact(12, 'A'));
  expect(at('other')).toBeUndefined();
});

test('a move is worth what its line says, else what is said of the position after it', () => {
  const here: EngineFact = {
    key: initialPosition.key,
    engine: 'E',
    settings: 's',
    depth: 9,
    lines: [{ score: pawns(30), moves: ['e4'] }],
  };
  const move = (san: string) => {
    const played = playMove(initialPosition, san);
    if (isMoveFault(played)) throw new Error(played.reason);
    return { san, to: played.after };
  };
  const after = { ...here, key: '', lines: [{ score: pawns(90), moves: ['d5'] }] };
  expect(scoreOfMove(move('e4'), { here, after })).toEqual(pawns(30));
  expect(scoreOfMove(move('g4'), { here, after })).toEqual(pawns(-90));
  expect(scoreOfMove(move('g4'), { here, after: undefined })).toBeUndefined();
});
