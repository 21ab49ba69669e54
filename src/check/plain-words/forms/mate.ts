import {
  isMate,
  isMoveFault,
  otherColor,
  playMove,
  sideName,
  sideToMove,
} from '../../../chess/index.ts';
import { askClaim } from './ask-claim.ts';
import { type Form, whoIs } from './form.ts';

export const mate: Form = {
  reads: 'Mate on the board: “Checkmate.”, “Black is mated”.',
  reach: 'here',
  alone: 'at-start',
  judge(meaning, situation) {
    const who = whoIs(meaning, situation);
    if (meaning.side !== undefined && who === undefined) return undefined;
    if (who === otherColor(sideToMove(situation.position))) {
      return { holds: false, because: `${sideName(who)} is not to move` };
    }
    return askClaim('mate', situation);
  },
  examples: [
    { moves: '1. f3 e5 2. g4 Qh4#', says: 'Mate.', holds: true },
    { moves: '1. f3 e5 2. g4 Qh4#', says: 'Black is mated.', holds: false },
    { moves: '1. f3 e5 2. g4', says: 'White is mated if he sleeps on.' },
    { moves: '1. f3 e5 2. g4', language: 'de', says: 'Schwarz ist matt.', holds: false },
    { moves: '1. f3 e5 2. g4 Qh4#', language: 'es', says: 'Es mate.', holds: true },
  ],
};

export const mateByMove: Form = {
  reads: 'A move that mates: “7.Nd5 is mate”.',
  reach: 'near',
  judge({ move: mention }, { position, before }) {
    if (!mention) return undefined;
    for (const from of [position, ...before()]) {
      if (!mention.fits(from)) continue;
      for (const san of mention.spellings) {
        const played = playMove(from, san);
        if (isMoveFault(played)) continue;
        return isMate(played.after)
          ? { holds: true, because: `${mention.name} mates` }
          : { holds: false, because: `${mention.name} does not mate` };
      }
    }
    return undefined;
  },
  examples: [
    { moves: '1. f3 e5 2. g4', says: 'Now 2...Qh4 is mate.', holds: true },
    { moves: '1. f3 e5 2. g3', says: 'Now 2...Qh4 is mate.', holds: false },
    { moves: '1. f3 e5 2. g4', language: 'de', says: 'Jetzt ist 2...Dh4 matt.', holds: true },
    { moves: '1. f3 e5 2. g4', language: 'es', says: '2...Dg5 es mate.', holds: false },
  ],
};

export const mateIn: Form = {
  reads: 'A forced mate of at most three moves: “White mates in two”.',
  reach: 'near',
  judge(meaning, situation) {
    const { count = 0 } = meaning;
    const who = whoIs(meaning, situation);
    // From one mated position everything else is past; a long search is the claim's matter.
    if (count < 1 || count > 3 || (meaning.side !== undefined && who === undefined)) {
      return undefined;
    }
    return askClaim(`mate in ${count}${who ? ` ${who}` : ''}`, situation);
  },
  examples: [
    { moves: '1. f3 e5 2. g4', says: 'Black mates in one.', holds: true },
    { moves: '1. f3 e5 2. e4', says: 'Black mates in one.', holds: false },
    { moves: '1. f3 e5 2. e4', says: 'After g4 Black mates in one.' },
    {
      moves: '1. f3 e5 2. g4',
      language: 'de',
      says: 'Schwarz setzt in zwei Zügen matt.',
      holds: false,
    },
    {
      moves: '1. f3 e5 2. g4',
      language: 'es',
      says: 'Las negras dan mate en una jugada.',
      holds: true,
    },
  ],
};
