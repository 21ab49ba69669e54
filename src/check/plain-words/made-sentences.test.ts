/**
 * Sentences that are made of random positions, in three languages, with a truth that is found by counting
 * in the FEN: apart from the forms, which ask claims and boards. A true one has no finding; one that is false
 * in the last three positions has one.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import {
  initialPosition,
  isMoveFault,
  legalMoves,
  type Position,
  playMove,
} from '../../chess/index.ts';
import { readSentence } from './testing/read-passage.ts';

/** The board of a FEN by square, as letters. */
function boardOf(fen: string): Map<string, string> {
  const board = new Map<string, string>();
  for (const [row, ranks] of (fen.split(' ')[0] ?? '').split('/').entries()) {
    let file = 0;
    for (const sign of ranks) {
      if (/\d/.test(sign)) file += Number(sign);
      else board.set(`${'abcdefgh'[file++]}${8 - row}`, sign);
    }
  }
  return board;
}

type Fact = (fen: string) => boolean;
interface Made {
  readonly en: string;
  readonly de: string;
  readonly es: string;
  readonly isTrue: Fact;
}

const words = {
  N: ['knight', 'Der Springer', 'El caballo'],
  B: ['bishop', 'Der Läufer', 'El alfil'],
  R: ['rook', 'Der Turm', 'La torre'],
  Q: ['queen', 'Die Dame', 'La dama'],
} as const;

function pawns(fen: string, of: 'P' | 'p'): string[] {
  return [...boardOf(fen)].flatMap(([square, sign]) => (sign === of ? [square] : []));
}

const onFile = (squares: readonly string[], file: string) =>
  squares.filter(([own]) => own === file);

const beside = (file: string) =>
  [...'abcdefgh'].filter((other) => Math.abs(other.charCodeAt(0) - file.charCodeAt(0)) === 1);

function worth(fen: string): number {
  const values: Record<string, number> = { p: 1, n: 3, b: 3, r: 5, q: 9, k: 0 };
  return [...boardOf(fen).values()].reduce((sum, sign) => {
    const value = values[sign.toLowerCase()] ?? 0;
    return sum + (sign === sign.toLowerCase() ? -value : value);
  }, 0);
}

function isPassed(fen: string, square: string): boolean {
  const isWhite = boardOf(fen).get(square) === 'P';
  const [file = '', rank = ''] = square;
  return pawns(fen, isWhite ? 'p' : 'P').every(
    ([other = '', at = '']) =>
      !(other === file || beside(file).includes(other)) || (isWhite ? at <= rank : at >= rank),
  );
}

const square = fc
  .tuple(fc.constantFrom(...'abcdefgh'), fc.constantFrom(...'12345678'))
  .map((both) => both.join(''));
const file = fc.constantFrom(...'abcdefgh');
const isPawn = (fen: string, at: string) => boardOf(fen).get(at)?.toLowerCase() === 'p';

const made: fc.Arbitrary<Made> = fc.oneof(
  fc.tuple(fc.constantFrom('N', 'B', 'R', 'Q'), square).map(([kind, at]): Made => {
    const [en, de, es] = words[kind as keyof typeof words];
    return {
      en: `The ${en} on ${at} is well placed.`,
      de: `${de} auf ${at} steht gut.`,
      es: `${es} de ${at} está bien.`,
      isTrue: (fen) => boardOf(fen).get(at)?.toUpperCase() === kind,
    };
  }),
  square.map(
    (at): Made => ({
      en: `The pawn on ${at} is isolated.`,
      de: `Der Bauer auf ${at} ist isoliert.`,
      es: `El peón de ${at} está aislado.`,
      isTrue: (fen) =>
        isPawn(fen, at) &&
        beside(at[0] ?? '').every(
          (other) => onFile(pawns(fen, boardOf(fen).get(at) as 'P' | 'p'), other).length === 0,
        ),
    }),
  ),
  square.map(
    (at): Made => ({
      en: `The passed pawn on ${at} matters.`,
      de: `Der Freibauer auf ${at} zählt.`,
      es: `El peón pasado de ${at} cuenta.`,
      isTrue: (fen) => isPawn(fen, at) && isPassed(fen, at),
    }),
  ),
  file.map(
    (name): Made => ({
      en: `The ${name}-file is open.`,
      de: `Die ${name}-Linie ist offen.`,
      es: `La columna ${name} está abierta.`,
      isTrue: (fen) => onFile([...pawns(fen, 'P'), ...pawns(fen, 'p')], name).length === 0,
    }),
  ),
  file.map(
    (name): Made => ({
      en: `White has doubled pawns on the ${name}-file.`,
      de: `Weiß hat Doppelbauern auf der ${name}-Linie.`,
      es: `Las blancas tienen peones doblados en la columna ${name}.`,
      isTrue: (fen) => onFile(pawns(fen, 'P'), name).length > 1,
    }),
  ),
  fc.constant<Made>({
    en: 'Black is a pawn up.',
    de: 'Schwarz hat einen Bauern mehr.',
    es: 'Las negras tienen un peón de más.',
    isTrue: (fen) => worth(fen) === -1,
  }),
  fc.constant<Made>({
    en: 'White to move.',
    de: 'Weiß ist am Zug.',
    es: 'Juegan las blancas.',
    isTrue: (fen) => fen.split(' ')[1] === 'w',
  }),
);

/** Moves from the start, and the positions after the last of them, the latest first. */
const game = fc.array(fc.nat(1000), { minLength: 3, maxLength: 40 }).map((choices) => {
  let position: Position = initialPosition;
  const moves: string[] = [];
  const fens = [position.fen];
  for (const choice of choices) {
    const legal = legalMoves(position);
    const played = playMove(position, legal[choice % legal.length] ?? '');
    if (isMoveFault(played)) break;
    position = played.after;
    moves.push(moves.length % 2 ? played.san : `${moves.length / 2 + 1}. ${played.san}`);
    fens.unshift(position.fen);
  }
  return { moves: moves.join(' '), fens: fens.slice(0, 3) };
});

test('sentences that are made of positions are judged as they are', () => {
  const tally = { true: 0, false: 0 };
  fc.assert(
    fc.property(
      game,
      made,
      fc.constantFrom('en', 'de', 'es'),
      ({ moves, fens }, sentence, language) => {
        const says = sentence[language as 'en' | 'de' | 'es'];
        const { findings, stated } = readSentence({ language, moves, says });
        const [here = ''] = fens;
        expect(stated.length, says).toBeGreaterThan(0);
        if (sentence.isTrue(here)) {
          tally.true++;
          expect(findings).toEqual([]);
        } else if (!fens.some((fen) => sentence.isTrue(fen)) || /move|Zug|Juegan/.test(says)) {
          tally.false++;
          expect(findings.length, says).toBeGreaterThan(0);
        }
      },
    ),
    { numRuns: runs(300) },
  );
  // A quick run has a quarter of them.
  expect(Math.min(tally.true, tally.false)).toBeGreaterThanOrEqual(Math.min(6, runs(6)));
});
