import { otherColor, sideToMove } from '../../../chess/index.ts';
import { askClaim } from './ask-claim.ts';
import { type Form, whoIs } from './form.ts';

export const check: Form = {
  reads: 'A check on the board: “Check!”, “Black is in check”, “this is check”.',
  reach: 'here',
  alone: 'at-start',
  judge(meaning, situation) {
    const named = meaning.side !== undefined || meaning.color !== undefined;
    const who = whoIs(meaning, situation) ?? meaning.color;
    const turn = sideToMove(situation.position);
    if (named && who === undefined) return undefined;
    if (who === otherColor(turn)) {
      return { holds: false, because: 'no king but that of the side to move can be in check' };
    }
    return askClaim('check', situation);
  },
  examples: [
    { moves: '1. e4 e5 2. Qh5 Nc6 3. Qxf7+', says: 'Check, and the queen is lost.', holds: true },
    {
      moves: '1. e4 e5 2. Qh5 Nc6',
      says: 'White is in check.',
      holds: false,
      because: "nothing attacks White's king on e1",
    },
    { moves: '1. e4 e5', says: 'Check twice before you take.' },
    { moves: '1. e4 e5', language: 'de', says: 'Schwarz steht im Schach.', holds: false },
    { moves: '1. e4 e5', language: 'es', says: 'Jaque.', holds: false },
  ],
};
