/** What was meant by a claim that there is not. */
import { nearestName } from '../../../diagnostics/index.ts';
import { claimKinds } from '../claim-kinds.ts';
import type { ClaimKind } from '../define-claim.ts';
import type { ClaimFault, Word } from './argument-reader.ts';

/** Words of the trade and the claims that say the same; words of one name are joined by hyphens. */
export const synonyms: Readonly<Record<string, string>> = {
  attack: 'attacks',
  attacked: 'attacks',
  attacking: 'attacks',
  control: 'attacks',
  controls: 'attacks',
  covers: 'attacks',
  down: 'material',
  'piece-up': 'material',
  up: 'material',
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

/** So many words of a sentence are looked at. */
const mostWords = 12;

export function unknownName(words: readonly Word[], kinds: readonly ClaimKind[]): ClaimFault {
  const names = kinds.map(({ name }) => name);
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
  const inside = near === undefined ? knownWithin(words, known) : undefined;
  if (inside !== undefined) {
    const last = words.at(-1) ?? first;
    return {
      reason: 'these words are not written as a claim',
      offset,
      length: (last?.offset ?? 0) + (last?.text.length ?? 0) - offset,
      hint: meant(inside, words),
    };
  }
  return {
    reason: `there is no claim \`${text}\``,
    offset,
    length: text.length,
    hint: near ? meant(near) : 'See `linewright explain claim-unreadable`.',
  };
}

/** The first name in a sentence such as `knight f6 is pinned` or `a pawn up`, the longer one first. */
function knownWithin(words: readonly Word[], known: ReadonlySet<string>): string | undefined {
  const plain = words.slice(0, mostWords).map(({ text }) => text.toLowerCase());
  for (let count = longest; count > 0; count--) {
    for (let at = 1; at + count <= plain.length; at++) {
      const name = plain.slice(at, at + count).join('-');
      if (known.has(name)) return name;
    }
  }
  return undefined;
}

/** @param sentence what was written: where the claim is of one square and it names one, that one is shown. */
function meant(name: string, sentence: readonly Word[] = []): string {
  if (!Object.hasOwn(synonyms, name)) {
    const usage = claimKinds.find((kind) => kind.name === name)?.usage[0] ?? '';
    const squares = sentence.filter(({ text }) => /^[a-h][1-8]$/.test(text));
    const isOfOne = /^\S+ [a-h][1-8]$/.test(usage);
    if (isOfOne && squares.length === 1) return `Did you mean \`${name} ${squares[0]?.text}\`?`;
    if (sentence.length > 0 && usage !== '') return `Did you mean \`${name}\`, as in \`${usage}\`?`;
    return `Did you mean \`${name}\`?`;
  }
  const kind = synonyms[name];
  const usage = claimKinds.find((each) => each.name === kind)?.usage[0] ?? kind;
  return `Did you mean \`${kind}\`, as in \`${usage}\`?`;
}
