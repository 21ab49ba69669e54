import { type Color, colors, kingOf, pieceAt, readBoard, sideName } from '../../../chess/index.ts';
import type { Meaning } from '../phrase.ts';
import { type Form, type Situation, whoIs } from './form.ts';

export const castled: Form = {
  reads:
    'Who has castled: “White has castled long”, “both sides have castled”, “Black has not castled yet”.',
  reach: 'here',
  judge(meaning, situation) {
    const who = whoIs(meaning, situation);
    const sides = meaning.words.both ? colors : who ? [who] : [];
    let because = '';
    for (const side of sides) {
      const has = hasCastled(side, situation);
      if (has === undefined) return undefined;
      const other = has ? otherWay(side, meaning, situation) : undefined;
      if (other !== undefined) {
        because = `${sideName(side)} has castled ${other}`;
        if (!meaning.denied) return { holds: false, because };
        continue;
      }
      if (has === meaning.denied) {
        const king = kingOf(readBoard(situation.position), side) ?? '';
        return {
          holds: false,
          because: has
            ? `${sideName(side)} has castled`
            : `${sideName(side)}'s king stands on ${king} and has not castled`,
        };
      }
      because = has ? `${sideName(side)} has castled` : `${sideName(side)} has not castled`;
    }
    return sides.length > 0 ? { holds: true, because } : undefined;
  },
  examples: [
    { moves: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. O-O', says: 'White has castled.', holds: true },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. O-O',
      says: 'Both sides have castled.',
      holds: false,
      because: "Black's king stands on e8 and has not castled",
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. O-O',
      says: "White hasn't castled yet.",
      holds: false,
    },
    { moves: '1. e4 e5', says: 'Once White has castled, the rook joins in.' },
    { moves: '1. e4 e5', language: 'de', says: 'Weiß hat schon rochiert.', holds: false },
    { moves: '1. e4 e5', language: 'es', says: 'Las negras no han enrocado.', holds: true },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. O-O',
      says: 'White has castled long.',
      holds: false,
      because: 'White has castled short',
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. O-O',
      says: 'White has not castled on the queenside.',
      holds: true,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. O-O',
      language: 'de',
      says: 'Weiß hat lang rochiert.',
      holds: false,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. O-O',
      language: 'es',
      says: 'Las blancas han enrocado largo.',
      holds: false,
    },
    // How the kings came to their squares is not known.
    { fen: '6k1/5ppp/8/8/8/8/5PPP/6K1 w - - 0 1', says: 'White has castled.' },
  ],
};

/** Nothing where the course does not show how the king came to its square. */
function hasCastled(side: Color, { position, castlings }: Situation): boolean | undefined {
  if (castlings().some(({ color }) => color === side)) return true;
  const home = side === 'white' ? 'e1' : 'e8';
  const there = pieceAt(position, home);
  return there?.kind === 'king' && there.color === side ? false : undefined;
}

/** The way in which a side has castled, where the words name the other one. */
function otherWay(side: Color, { words }: Meaning, { castlings }: Situation) {
  const named = words.long ? 'long' : words.short ? 'short' : undefined;
  const castling = castlings().find(({ color }) => color === side);
  if (named === undefined || castling === undefined) return undefined;
  const way = castling.san.startsWith('O-O-O') ? 'long' : 'short';
  return way === named ? undefined : way;
}
