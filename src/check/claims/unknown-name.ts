/** What was meant by a claim that there is not. */
import { nearestName } from '../../diagnostics/index.ts';
import type { ClaimFault, Word } from './argument-reader.ts';
import { claimKinds } from './claim-kinds.ts';

/** Words of the trade and the claims that say the same; words of one name are joined by hyphens. */
export const synonyms: Readonly<Record<string, string>> = {
  advantage: 'material',
  'back-rank-mate': 'mate',
  backwards: 'backward',
  'bishops-of-opposite-colour': 'opposite-bishops',
  blockade: 'blockaded',
  blocked: 'blockaded',
  'castling-rights': 'can-castle',
  checkmate: 'mate',
  cramped: 'more-space',
  discovery: 'discovered-attack',
  'discovered-attack-on': 'discovered-attack',
  dominated: 'no-square',
  domination: 'no-square',
  'en-passant': 'legal',
  entombed: 'shut-in',
  exchange: 'material',
  'fianchettoed-bishop': 'fianchetto',
  fianchettoed: 'fianchetto',
  forced: 'only-move',
  'forced-mate': 'mate in',
  forks: 'fork',
  'french-bishop': 'bad-bishop',
  guarded: 'defended',
  guards: 'defends',
  hanging: 'en-prise',
  'has-castled': 'castled',
  hole: 'weak-square',
  iqp: 'isolated',
  isolani: 'isolated',
  'isolated-queen-pawn': 'isolated',
  'knight-outpost': 'outpost',
  luft: 'shield',
  'mate-in': 'mate in',
  'minor-pieces-developed': 'development',
  'no-queens': 'queens-off',
  'open-file': 'open',
  'opposite-coloured-bishops': 'opposite-bishops',
  'opposite-colored-bishops': 'opposite-bishops',
  overloading: 'overloaded',
  overworked: 'overloaded',
  'passed-pawn': 'passed',
  'pawn-chain': 'chain',
  'pawn-islands': 'islands',
  'pawn-majority': 'majority',
  'pawn-shield': 'shield',
  'pawn-up': 'material',
  pawns: 'material',
  pin: 'pinned',
  protected: 'defended',
  protects: 'defends',
  'protected-passed-pawn': 'protected-passed',
  'queenless-middlegame': 'queens-off',
  ram: 'blockaded',
  'semi-open': 'half-open',
  'semi-open-file': 'half-open',
  'half-open-file': 'half-open',
  skewer: 'skewered',
  'strong-point': 'strong-square',
  support: 'defends',
  supports: 'defends',
  surrounded: 'shut-in',
  tempo: 'tempi',
  threat: 'threatens',
  'two-bishops': 'bishop-pair',
  undefended: 'loose',
  undeveloped: 'development',
  unprotected: 'loose',
  'weak-colour-complex': 'weak-square',
  'won-pawn': 'material',
  'x-ray': 'pinned',
};

/** The most words of a name. */
const longest = 4;

export function unknownName(words: readonly Word[]): ClaimFault {
  const names = claimKinds.map(({ name }) => name);
  const known = new Set([...names, ...Object.keys(synonyms)]);
  const [first] = words;
  const offset = first?.offset ?? 0;
  // `knight outpost` is found as well as `knight-outpost`, the longer name first.
  for (let count = Math.min(longest, words.length); count > 0; count--) {
    const phrase = words.slice(0, count);
    const name = phrase.map(({ text }) => text.toLowerCase().replaceAll('_', '-')).join('-');
    if (!known.has(name)) continue;
    const last = phrase.at(-1) ?? first;
    return {
      reason: `there is no claim \`${phrase.map(({ text }) => text).join(' ')}\``,
      offset,
      length: (last?.offset ?? 0) + (last?.text.length ?? 0) - offset,
      hint: meant(name),
    };
  }
  const text = first?.text ?? '';
  const near = nearestName(text, known);
  return {
    reason: `there is no claim \`${text}\``,
    offset,
    length: text.length,
    hint: near ? meant(near) : `The claims are ${names.join(', ')}.`,
  };
}

function meant(name: string): string {
  if (!Object.hasOwn(synonyms, name)) return `Did you mean \`${name}\`?`;
  const kind = synonyms[name];
  const usage = claimKinds.find((each) => each.name === kind)?.usage[0] ?? kind;
  return `Did you mean \`${kind}\`, as in \`${usage}\`?`;
}
