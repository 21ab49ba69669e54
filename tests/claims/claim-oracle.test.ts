/**
 * The claims against an oracle that was written apart from them: by the definitions of the handbook, on
 * chessops alone. It judges 20,000 claims a run, in positions of random games, of real lines, of
 * men set down at random, and of the examples that the handbook takes from its sources.
 */
import { makeFen } from 'chessops/fen';
import { afterAll, describe, expect, test } from 'vitest';
import {
  type ClaimContext,
  claimKinds,
  isClaimFault,
  judgeClaim,
  parseClaim,
} from '../../src/check/claims/index.ts';
import { isFenFault, type Position, parseFen } from '../../src/chess/index.ts';
import { randomFrom } from '../chess/random.ts';
import { runs } from '../setup/runs.ts';
import { claimsAbout, joined, rareClaim } from './claims-about.ts';
import { isTrue, oracleKinds, type Truth, truthOf } from './oracle/index.ts';
import {
  type Place,
  pick,
  placeOfFen,
  randomPlace,
  realPlace,
  scatteredPlace,
} from './positions.ts';

type Tally = Record<'true' | 'false' | 'empty', number>;
const tallies = new Map<string, Tally>();
let judged = 0;

function position(chess: Place['chess']): Position {
  const found = parseFen(makeFen(chess.toSetup()));
  if (isFenFault(found)) throw new Error(found.reason);
  return found;
}

function contextOf(place: Place): ClaimContext {
  const { chess, before, side, castled, covered } = place;
  const castling = (color: 'white' | 'black') =>
    ({ color, san: 'O-O', number: 1 }) as ReturnType<ClaimContext['castlings']>[number];
  return {
    position: position(chess),
    ...(before && { before: position(before) }),
    side,
    covered: Array.from({ length: covered }, () => 'Nf3'),
    castlings: () => castled.map(castling),
    labelled: (name) => (name === 'earlier' ? position(place.earlier) : undefined),
  };
}

/** Judges one claim without `not` by both, and notes it. */
function compare(text: string, place: Place, context: ClaimContext): string | undefined {
  const claim = parseClaim(text);
  if (isClaimFault(claim)) throw new Error(`${text}: ${claim.reason}`);
  const [part] = claim.parts;
  const { holds, because } = part?.judge(context) ?? { holds: false, because: '' };
  const truth: Truth = truthOf(text, place);
  judged++;
  const name = part?.kind.name ?? '';
  const tally = tallies.get(name) ?? { true: 0, false: 0, empty: 0 };
  tallies.set(name, tally);
  tally[String(truth) as keyof Tally]++;
  if (holds === truth) return undefined;
  return `${text} in ${context.position.fen}: ${holds} (${because}), by the oracle ${truth}`;
}

function compareJoined(text: string, place: Place, context: ClaimContext): string | undefined {
  const claim = parseClaim(text);
  if (isClaimFault(claim)) throw new Error(`${text}: ${claim.reason}`);
  judged++;
  const holds = judgeClaim(claim, context).length === 0;
  if (holds === isTrue(text, place)) return undefined;
  return `${text} in ${context.position.fen}: ${holds}`;
}

describe('the claims and an oracle agree', () => {
  test('the oracle knows every kind', () => {
    expect(claimKinds.map(({ name }) => name).filter((name) => !oracleKinds.has(name))).toEqual([]);
  });

  test('in the positions of the handbook', () => {
    const random = randomFrom(12);
    const differences: string[] = [];
    for (const { examples } of claimKinds) {
      for (const { fen, moves = [], claim, holds, side, covered, labels } of examples) {
        const place = {
          ...placeOfFen(fen, moves, random),
          side: side ?? 'white',
          covered: covered?.length ?? 0,
          labelled: (name: string) => {
            const label = labels?.[name];
            return label === undefined ? undefined : placeOfFen(label, [], random).chess;
          },
        };
        if (holds === 'undecided') continue;
        // What the source says of the position, and not only what we say of it.
        if (isTrue(claim, place) !== (holds === true)) differences.push(`${claim} in ${fen}`);
        for (const part of claim.split(/ and | or /)) {
          if (part.startsWith('after ')) continue;
          const text = part.replace(/^not /, '');
          // A name that an example gives has its own position.
          const context = { ...contextOf(place), labelled: labelsOf(place) };
          differences.push(...[compare(text, place, context) ?? []].flat());
        }
        const there = { ...place, ...plain(place, random) };
        const context = contextOf(there);
        for (const text of sample(claimsAbout(there, random), 6, random)) {
          differences.push(...[compare(text, there, context) ?? []].flat());
        }
      }
    }
    expect(differences).toEqual([]);
  });

  test.each([
    ['random games', randomPlace, runs(7_000)],
    ['men set down at random', scatteredPlace, runs(7_000)],
    ['real lines', realPlace, runs(6_000)],
  ] as const)('in positions of %s', (_, placeFrom, count) => {
    const random = randomFrom(count);
    const differences: string[] = [];
    const end = judged + count;
    while (judged < end && differences.length < 20) {
      const place = placeFrom(random);
      const context = contextOf(place);
      const claims = claimsAbout(place, random);
      const rare = Array.from({ length: 4 }, () => rareClaim(place, random));
      for (const text of [...rare, ...sample(claims, 32, random)]) {
        differences.push(...[compare(text, place, context) ?? []].flat());
      }
      for (let more = 0; more < 4; more++) {
        differences.push(
          ...[compareJoined(joined(place, claims, random), place, context) ?? []].flat(),
        );
      }
    }
    expect(differences).toEqual([]);
  });

  test('20,000 claims were judged, and of each kind some are true and some are not', () => {
    expect(judged).toBeGreaterThanOrEqual(runs(20_000));
    for (const [name, tally] of tallies) {
      expect(tally.false, `${name} is false`).toBeGreaterThan(0);
      if (name !== 'stalemate') expect(tally.true, `${name} is true`).toBeGreaterThan(0);
    }
  });

  afterAll(() => {
    if (process.env.CLAIM_TALLIES) console.table(Object.fromEntries(tallies));
  });
});

function labelsOf(place: Place): ClaimContext['labelled'] {
  return (name) => {
    const there = place.labelled(name);
    return there && position(there);
  };
}

/** The usual names and counts for a place that had those of an example. */
function plain(place: Place, random: () => number): Pick<Place, 'covered' | 'labelled' | 'side'> {
  return {
    covered: 1,
    labelled: (name) => (name === 'earlier' ? place.earlier : undefined),
    side: pick(['white', 'black', 'both'], random),
  };
}

function sample<T>(list: readonly T[], count: number, random: () => number): T[] {
  const left = [...list];
  return Array.from({ length: Math.min(count, left.length) }, () =>
    left.splice(Math.floor(random() * left.length), 1),
  ).flat();
}
