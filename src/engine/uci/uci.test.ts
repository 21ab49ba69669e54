import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createLineCollector } from './collect-lines.ts';
import { parseUciLine, type UciInfo } from './parse-line.ts';
import { createLineSplitter } from './split-lines.ts';

function infoOf(line: string): UciInfo {
  const message = parseUciLine(line);
  if (message.kind !== 'info') throw new Error(message.kind);
  return message.info;
}

describe('a line of an engine (UCI, description of April 2006)', () => {
  test.each([
    ['uciok', { kind: 'uciok' }],
    ['  readyok\r', { kind: 'readyok' }],
    ['joho debug readyok', { kind: 'readyok' }],
    ['id name Some Engine 1.2 beta', { kind: 'name', name: 'Some Engine 1.2 beta' }],
    ['id author The Authors', { kind: 'other' }],
    ['bestmove e2e4 ponder e7e5', { kind: 'bestmove', move: 'e2e4' }],
    ['bestmove\t(none)', { kind: 'bestmove', move: '(none)' }],
    ['bestmove', { kind: 'bestmove', move: '' }],
    ['', { kind: 'other' }],
    ['copyprotection ok', { kind: 'other' }],
    [
      'option name Clear Hash type button',
      { kind: 'option', option: { name: 'Clear Hash', type: 'button' } },
    ],
    [
      'option name Hash type spin default 16 min 1 max 33554432',
      { kind: 'option', option: { name: 'Hash', type: 'spin', min: 1, max: 33_554_432 } },
    ],
    [
      'option name Style type combo default Normal var Solid var Normal',
      { kind: 'option', option: { name: 'Style', type: 'combo' } },
    ],
  ])('%j', (line, message) => expect(parseUciLine(line)).toEqual(message));

  test.each([
    [
      'info depth 12 seldepth 18 multipv 2 score cp -31 nodes 4242 nps 1000 hashfull 3 tbhits 0 time 4 pv e7e5 g1f3',
      {
        depth: 12,
        rank: 2,
        score: { kind: 'pawns', hundredths: -31 },
        nodes: 4242,
        moves: ['e7e5', 'g1f3'],
      },
    ],
    [
      'info   pv a7a8q\t b7b8n  score mate -2 depth  7',
      { depth: 7, rank: 1, score: { kind: 'mate', moves: -2 }, moves: ['a7a8q', 'b7b8n'] },
    ],
    [
      'info depth 0 score mate 0',
      { depth: 0, rank: 1, score: { kind: 'mate', moves: 0 }, moves: [] },
    ],
    [
      'info score cp 20 wdl 60 900 40 lowerbound pv e2e4',
      { rank: 1, score: { kind: 'pawns', hundredths: 20 }, isBound: true, moves: ['e2e4'] },
    ],
    ['info score upperbound cp 20 pv e2e4', { rank: 1, isBound: true, moves: ['e2e4'] }],
    ['info currmove e2e4 currmovenumber 1', { rank: 1, moves: [] }],
    ['info string pv e2e4 score cp 900 depth 30', { rank: 1, moves: [] }],
    ['info depth -3 nodes many score cp x pv e2', { rank: 1, moves: [] }],
    [
      'info depth 5 pv e2e4 nonsense d2d4 score cp 1',
      { depth: 5, rank: 1, moves: ['e2e4'], score: { kind: 'pawns', hundredths: 1 } },
    ],
  ])('%j', (line, info) => expect(infoOf(line)).toEqual({ isBound: false, ...info }));

  test('nothing that it writes is more than we can read', () => {
    fc.assert(fc.property(fc.string(), (text) => parseUciLine(text) !== undefined));
  });
});

test('what comes in pieces is cut into the same lines', () => {
  const text = 'id name A\r\nuciok\ninfo depth 1\nhalf a li';
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 60, maxLength: 60 }),
      (cuts) => {
        const split = createLineSplitter();
        const lines: string[] = [];
        let at = 0;
        for (const cut of cuts) {
          lines.push(...split(text.slice(at, at + cut)));
          at += cut;
        }
        expect(lines).toEqual(['id name A\r', 'uciok', 'info depth 1']);
      },
    ),
  );
});

test('a line that is longer than any can be is passed over', () => {
  const split = createLineSplitter();
  expect(split(`a\n${'x'.repeat(40_000)}`)).toEqual(['a']);
  for (let piece = 0; piece < 30; piece++) expect(split('y'.repeat(40_000))).toEqual([]);
  expect(split('z\nb\n')).toEqual(['b']);
});

describe('the lines of a search', () => {
  const collect = (...lines: readonly string[]) => {
    const collector = createLineCollector();
    for (const line of lines) collector.add(infoOf(line));
    return collector;
  };

  test('are those of the last depth that was finished', () => {
    const { result } = collect(
      'info depth 1 multipv 1 score cp 10 pv e2e4',
      'info depth 1 multipv 2 score cp 5 pv d2d4',
      'info depth 2 multipv 1 score cp 12 pv d2d4 d7d5',
      'info depth 2 multipv 2 score cp 11 pv e2e4',
      'info depth 3 multipv 1 score cp 30 pv c2c4',
    );
    expect(result()).toEqual({
      depth: 2,
      lines: [
        { score: { kind: 'pawns', hundredths: 12 }, moves: ['d2d4', 'd7d5'] },
        { score: { kind: 'pawns', hundredths: 11 }, moves: ['e2e4'] },
      ],
    });
  });

  test('a bound is no value, and a value that comes after it counts', () => {
    expect(collect('info depth 9 score cp 50 lowerbound pv e2e4').result()).toBeUndefined();
    const { result, named } = collect(
      'info depth 8 score cp 20 pv d2d4',
      'info depth 9 score cp 50 lowerbound pv e2e4',
    );
    expect(result()?.depth).toBe(8);
    expect([named('e2e4'), named('d2d4'), named('c2c4')]).toEqual([true, true, false]);
  });

  test('an engine that gives one line however many were asked for gives one', () => {
    const { result, nodes } = collect(
      'info depth 8 score cp 20 nodes 100 pv d2d4',
      'info depth 9 score mate 3 nodes 900 pv e2e4',
    );
    expect(result()?.lines).toEqual([{ score: { kind: 'mate', moves: 3 }, moves: ['e2e4'] }]);
    expect(nodes()).toBe(900);
  });
});
