import { expect, test } from 'vitest';
import { claimKinds } from './claim-kinds.ts';
import { claimsThatHold, leftOut } from './claims-that-hold.ts';
import { saysLeast, tellingOrder } from './telling-order.ts';
import { contextOfExample } from './testing/context-of-example.ts';

test('each kind of claim has its place in the order, or is left out', () => {
  const names = claimKinds.map(({ name }) => name).filter((name) => !leftOut.has(name));
  expect([...tellingOrder].sort()).toEqual(names.sort());
});

const holding = (fen: string, wanted = {}) =>
  claimsThatHold(contextOfExample({ fen, claim: '', holds: true }), wanted);

test.each([
  // After 1.e4 e5 2.Nf3 d6 3.Bb5+ Nc6, the oldest pin there is.
  ['r1bqkbnr/ppp2ppp/2np4/1B2p3/4P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 2 4', 'pinned c6'],
  // A king and pawn ending: a passed pawn is what there is to say, with the pawn more.
  ['4k3/8/8/3P4/8/8/8/4K3 w - - 0 1', 'material +1'],
  ['7k/5KQ1/8/8/8/8/8/8 b - - 0 1', 'mate'],
])('%s: first of all %s', (fen, claim) => {
  expect(holding(fen)[0]).toBe(claim);
});

test('a square is named with its side only where it is asked for', () => {
  const fen = 'rnbqkbnr/ppp1pppp/8/3p4/3P4/8/PPP1PPPP/RNBQKBNR w KQkq - 0 2';
  const sided = 'strong-square e5 white';
  expect(holding(fen)).toContain('strong-square e5');
  expect(holding(fen)).not.toContain(sided);
  expect(holding(fen, { typed: 'strong-square e5' })).toContain(sided);
});

test('counts of nothing and denials stand behind all others, and are the first to go', () => {
  const start = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1';
  const all = holding(start);
  const least = all.filter(saysLeast);
  expect(least).toEqual(expect.arrayContaining(['material 0', 'tempi white 0']));
  expect(all.slice(-least.length)).toEqual(least);
  expect(holding(start, { most: 8 })).toEqual(all.slice(0, 8));
});

test('a kind that is named by what is typed comes first, with its claims of two pieces', () => {
  const open = 'r1bqkbnr/ppp2ppp/2np4/1B2p3/4P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 2 4';
  expect(holding(open)).not.toContain('attacks f3 e5');
  const [first] = holding(open, { typed: 'atta' });
  expect(first).toMatch(/^attacks /);
});
