import { describe, expect, test } from 'vitest';
import { claimKinds } from './claim-kinds.ts';
import { judgeClaim } from './judge-claim.ts';
import { isClaimFault, parseClaim } from './reading/parse-claim.ts';
import { contextOfExample } from './testing/context-of-example.ts';

// One harness for all claims: the positions of the handbook are the tests. Most of them, and what
// holds in them, come from the sources that the definitions name.
for (const kind of claimKinds) {
  describe(kind.name, () => {
    test('has a definition, a source, and positions where it is true and where it is false', () => {
      expect(kind.definition.trim()).toMatch(/^[A-Z].*\.$/s);
      expect(kind.source).not.toBe('');
      const own = kind.examples.filter(({ claim }) => claim.startsWith(kind.name));
      expect(own.some(({ holds }) => holds === true)).toBe(true);
      expect(own.some(({ holds }) => holds === false)).toBe(true);
    });

    test('is written as its usage shows', () => {
      for (const usage of kind.usage) {
        const claim = parseClaim(usage);
        expect(isClaimFault(claim) ? claim.reason : claim.parts.map((part) => part.kind)).toEqual([
          kind,
        ]);
      }
    });

    for (const example of kind.examples) {
      test(`${example.claim} in ${example.fen}`, () => {
        const claim = parseClaim(example.claim);
        if (isClaimFault(claim)) throw new Error(claim.reason);
        const context = contextOfExample(example);
        const verdicts = claim.parts.map((part) => {
          const { holds, because } = part.judge(context);
          return { holds: typeof holds === 'boolean' ? holds !== part.denied : holds, because };
        });
        for (const { holds, because } of verdicts) {
          expect(holds, because).toBe(example.holds);
          expect(because).toMatch(/^[^.].*[^.]$/);
        }
        for (const part of claim.parts) {
          const { instead } = part.judge(context);
          if (instead === undefined) continue;
          const truth = parseClaim(instead);
          expect(isClaimFault(truth) ? truth : judgeClaim(truth, context), instead).toEqual([]);
        }
        if (example.because) {
          expect(verdicts.map(({ because }) => because)).toEqual([example.because]);
        }
      });
    }
  });
}

test('once the searches of a chapter have seen too much, claims that need one are undecided', () => {
  const fen = '7k/1R6/5K2/8/8/8/8/R7 w - - 0 1';
  const search = { left: 1 };
  const judge = (text: string) => {
    const claim = parseClaim(text);
    if (isClaimFault(claim)) throw new Error(claim.reason);
    return judgeClaim(claim, { ...contextOfExample({ fen, claim: text, holds: true }), search });
  };
  // What was begun is ended; it takes more than the one position that is left.
  expect(judge('mate in 1')).toEqual([]);
  expect(search.left).toBeLessThan(0);
  for (const text of ['mate in 1', 'only-move']) {
    expect(judge(text)).toMatchObject([
      { undecided: true, because: expect.stringContaining('have seen 100 million positions') },
    ]);
  }
  expect(judge('not check')).toEqual([]);
});
