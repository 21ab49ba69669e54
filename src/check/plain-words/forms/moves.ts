import { legalMoves, sideName, sideToMove } from '../../../chess/index.ts';
import { isSameMove } from '../mentions.ts';
import { type Form, whoIs } from './form.ts';

export const onlyLegal: Form = {
  reads: 'The only legal move: “Black has only one legal move”, “6...Ke7 is the only legal move”.',
  reach: 'near',
  judge(meaning, situation) {
    const { position } = situation;
    const who = whoIs(meaning, situation);
    const turn = sideToMove(position);
    if (meaning.side !== undefined && who === undefined) return undefined;
    if (who !== undefined && who !== turn)
      return { holds: false, because: `${sideName(who)} is not to move` };
    const moves = legalMoves(position);
    const because = `${sideName(turn)} has ${moves.length} legal ${moves.length === 1 ? 'move' : 'moves'}`;
    const [only] = moves;
    if (only === undefined || moves.length > 1) return { holds: false, because };
    if (meaning.move !== undefined) {
      const mention = meaning.move;
      if (!mention.fits(position))
        return { holds: false, because: `the only legal move is ${only}` };
      const isNamed = mention.spellings.some((san) => isSameMove(san, only));
      if (!isNamed) return { holds: false, because: `the only legal move is ${only}` };
    }
    return { holds: true, because, claim: 'only-move' };
  },
  examples: [
    {
      fen: 'k7/8/1K6/8/8/8/8/7R b - - 0 1',
      says: 'Black has only one legal move.',
      holds: true,
    },
    { moves: '1. e4', says: 'Black has only one legal move.', holds: false },
    { moves: '1. e4', says: 'Black would have only one legal move.' },
    { moves: '1. e4', language: 'de', says: 'Schwarz hat nur einen legalen Zug.', holds: false },
    {
      moves: '1. e4',
      language: 'es',
      says: 'Las negras tienen una sola jugada legal.',
      holds: false,
    },
  ],
};

export const replies: Form = {
  reads: 'How many replies the course covers: “Black has three replies”.',
  reach: 'near',
  strict: true,
  judge(meaning, situation) {
    const { count = 0 } = meaning;
    const { side, position, covered } = situation;
    const who = whoIs(meaning, situation);
    if (!who || count < 1) return undefined;
    if (who === side || who !== sideToMove(position)) return undefined;
    const moves = covered();
    if (moves.length === 0) return undefined;
    const because = `the course has ${moves.length === 1 ? 'one' : moves.length} there: ${moves.join(', ')}`;
    // Who covers more than he announces has counted those that matter.
    return moves.length < count
      ? { holds: false, because }
      : {
          holds: true,
          because,
          ...(moves.length === count && { claim: `replies ${count}` }),
        };
  },
  examples: [
    {
      moves: '1. e4 {Black has two replies.} e5 (1... c5) 2. Nf3',
      says: '',
      holds: true,
    },
    { moves: '1. e4 {Black has three replies.} e5 (1... c5) 2. Nf3', says: '', holds: false },
    { moves: '1. e4 {Black could have three replies.} e5 (1... c5) 2. Nf3', says: '' },
    {
      moves: '1. e4 {Schwarz hat drei Antworten.} e5 (1... c5) 2. Nf3',
      language: 'de',
      says: '',
      holds: false,
    },
    {
      moves: '1. e4 {Las negras tienen tres respuestas.} e5 (1... c5) 2. Nf3',
      language: 'es',
      says: '',
      holds: false,
    },
  ],
};
