import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../../../tests/setup/runs.ts';
import { claimKinds } from '../claim-kinds.ts';
import { judgeClaim } from '../judge-claim.ts';
import { contextOfExample } from '../testing/context-of-example.ts';
import { isClaimFault, parseClaim } from './parse-claim.ts';
import { synonyms } from './unknown-name.ts';

function parts(text: string) {
  const claim = parseClaim(text);
  if (isClaimFault(claim)) throw new Error(claim.reason);
  return claim.parts;
}

function fault(text: string) {
  const claim = parseClaim(text);
  if (!isClaimFault(claim)) throw new Error(`${text} was read`);
  return claim;
}

test('joined and denied claims know where they stand', () => {
  const text = 'not pinned f3 and  loose e4 and mate in 2';
  expect(parts(text).map(({ text, denied, kind }) => ({ text, denied, name: kind.name }))).toEqual([
    { text: 'not pinned f3', denied: true, name: 'pinned' },
    { text: 'loose e4', denied: false, name: 'loose' },
    { text: 'mate in 2', denied: false, name: 'mate in' },
  ]);
  expect(parts(text).map(({ offset, length }) => text.slice(offset, offset + length))).toEqual([
    'not pinned f3',
    'loose e4',
    'mate in 2',
  ]);
});

test('the names of positions are known', () => {
  expect(parts('check and material +1 since main').flatMap(({ labels }) => labels)).toEqual([
    { text: 'main', offset: 28 },
  ]);
});

test.each([
  ['material +1', 'material 1'],
  ['material -1', 'material \u22121'],
  ['clear a2-g8', 'clear a2\u2013g8'],
])('%s may be written %s', (_, text) => {
  expect(parts(text)).toHaveLength(1);
});

describe('what cannot be read has a reason and a place', () => {
  test.each([
    ['isolated', 'the square of a pawn is missing', '', 'Write it like `isolated d5`.'],
    ['isolated d9', '`d9` is no square', 'd9', 'Write it like `isolated d5`.'],
    [
      'isolated d5 e5',
      'nothing more is expected behind `d5`, and `e5` stands there',
      'e5',
      undefined,
    ],
    [
      'check now',
      'nothing more is expected behind the name, and `now` stands there',
      'now',
      undefined,
    ],
    ['pined f3', 'there is no claim `pined`', 'pined', 'Did you mean `pinned`?'],
    [
      'half_open e white',
      'there is no claim `half_open`',
      'half_open',
      'Did you mean `half-open`?',
    ],
    ['pinned f3 on d1', '`on` stands where `to` is expected', 'on', undefined],
    ['half-open e', 'a side, `white` or `black` is missing', '', undefined],
    ['half-open e White', '`White` is no side: write `white` or `black`', 'White', undefined],
    ['open ee', '`ee` is no file', 'ee', undefined],
    ['material one', '`one` is no whole number of pawns, such as `+1` or `-3`', 'one', undefined],
    ['mate in 0', '`0` is no whole number from 1 on', '0', undefined],
    ['legal Nz9', '`Nz9` is not written as a move', 'Nz9', undefined],
    ['clear a2-b4', 'a2 and b4 share no rank, file or diagonal', 'a2-b4', undefined],
    ['clear a2-b3', 'no square lies between a2 and b3', 'a2-b3', undefined],
    [
      'can-castle white left',
      '`left` stands where `king` or `queen` is expected',
      'left',
      undefined,
    ],
    ['open d, open e', 'claims are joined with `and`, not with a comma', 'd,', undefined],
    ['open d and', 'a claim is missing behind the last `and`', '', undefined],
    ['and open d', 'a claim is missing before this `and`', 'and', undefined],
    ['open d and not', 'a claim is missing behind `not`', '', undefined],
    ['', 'nothing is claimed', '', undefined],
  ])('%s', (text, reason, at, hint) => {
    const found = fault(text);
    expect(found.reason).toBe(reason);
    expect(text.slice(found.offset, found.offset + found.length)).toBe(at);
    if (hint !== undefined) expect(found.hint).toBe(hint);
  });

  test('a name that resembles none says where they are listed', () => {
    expect(fault('zugzwang').hint).toBe('See `linewright explain claim-unreadable`.');
  });
});

