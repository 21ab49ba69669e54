/**
 * The kinds of claims, the most telling first: in this order claims that hold are offered to an author. Common
 * practice, no source. What ends the game or wins something comes first, then what lasts (pawns, files, squares,
 * bishops), then what is so in most positions; counts and protection come last.
 */
export const tellingOrder: readonly string[] = [
  // The king.
  'mate',
  'stalemate',
  'double-check',
  'discovered-check',
  'check',
  'only-move',
  // What wins something.
  'fork',
  'trapped',
  'pinned',
  'skewered',
  'discovered-attack',
  'overloaded',
  'only-defender',
  'en-prise',
  'threatens',
  'material',
  // Pawns.
  'protected-passed',
  'connected-passed',
  'passed',
  'isolated',
  'hanging-pawns',
  'backward',
  'doubled',
  'blockaded',
  'chain',
  // Files, squares and pieces.
  'outpost',
  'open',
  'half-open',
  'battery',
  'fianchetto',
  'bishop-pair',
  'opposite-bishops',
  'bad-bishop',
  'good-bishop',
  'weak-square',
  'strong-square',
  'majority',
  // How far a side has come.
  'development-lead',
  'more-space',
  'queens-off',
  'castled',
  'can-castle',
  'lost-castling',
  // So in most positions.
  'shut-in',
  'no-square',
  'loose',
  'shield',
  'everything-defended',
  'islands',
  'development',
  'tempi',
  'space',
  'replies',
  'attacks',
  'defends',
  'defended',
];

/** A count of nothing and a denial say least, whatever they are of. */
export function saysLeast(claim: string): boolean {
  return /\s0$/.test(claim) || claim.startsWith('not ');
}
