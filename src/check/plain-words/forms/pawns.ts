import { fileOf, readBoard, sideName, squaresOf } from '../../../chess/index.ts';
import type { Meaning } from '../phrase.ts';
import { anyOf, askClaim } from './ask-claim.ts';
import { type Form, type Situation, type StatementVerdict, whoIs } from './form.ts';

/** A pawn with a property that a claim of the same name proves. */
function pawnThatIs(
  property: 'isolated' | 'passed',
  { reads, examples }: Pick<Form, 'reads' | 'examples'>,
): Form {
  return {
    reads,
    reach: 'near',
    judge(meaning, situation) {
      const [square] = meaning.squares;
      const not = meaning.denied ? 'not ' : '';
      const color = colorOf(meaning, situation);
      const board = readBoard(situation.position);
      if (square !== undefined) {
        const there = board.get(square);
        if (color && there?.kind === 'pawn' && there.color !== color) {
          return { holds: false, because: `the pawn on ${square} is ${sideName(there.color)}'s` };
        }
        return askClaim(`${not}${property} ${square}`, situation);
      }
      const pawns = (color ? [color] : (['white', 'black'] as const))
        .flatMap((of) => squaresOf(board, of, 'pawn'))
        .filter((at) => fileOf(at) === meaning.file);
      const name = 'abcdefgh'[(meaning.file ?? 1) - 1];
      if (pawns.length === 0)
        return { holds: false, because: `no such pawn stands on the ${name}-file` };
      return anyOf(pawns.map((at) => askClaim(`${not}${property} ${at}`, situation)));
    },
    examples,
  };
}

export const isolated = pawnThatIs('isolated', {
  reads: 'An isolated pawn: “the isolated pawn on d5”, “the d-pawn is isolated”.',
  examples: [
    {
      moves: '1. e4 e6 2. d4 d5 3. exd5 exd5 4. c4 Nf6 5. cxd5 Nxd5',
      says: 'The pawn on d4 is isolated.',
      holds: true,
    },
    {
      moves: '1. e4 e6 2. d4 d5 3. exd5 exd5',
      says: 'The isolated pawn on d5 is weak.',
      holds: false,
      because: 'the black pawn on c7 stands beside its file',
    },
    { moves: '1. e4 e5', says: 'The d-pawn is isolated.', holds: false },
    { moves: '1. e4 e5', says: 'The d-pawn is not isolated.', holds: true },
    { moves: '1. e4 e5', says: 'The d-pawn is isolated after the exchange.' },
    { moves: '1. e4 e5', language: 'de', says: 'Der Bauer auf e5 ist isoliert.', holds: false },
    { moves: '1. e4 e5', language: 'es', says: 'El peón aislado de e5 es débil.', holds: false },
  ],
});

export const passed = pawnThatIs('passed', {
  reads: 'A passed pawn: “the passed pawn on d5”, “White has a passed d-pawn”.',
  examples: [
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      says: 'The d-pawn is passed.',
      holds: true,
    },
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      says: 'Black has a passed pawn on a7.',
      holds: false,
      because: 'the white pawns on a2 and b2 stand ahead of it',
    },
    { fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1', says: 'White hopes for a passed a-pawn.' },
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      language: 'de',
      says: 'Der Freibauer auf d5 läuft.',
      holds: true,
    },
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      language: 'es',
      says: 'El peón b es un peón pasado.',
      holds: false,
    },
  ],
});

export const doubled: Form = {
  reads: 'Doubled pawns: “the doubled c-pawns”, “Black has doubled pawns on the c-file”.',
  reach: 'near',
  judge(meaning, situation) {
    const color = colorOf(meaning, situation);
    const [square] = meaning.squares;
    const file = meaning.file ?? (square === undefined ? undefined : fileOf(square));
    if (file === undefined || meaning.squares.some((at) => fileOf(at) !== file)) return undefined;
    const not = meaning.denied ? 'not ' : '';
    return askClaim(`${not}doubled ${'abcdefgh'[file - 1]}${color ? ` ${color}` : ''}`, situation);
  },
  examples: [
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6',
      says: 'Black has doubled pawns on the c-file.',
      holds: true,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6',
      says: 'White has doubled c-pawns.',
      holds: false,
      because: 'the c-file has one white pawn, on c2',
    },
    { moves: '1. e4 e5', says: 'Black accepts doubled pawns on the f-file.' },
    {
      moves: '1. e4 e5',
      language: 'de',
      says: 'Schwarz hat einen Doppelbauern auf der f-Linie.',
      holds: false,
    },
    {
      moves: '1. e4 e5',
      language: 'es',
      says: 'Las negras tienen peones doblados en la columna f.',
      holds: false,
    },
  ],
};

export const open: Form = {
  reads: 'An open or half-open file: “the open c-file”, “the e-file is half-open”.',
  reach: 'near',
  judge({ file, words, denied }, situation): StatementVerdict | undefined {
    if (file === undefined) return undefined;
    const name = 'abcdefgh'[file - 1];
    const not = denied ? 'not ' : '';
    if (!words.half) return askClaim(`${not}open ${name}`, situation);
    if (denied) return undefined;
    return anyOf(
      (['white', 'black'] as const).map((color) =>
        askClaim(`half-open ${name} ${color}`, situation),
      ),
    );
  },
  examples: [
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      says: 'The open e-file is empty.',
      holds: true,
    },
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      says: 'The d-file is open.',
      holds: false,
      because: 'the pawn on d5 stands on the d-file',
    },
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      says: 'The d-file is half-open.',
      holds: true,
    },
    { fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1', says: 'Soon the d-file is open.' },
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      language: 'de',
      says: 'Die d-Linie ist offen.',
      holds: false,
    },
    {
      fen: '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1',
      language: 'es',
      says: 'La columna e está abierta.',
      holds: true,
    },
  ],
};

/** Whose pawns are spoken of: said by an adjective, or by who "has" them. */
function colorOf(meaning: Meaning, situation: Situation) {
  return meaning.color ?? whoIs(meaning, situation);
}
