import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseGames } from './parse-games.ts';
import { type MainLine, type MainLineStep, readMainLine } from './read-main-line.ts';

function stepsOf({ next }: MainLine): MainLineStep[] {
  const steps: MainLineStep[] = [];
  for (let step = next(); step !== undefined; step = next()) steps.push(step);
  return steps;
}

function read(text: string): unknown[] {
  const line = readMainLine(text);
  const { tags } = line;
  return [Object.fromEntries(tags), ...stepsOf(line)];
}

describe('readMainLine', () => {
  test('gives tags and moves, and passes over the rest', () => {
    const text = `\uFEFF[White "A \\"B\\" C"]\r\n[White "twice"]\r\n{before}\r\n1. e4! {a} $1 (1. d4 (1. c4) d5) e5\r\n% 9. Qh5\r\n2.Nf3 ; 2. Bc4\r\nNc6 1-0 3. Bb5`;
    expect(read(text)).toEqual([{ White: 'A "B" C' }, 'e4', 'e5', 'Nf3', 'Nc6']);
  });

  test('keeps every spelling of a move as it is written', () => {
    const moves = ['0-0', 'exd6 e.p.', 'e8Q', '--', '♘f3'];
    expect(read(moves.join(' '))).toEqual([{}, ...moves]);
  });

  test.each([
    ['1. e4 what now', { kind: 'text-unreadable', text: 'what' }],
    ['1. e4 {never', { kind: 'comment-unclosed', text: '{never' }],
    ['1. e4 (1. d4 d5', { kind: 'variation-unclosed', text: '(1. d4 d5' }],
  ])('says what it cannot read: %s', (text, problem) => {
    expect(read(text)[2]).toEqual(problem);
  });

  test('agrees with parseGames on every game that has no problem', () => {
    const part = fc.constantFrom(
      ...['1. e4', 'e5', '2. Nf3', '{a (b) [c]}', '(1. d4 d5)', '$3', '!', '; x\n', '\n%y\n', '+-'],
    );
    fc.assert(
      fc.property(fc.array(part, { maxLength: 12 }), (parts) => {
        const text = `[White "A"]\n${parts.join(' ')} *\n`;
        const [game] = parseGames(text);
        fc.pre(game !== undefined && game.problems.length === 0);
        expect(stepsOf(readMainLine(text))).toEqual(game?.line.moves.map(({ san }) => san.text));
      }),
    );
  });
});
