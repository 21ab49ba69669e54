/**
 * A claim means the same for both colours and on both wings: with the colours exchanged, or the
 * board mirrored from left to right, it has the same verdict.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../../tests/chess/random.ts';
import { runs } from '../../../tests/setup/runs.ts';
import {
  type Color,
  fileOf,
  isFenFault,
  legalMoves,
  otherColor,
  type Position,
  parseFen,
  passMove,
  rankOf,
  readBoard,
  squareAt,
  squares,
} from '../../chess/index.ts';
import { claimKinds } from './claim-kinds.ts';
import type { ClaimContext } from './define-claim.ts';
import { isClaimFault, parseClaim } from './reading/parse-claim.ts';
import { randomPosition } from './testing/random-position.ts';
import { searchBudget } from './testing/search-budget.ts';

interface Symmetry {
  readonly name: string;
  readonly square: (square: string) => string;
  readonly color: (color: Color) => Color;
}

const symmetries: readonly Symmetry[] = [
  {
    name: 'colours exchanged',
    square: (square) => squareAt(fileOf(square), 9 - rankOf(square)) ?? '',
    color: otherColor,
  },
  {
    name: 'mirrored from left to right',
    square: (square) => squareAt(9 - fileOf(square), rankOf(square)) ?? '',
    color: (color) => color,
  },
];

for (const symmetry of symmetries) {
  describe(symmetry.name, () => {
    test('the examples of the handbook have the same verdicts', () => {
      for (const { examples } of claimKinds) {
        for (const { fen, claim, side = 'white', moves, covered, labels } of examples) {
          // Castling has no mirror image, and moves of the course belong to a course.
          if (moves || covered || labels || /castle|castling|shield|tempi|O-O/.test(claim))
            continue;
          const color = side === 'both' ? 'white' : side;
          expect(differences(position(fen), [claim], color, symmetry)).toEqual([]);
        }
      }
    });

    test('positions of random games have the same verdicts', () => {
      fc.assert(
        fc.property(randomPosition(90), fc.integer(), (at, seed) => {
          const claims = claimsAbout(at, randomFrom(seed));
          expect(differences(at, claims, 'white', symmetry)).toEqual([]);
        }),
        { numRuns: runs(20) },
      );
    });
  });
}

/** The claims that have another verdict in the image of a position. */
function differences(
  at: Position,
  claims: readonly string[],
  side: Color,
  symmetry: Symmetry,
): string[] {
  const bare = withoutRights(at);
  const image = transform(bare, symmetry);
  return claims.flatMap((claim) => {
    const imageClaim = transformClaim(claim, symmetry);
    const there = verdicts(image, imageClaim, symmetry.color(side));
    const here = verdicts(bare, claim, side);
    return there === here
      ? []
      : [`${claim} in ${bare.fen}: ${here}, ${imageClaim} in ${image.fen}: ${there}`];
  });
}

function verdicts(at: Position, text: string, side: Color): string {
  const claim = parseClaim(text);
  if (isClaimFault(claim)) throw new Error(`${text}: ${claim.reason}`);
  const context: ClaimContext = {
    position: at,
    side,
    covered: [],
    castlings: () => [],
    labelled: () => undefined,
    ...searchBudget,
  };
  return claim.parts.map((part) => part.judge(context).holds).join(' ');
}

