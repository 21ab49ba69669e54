import { otherColor, sideName } from '../../../chess/index.ts';
import { glyphSign } from '../../../movetext/index.ts';
import { type Form, whoIs } from './form.ts';

export const standsBetter: Form = {
  reads: 'Who stands better, against the sign at that move: “White is better”, “Black is winning”.',
  reach: 'here',
  judge(meaning, situation) {
    const who = whoIs(meaning, situation);
    const { assessment } = situation;
    // PGN standard, section 10: 14 to 21 are for White and for Black in turn.
    if (!who || assessment === undefined || assessment < 14) return undefined;
    const said = meaning.words.down ? otherColor(who) : who;
    const signed = assessment % 2 === 0 ? 'white' : 'black';
    const because = `the sign ${glyphSign(assessment) ?? `$${assessment}`} says that ${sideName(signed)} stands better`;
    return { holds: said === signed, because };
  },
  examples: [
    { moves: '1. e4 f6 2. d4 ±', says: 'White is clearly better.', holds: true },
    {
      moves: '1. e4 f6 2. d4 ∓',
      says: 'White is clearly better.',
      holds: false,
      because: 'the sign ∓ says that Black stands better',
    },
    { moves: '1. e4 f6 2. d4 ±', says: 'Black is worse, and he knows it.', holds: true },
    { moves: '1. e4 f6 2. d4', says: 'White is better.' },
    { moves: '1. e4 f6 2. d4 ∓', says: 'White would be better.' },
    { moves: '1. e4 f6 2. d4 ∓', says: 'White is better developed.' },
    { moves: '1. e4 f6 2. d4 ∓', language: 'de', says: 'Weiß steht klar besser.', holds: false },
    {
      moves: '1. e4 f6 2. d4 ∓',
      language: 'es',
      says: 'Las blancas están claramente mejor.',
      holds: false,
    },
  ],
};
