import { otherColor, readBoard, slidersOn } from '../../../chess/index.ts';
import { askClaim } from './ask-claim.ts';
import type { Form } from './form.ts';

export const pinned: Form = {
  reads: 'A pinned piece: “the knight on f6 is pinned”, “pins the knight on f3”.',
  reach: 'near',
  judge({ kind, color, squares: [square], denied }, situation) {
    const board = readBoard(situation.position);
    const piece = square === undefined ? undefined : board.get(square);
    // Where another piece stands, or none, the words for it are false, not those for the pin.
    if (square === undefined || piece === undefined || piece.kind !== kind) return undefined;
    if (color !== undefined && piece.color !== color) return undefined;
    const answer = askClaim(`${denied ? 'not ' : ''}pinned ${square}`, situation);
    if (answer?.holds || denied) return answer;
    // To a queen, a rook, a square where mate is threatened: something must attack it on a line.
    if (slidersOn(board, square, otherColor(piece.color)).length > 0) {
      return { holds: true, because: '' };
    }
    return {
      holds: false,
      because: `no bishop, rook or queen attacks the ${piece.kind} on ${square}`,
    };
  },
  examples: [
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 d6',
      says: 'The knight on c6 is pinned.',
      holds: true,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 d6',
      says: 'The knight on f3 is pinned.',
      holds: false,
      because: 'no bishop, rook or queen attacks the knight on f3',
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 d6',
      says: 'The knight on c6 is not pinned.',
      holds: false,
    },
    {
      moves: '1. e4 e5 2. Nf3 d6 3. Bc4 Bg4',
      says: 'pins the knight on f3.',
      holds: true,
    },
    {
      moves: '1. e4 e5 2. Nf3 d6',
      says: 'The bishop wants to go to g4, where it pins the knight on f3.',
    },
    { moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 d6', says: 'If the knight on f3 is pinned, White waits.' },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 d6',
      language: 'de',
      says: 'Der Springer auf f3 ist gefesselt.',
      holds: false,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 d6',
      language: 'es',
      says: 'El caballo de f3 está clavado.',
      holds: false,
    },
  ],
};