/** Claims of every kind about a position, with squares and moves that make sense there. */
function claimsAbout(at: Position, random: () => number): string[] {
  const pick = <T>(list: readonly T[]): T | undefined => list[Math.floor(random() * list.length)];
  const standing = [...readBoard(at).keys()];
  const pieces = [...standing].sort(() => random() - 0.5).slice(0, 12);
  const claims = ['check', 'mate', 'stalemate', 'opposite-bishops', 'material +1'];
  claims.push('bishop-pair white', 'bishop-pair black', 'mate in 1', 'replies 0');
  for (const square of pieces) {
    for (const name of [
      'isolated',
      'backward',
      'passed',
      'fork',
      'loose',
      'defended',
      'en-prise',
      'protected-passed',
      'blockaded',
      'bad-bishop',
      'good-bishop',
      'fianchetto',
      'trapped',
      'no-square',
      'overloaded',
    ]) {
      claims.push(`${name} ${square}`);
    }
    claims.push(`pinned ${square}`, `shut-in ${square}`, `outpost ${square}`);
    claims.push(`pinned ${square} to ${pick(standing)}`, `attacks ${square} ${pick(standing)}`);
    claims.push(`defends ${square} ${pick(standing)}`, `attacks ${square} ${pick(squares)}`);
    const pawns = standing.filter((each) => readBoard(at).get(each)?.kind === 'pawn');
    if (pawns.length > 1) {
      const [first, second] = [pick(pawns), pick(pawns)];
      claims.push(`chain ${first} ${second}`, `hanging-pawns ${first} ${second}`);
      claims.push(`connected-passed ${first} ${second}`);
    }
    claims.push(`outpost ${pick(squares)} white`, `outpost ${pick(squares)}`);
    claims.push(`strong-square ${pick(squares)}`, `weak-square ${pick(squares)}`);
    claims.push(`only-defender ${square} ${pick(standing)}`, `battery ${square} ${pick(standing)}`);
    claims.push(`skewered ${square} to ${pick(standing)}`);
  }
  for (const color of ['white', 'black']) {
    claims.push(`islands ${color} 2`, `majority ${color} queenside`, `majority ${color} b-d`);
    claims.push(`everything-defended ${color}`, `development ${color} 2`, `space ${color} 8`);
    claims.push(`more-space ${color}`, `development-lead ${color}`);
  }
  claims.push('queens-off', 'double-check');
  for (const file of 'abcdefgh') {
    claims.push(`open ${file}`, `doubled ${file}`, `half-open ${file} white`);
  }
  for (const line of ['a1-h8', 'a4-h4', 'c1-c8', 'b1-h7']) claims.push(`clear ${line}`);
  const moves = legalMoves(withoutRights(at)).filter((san) => !san.startsWith('O-O'));
  // Each move costs a search.
  if (moves.length < 8) claims.push('only-move');
  for (const san of moves.slice(0, 6)) claims.push(`legal ${san}`, `illegal ${san}`);
  const threats = legalMoves(passMove(withoutRights(at)));
  for (const san of threats.filter((move) => move.includes('x'))) claims.push(`threatens ${san}`);
  return claims;
}

function withoutRights({ fen }: Position): Position {
  const [placement, turn, , enPassant] = fen.split(' ');
  return position(`${placement} ${turn} - ${enPassant}`);
}

function transform(at: Position, { square, color }: Symmetry): Position {
  const letters = new Map<string, string>();
  for (const [from, piece] of readBoard(at)) {
    const letter = piece.kind === 'knight' ? 'n' : (piece.kind[0] ?? '');
    letters.set(square(from), color(piece.color) === 'white' ? letter.toUpperCase() : letter);
  }
  const rows = [8, 7, 6, 5, 4, 3, 2, 1].map((rank) =>
    [...'abcdefgh'].map((file) => letters.get(file + rank) ?? '1').join(''),
  );
  const placement = rows.join('/').replace(/1+/g, (run) => `${run.length}`);
  const [, turn, , enPassant = '-'] = at.fen.split(' ');
  const mover = color(turn === 'w' ? 'white' : 'black') === 'white' ? 'w' : 'b';
  return position(`${placement} ${mover} - ${enPassant === '-' ? '-' : square(enPassant)}`);
}

function transformClaim(claim: string, { square, color }: Symmetry): string {
  const file = (letter: string) => square(`${letter}1`)[0] ?? '';
  const rank = (digit: string) => square(`a${digit}`)[1] ?? '';
  const move = (san: string) => san.replace(/[a-h]/g, file).replace(/[1-8]/g, rank);
  let moveNext = false;
  let afterMoves = false;
  return claim
    .split(' ')
    .map((word) => {
      if (moveNext && word !== 'else') {
        moveNext = false;
        return move(word);
      }
      if (word === 'after') afterMoves = true;
      if (afterMoves) {
        afterMoves = !word.endsWith(':');
        return word === 'after' ? word : move(word);
      }
      moveNext = /^(legal|illegal|threatens|only-move)$/.test(word);
      if (/^[a-h]-[a-h]$/.test(word)) {
        const [first = '', last = ''] = word.split('-').map(file).sort();
        return `${first}-${last}`;
      }
      const wing = ['queenside', 'kingside'].indexOf(word);
      if (wing >= 0 && file('a') === 'h') return wing === 0 ? 'kingside' : 'queenside';
      if (word === 'white' || word === 'black') return color(word);
      if (/^[a-h]$/.test(word)) return file(word);
      return word.replace(/\b[a-h][1-8]\b/g, square);
    })
    .join(' ');
}

function position(fen: string): Position {
  const found = parseFen(fen);
  if (isFenFault(found)) throw new Error(`${fen}: ${found.reason}`);
  return found;
}
