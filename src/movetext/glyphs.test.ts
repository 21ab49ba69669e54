import { describe, expect, test } from 'vitest';
import { glyphMeaning, glyphSign, isAssessment, isMoveSuffix } from './glyphs.ts';

describe('glyphs', () => {
  // PGN standard (1994-03-12), section 10.
  test.each([
    [1, '!', 'good move'],
    // Common practice, no source: the standard calls them poor, very good, very poor, speculative, questionable
    // and drawish.
    [2, '?', 'mistake'],
    [3, '!!', 'excellent move'],
    [4, '??', 'blunder'],
    [5, '!?', 'interesting move'],
    [6, '?!', 'dubious move'],
    [10, '=', 'equal position'],
    [13, '∞', 'unclear position'],
    [14, '⩲', 'White has a slight advantage'],
    [15, '⩱', 'Black has a slight advantage'],
    [16, '±', 'White has a moderate advantage'],
    [17, '∓', 'Black has a moderate advantage'],
    [18, '+-', 'White has a decisive advantage'],
    [19, '-+', 'Black has a decisive advantage'],
    [21, '-+', 'Black has a crushing advantage'],
    [22, '⨀', 'White is in zugzwang'],
    [36, '↑', 'White has the initiative'],
    [40, '→', 'White has the attack'],
    [44, '=∞', 'White has sufficient compensation for material deficit'],
    [65, undefined, 'Black has a decisive queenside control advantage'],
    [105, undefined, 'Black has good piece coordination'],
    [113, undefined, 'Black has played the opening very well'],
    [122, undefined, 'White has played the ending very poorly'],
    [129, undefined, 'Black has played the ending very well'],
    [130, undefined, 'White has slight counterplay'],
    [132, '⇆', 'White has moderate counterplay'],
    [135, undefined, 'Black has decisive counterplay'],
    [138, '⊕', 'White has severe time control pressure'],
    [139, '⊕', 'Black has severe time control pressure'],
    // De facto.
    [140, '∆', 'with the idea'],
    [146, 'N', 'novelty'],
  ])('%i has the sign %s and means %s', (nag, sign, meaning) => {
    expect(glyphSign(nag)).toBe(sign);
    expect(glyphMeaning(nag)).toBe(meaning);
  });

  test('every number of the standard has a meaning, and no number without one is invented', () => {
    for (let nag = 0; nag < 140; nag++) expect(glyphMeaning(nag), `$${nag}`).toBeDefined();
    for (const nag of [-1, 0.5, 147, 255, 256, Number.NaN]) {
      expect(glyphMeaning(nag)).toBeUndefined();
      expect(glyphSign(nag)).toBeUndefined();
    }
  });

  test('suffixes are 1 to 6, assessments 10 to 21', () => {
    const numbers = Array.from({ length: 256 }, (_, nag) => nag);
    expect(numbers.filter(isMoveSuffix)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(numbers.filter(isAssessment)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21]);
  });
});
