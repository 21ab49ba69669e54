/**
 * Reads what an engine says, a line at a time, by the description of the Universal Chess Interface of April 2006.
 * Nothing is taken for granted: white space of any kind and length stands between words, fields come in any order,
 * and what is not known is passed over.
 */
import type { Score } from '../../facts/index.ts';

export interface UciOption {
  readonly name: string;
  readonly type: string;
  readonly min?: number;
  readonly max?: number;
}

/** What an engine tells while it searches. */
export interface UciInfo {
  readonly depth?: number;
  readonly nodes?: number;
  /** Which of its best lines, from 1. */
  readonly rank: number;
  /** For the side to move. */
  readonly score?: Score;
  /** Whether the score is a bound only: the value lies above or below it. */
  readonly isBound: boolean;
  readonly moves: readonly string[];
}

export type UciMessage =
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'option'; readonly option: UciOption }
  | { readonly kind: 'uciok' | 'readyok' | 'other' }
  | { readonly kind: 'info'; readonly info: UciInfo }
  /** `move` is as the engine wrote it: `(none)` and `0000` stand for none. */
  | { readonly kind: 'bestmove'; readonly move: string };

const commands = new Set(['id', 'option', 'uciok', 'readyok', 'info', 'bestmove']);

export function parseUciLine(line: string): UciMessage {
  const all = line.trim().split(/\s+/);
  // Words before the first that is known are passed over, as the description asks for.
  const start = all.findIndex((word) => commands.has(word));
  const [command, ...words] = start < 0 ? [] : all.slice(start);
  switch (command) {
    case 'uciok':
    case 'readyok':
      return { kind: command };
    case 'id':
      if (words[0] !== 'name' || words.length < 2) return { kind: 'other' };
      return { kind: 'name', name: words.slice(1).join(' ') };
    case 'option':
      return parseOption(words);
    case 'bestmove':
      return { kind: 'bestmove', move: words[0] ?? '' };
    case 'info':
      return { kind: 'info', info: parseInfo(words) };
    default:
      return { kind: 'other' };
  }
}

function parseOption(words: readonly string[]): UciMessage {
  const fields = new Map<string, string[]>();
  let current: string[] | undefined;
  for (const word of words) {
    // Only a name may hold any word, and the first word behind it that begins another field ends it.
    if (/^(?:name|type|default|min|max|var)$/.test(word)) {
      current = [];
      fields.set(word, current);
    } else current?.push(word);
  }
  const name = fields.get('name')?.join(' ') ?? '';
  if (name === '') return { kind: 'other' };
  const limit = (field: string) => {
    const [text = ''] = fields.get(field) ?? [];
    return /^-?\d+$/.test(text) ? { [field]: Number(text) } : {};
  };
  const type = fields.get('type')?.[0] ?? '';
  return { kind: 'option', option: { name, type, ...limit('min'), ...limit('max') } };
}

/** Fields of `info` that have one number behind them. */
const numbers = new Set([
  'depth',
  'seldepth',
  'time',
  'nodes',
  'multipv',
  'currmovenumber',
  'hashfull',
  'nps',
  'tbhits',
  'sbhits',
  'cpuload',
]);

const isMove = (word: string | undefined) =>
  /^(?:[a-h][1-8][a-h][1-8][qrbn]?|0000)$/.test(word ?? '');

function parseInfo(words: readonly string[]): UciInfo {
  const found = new Map<string, number>();
  let score: Score | undefined;
  let isBound = false;
  let moves: readonly string[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    if (word === 'string') break;
    if (numbers.has(word)) {
      const number = words[at + 1] ?? '';
      if (/^\d{1,15}$/.test(number)) found.set(word, Number(number));
    } else if (word === 'score') {
      score = parseScore(words[at + 1], words[at + 2]);
      if (score) at += 2;
    } else if (word === 'lowerbound' || word === 'upperbound') isBound = true;
    else if (word === 'pv') {
      const end = words.findIndex((each, index) => index > at && !isMove(each));
      moves = words.slice(at + 1, end < 0 ? words.length : end);
      at += moves.length;
    }
  }
  const [depth, nodes] = [found.get('depth'), found.get('nodes')];
  return {
    ...(depth === undefined ? {} : { depth }),
    ...(nodes === undefined ? {} : { nodes }),
    rank: found.get('multipv') ?? 1,
    ...(score && { score }),
    isBound,
    moves,
  };
}

function parseScore(kind = '', number = ''): Score | undefined {
  if (!/^[+-]?\d{1,6}$/.test(number)) return undefined;
  // No -0, which is equal to nothing else.
  const value = Number(number) || 0;
  if (kind === 'cp')
    return { kind: 'pawns', hundredths: Math.max(-99_999, Math.min(99_999, value)) };
  return kind === 'mate' ? { kind: 'mate', moves: value } : undefined;
}