test('any text is read or has a fault within it', () => {
  const word = fc.oneof(
    fc.constantFrom(
      ...claimKinds.flatMap(({ name }) => name.split(' ')),
      'and',
      'not',
      'since',
      'to',
    ),
    fc.constantFrom('e4', 'a1-h8', 'Nf3', 'white', 'e', '+1', '3', 'O-O'),
    fc.string({ maxLength: 6 }),
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 8 }), (words) => {
      const text = words.join(' ');
      const claim = parseClaim(text);
      if (!isClaimFault(claim)) {
        expect(claim.parts.length).toBeGreaterThan(0);
        return;
      }
      expect(claim.reason).not.toBe('');
      expect(claim.offset + claim.length).toBeLessThanOrEqual(text.length);
    }),
    { numRuns: runs(2000) },
  );
});

describe('claims that `or` joins, and what would be', () => {
  test('`and` joins more closely than `or`', () => {
    const claim = parseClaim('check or open d and not open e');
    if (isClaimFault(claim)) throw new Error(claim.reason);
    expect(claim.alternatives.map((parts) => parts.map(({ text }) => text))).toEqual([
      ['check'],
      ['open d', 'not open e'],
    ]);
    expect(claim).toMatchObject({ text: 'check or open d and not open e', offset: 0, length: 30 });
  });

  const judge = (fen: string, claim: string) => {
    const parsed = parseClaim(claim);
    if (isClaimFault(parsed)) throw new Error(parsed.reason);
    return judgeClaim(parsed, contextOfExample({ fen, claim, holds: true }));
  };
  const start = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1';
  test.each([
    ['after e4 e5 Nf3: attacks f3 e5', true],
    ['after 1.e4 1...e5 2. Nf3: attacks f3 e5', true],
    ['after e4 : not attacks e4 e5', true],
    ['after e4: attacks e4 d5 and attacks e4 e5', false],
    ['after e4: attacks e4 e5 or attacks e4 f5', true],
    ['after e4 e5: after Nf3: check', undefined],
    ['check or after e4: check', false],
    ['after pass e5: attacks e5 d4', true],
    ['after e5: attacks e5 d4', false],
    ['after e5: not attacks e5 d4', false],
    ['after e4: loose e4 and after pass e5: loose e5', true],
    ['after Nf3 d6 g3 e6 Bg2 c6 O-O: castled white king and not lost-castling white', true],
    ['after f3 e5 g4: not check and after f3 e5 g4 Qh4: mate', true],
    ['after e4 d5 Bb5: check and after e4 d5 Bb5 pass: check', false],
  ])('%s', (claim, holds) => {
    if (holds === undefined) return expect(() => judge(start, claim)).toThrow();
    return expect(judge(start, claim).length === 0).toBe(holds);
  });

  test.each([
    ['after', 'a move is missing behind `after`'],
    ['after : check', 'a move is missing behind `after`'],
    [`after ${'Nf3 '.repeat(41)}: check`, 'more than 40 moves stand behind `after`'],
    ['after Nf3', 'the colon behind the moves of `after` is missing'],
    ['after Nf3:', 'a claim is missing behind the colon'],
    ['after Nf3: not', 'a claim is missing behind `not`'],
    ['not after Nf3: check', '`not` stands before `after`'],
    ['check or', 'a claim is missing behind the last `or`'],
    ['or check', 'a claim is missing before this `or`'],
  ])('%s cannot be read', (text, reason) => {
    expect(fault(text).reason).toBe(reason);
  });

  test('every synonym names a claim', () => {
    for (const name of ['backwards', 'hole', 'luft', 'knight outpost', 'isolani', 'skewer']) {
      const hint = fault(`${name} e5`).hint ?? '';
      const [, meant = '', usage = ''] =
        /Did you mean `([^`]+)`, as in `([^`]+)`\?/.exec(hint) ?? [];
      expect(claimKinds.map((kind) => kind.name)).toContain(meant);
      expect(isClaimFault(parseClaim(usage))).toBe(false);
    }
    for (const name of Object.keys(synonyms)) {
      expect(claimKinds.map((kind) => kind.name)).toContain(synonyms[name]);
    }
  });
});
