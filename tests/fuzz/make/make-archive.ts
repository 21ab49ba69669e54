import fc from 'fast-check';
import { makeMovetext } from '../../../src/movetext/index.ts';
import {
  arbitraryMovetext,
  arbitraryText,
} from '../../../src/movetext/testing/arbitrary-movetext.ts';
import type { Random } from '../random.ts';
import { legalMovetext } from './arbitrary-moves.ts';
import { mutations } from './mutations.ts';
import { demoCourse } from './sources.ts';
import { fragments } from './words.ts';

const comment = fc.oneof(
  fc.constantFrom(...fragments.flat()),
  fc.string({ unit: 'grapheme', maxLength: 20 }),
);
const tag = fc.oneof(
  fc.constantFrom(
    '[Event "x"]',
    '[Result "1-0"]',
    '[FEN "x"]',
    '[Variant "Atomic"]',
    '[SetUp "1"]',
  ),
  fc.constantFrom('[FEN "4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"]', '[White "A \\"B\\" \\\\"]', '[Event'),
  comment.map((value) => `[Event ${JSON.stringify(value)}]`),
);
const game = fc
  .tuple(fc.array(tag, { maxLength: 3 }), fc.oneof(legalMovetext(comment), arbitraryText))
  .map(([tags, moves]) => `${tags.join('\n')}\n\n${moves} *\n\n`);
const archive = fc.oneof(
  fc.array(game, { maxLength: 4 }).map((games) => games.join('')),
  arbitraryMovetext().map((tree) => makeMovetext(tree)),
  arbitraryText,
);

const ownGames = Object.entries(demoCourse)
  .filter(([file]) => file.endsWith('.pgn'))
  .map(([, text]) => text);

/** The bytes of a PGN file, one a character. */
export function makeArchive(random: Random): string {
  let text = random.chance(0.3) ? random.pick(ownGames) : random.sample(archive);
  const times = random.chance(0.4) ? 0 : 1 + random.below(5);
  for (let time = 0; time < times; time++) {
    text = random.pick(mutations)({ text, others: [text, ...ownGames], random });
  }
  return Buffer.from(text, random.chance(0.2) ? 'latin1' : 'utf8').toString('latin1');
}
