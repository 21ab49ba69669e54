import { sideName, sideToMove } from '../../../chess/index.ts';
import { type Form, whoIs } from './form.ts';

export const toMove: Form = {
  reads: 'Whose move it is: “White to move”, “it is Black’s move”.',
  reach: 'here',
  alone: 'always',
  judge(meaning, situation) {
    const { color } = meaning;
    const who = whoIs(meaning, situation) ?? color;
    if (!who) return undefined;
    const turn = sideToMove(situation.position);
    return { holds: turn === who, because: `it is ${sideName(turn)}'s move` };
  },
  examples: [
    { moves: '1. e4 e5', says: 'White to move.', holds: true },
    {
      moves: '1. e4 e5',
      says: 'Black to move: what does he do about e5?',
      holds: false,
      because: "it is White's move",
    },
    { moves: '1. e4 e5', says: "It is Black's move.", holds: false },
    { moves: '1. e4 e5', says: 'The same position with Black to move is another matter.' },
    { moves: '1. e4 e5', says: 'Black to move the bishop first is no good idea.' },
    { moves: '1. e4 e5', language: 'de', says: 'Schwarz ist am Zug.', holds: false },
    { moves: '1. e4 e5', language: 'es', says: 'Juegan las blancas.', holds: true },
  ],
};
