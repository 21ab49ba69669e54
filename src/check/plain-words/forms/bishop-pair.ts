import { isDark, readBoard, sideName, squaresOf } from '../../../chess/index.ts';
import { askClaim } from './ask-claim.ts';
import { type Form, whoIs } from './form.ts';

export const bishopPair: Form = {
  reads: 'The pair of bishops: “Black has the two bishops”, “White has the bishop pair”.',
  reach: 'near',
  strict: true,
  judge(meaning, situation) {
    const who = whoIs(meaning, situation);
    if (!who) return undefined;
    const answer = askClaim(`bishop-pair ${who}`, situation);
    if (answer?.holds) return answer;
    // Where both have two bishops some say that one side has the pair, and some that neither has.
    const bishops = squaresOf(readBoard(situation.position), who, 'bishop');
    const hasBoth = bishops.some(isDark) && !bishops.every(isDark);
    if (hasBoth) return undefined;
    const [one] = bishops;
    const beside = one === undefined ? '' : ` beside the one on ${one}`;
    return { holds: false, because: `${sideName(who)} has no bishop${beside}` };
  },
  examples: [
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6',
      says: 'Black has the two bishops.',
      holds: true,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6',
      says: 'White has the bishop pair, and the better pawns.',
      holds: false,
      because: 'White has no bishop beside the one on c1',
    },
    { moves: '1. e4 e5', says: 'White has the two bishops.' },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6',
      says: 'White gave up the two bishops.',
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6',
      language: 'de',
      says: 'Weiß hat das Läuferpaar.',
      holds: false,
    },
    {
      moves: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6',
      language: 'es',
      says: 'Las blancas tienen la pareja de alfiles.',
      holds: false,
    },
  ],
};
