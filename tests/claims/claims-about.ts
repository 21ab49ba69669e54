/** Claims of every kind about a position, with squares, files and moves that make sense there. */
import { Chess } from 'chessops/chess';
import type { Color, Role } from 'chessops/types';
import { makeSquare } from 'chessops/util';
import { developed, tempi } from './oracle/game.ts';
import { movesOf, sanOf, truthOf } from './oracle/index.ts';
import { islandsOf, space } from './oracle/pawns.ts';
import { other, withMove } from './oracle/world.ts';
import { type Place, pick, type Random } from './positions.ts';

export function claimsAbout(place: Place, random: Random): string[] {
  const { chess, castled, earlier } = place;
  const all = [...Array(64).keys()].map(makeSquare);
  const of = (role?: Role) =>
    [...(role ? chess.board[role] : chess.board.occupied)].map(makeSquare);
  const standing = of();
  const any = () => pick(random() < 0.5 ? standing : all, random);
  const man = (role?: Role) => pick(role && of(role).length > 0 ? of(role) : standing, random);
  const side = (): Color => pick(['white', 'black'], random);
  const file = () => pick([...'abcdefgh'], random);
  const number = (most: number) => Math.floor(random() * (most + 1));
  const signed = () => pick(['0', '+1', '-1', '+2', '-3', '+3'], random);
  const wing = () => pick(['', ' king', ' queen'], random);
  /** A side and a number: half of the time the true one, which chance would seldom meet. */
  const counted = (most: number, count: (color: Color) => number) => {
    const color = side();
    const found = random() < 0.5 ? count(color) : number(most);
    return `${color} ${Number.isFinite(found) && found >= 0 ? found : number(most)}`;
  };
  const claims: string[] = [
    `material ${signed()}`,
    `material ${signed()} since earlier`,
    `doubled ${file()}${pick(['', ' white', ' black'], random)}`,
    `open ${file()}`,
    `half-open ${file()} ${side()}`,
    `islands ${counted(4, (color) => islandsOf(chess, color))}`,
    `majority ${side()} ${pick(['queenside', 'kingside', 'a-c', 'd-e', 'f-h', 'b-b'], random)}`,
    `bishop-pair ${side()}`,
    'opposite-bishops',
    'check',
    'double-check',
    'discovered-check',
    'mate',
    'stalemate',
    'queens-off',
    `can-castle ${side()} ${pick(['king', 'queen'], random)}`,
    `lost-castling ${side()}${wing()}`,
    `castled ${side()}${wing()}`,
    `shield ${side()} ${number(3)}`,
    `development ${counted(4, (color) => developed(chess, color))}`,
    `development ${side()} ${number(2)} since earlier`,
    `development-lead ${side()}${pick(['', ' 1', ' 2'], random)}`,
    `tempi ${counted(12, (color) => tempi(Chess.default(), chess, color))}`,
    `tempi ${counted(6, (color) => tempi(earlier, chess, color))} since earlier`,
    `space ${counted(12, (color) => space(chess, color))}`,
    `more-space ${side()}`,
    `everything-defended ${side()}${pick(['', ' pieces'], random)}`,
    `replies ${number(2)}`,
    `clear ${pick(['a1-h8', 'a4-h4', 'c1-c8', 'b1-h7', 'd1-d4', 'e4-g6'], random)}`,
  ];
  const side2 = pick(['', ` ${side()}`], random);
  for (const name of ['outpost', 'strong-square'])
    claims.push(`${name} ${pick(all, random)}${side2}`);
  claims.push(`outpost ${man('knight')}`, `strong-square ${man('knight')}`);
  claims.push(`weak-square ${pick(all, random)}`, `weak-square ${any()}`);
  for (const name of ['isolated', 'backward', 'passed', 'protected-passed', 'blockaded']) {
    claims.push(`${name} ${man('pawn')}`, `${name} ${any()}`);
  }
  for (const name of ['connected-passed', 'hanging-pawns', 'chain']) {
    const first = man('pawn');
    const [column, row] = [first.charCodeAt(0), Number(first[1])];
    const near = `${String.fromCharCode(column + pick([-1, 1], random))}${row + pick([-1, 0, 1], random)}`;
    const second = (all as string[]).includes(near) ? near : man('pawn');
    if (second !== first) claims.push(`${name} ${first} ${second}`);
  }
  for (const name of ['bad-bishop', 'good-bishop', 'shut-in', 'fianchetto']) {
    claims.push(`${name} ${man('bishop')}`);
  }
  for (const name of [
    'loose',
    'defended',
    'en-prise',
    'trapped',
    'no-square',
    'overloaded',
    'fork',
  ]) {
    claims.push(`${name} ${pick(standing, random)}`, `${name} ${any()}`);
  }
  for (const name of ['attacks', 'defends', 'only-defender', 'battery', 'discovered-attack']) {
    claims.push(`${name} ${man()} ${any()}`);
    // Pairs on one line, and what a piece really reaches, are rare by chance.
    claims.push(`${name} ${pairOnLine(standing, random).join(' ')}`);
  }
  const [front, back] = pairOnLine(standing, random);
  claims.push(`pinned ${man()}`, `pinned ${front} to ${back}`, `skewered ${front} to ${back}`);
  const moves = movesOf(chess);
  const sans = moves.map((move) => sanOf(chess, move));
  const turned = withMove(chess, other(chess.turn));
  const threats = movesOf(turned)
    .filter(({ to }) => chess.board.get(to)?.role !== 'king')
    .map((move) => sanOf(turned, move));
  const captures = threats.filter((san) => san.includes('x'));
  if (captures.length > 0) claims.push(`threatens ${pick(captures, random)}`);
  if (threats.length > 0) claims.push(`threatens ${pick(threats, random)}`);
  if (sans.length > 0) claims.push(`legal ${pick(sans, random)}`, `illegal ${pick(sans, random)}`);
  const foreign = [...threats, 'O-O', 'O-O-O', 'Nf3', 'Nd2', 'Rd1', 'Qh5', 'e4', 'a8=Q'];
  claims.push(`legal ${pick(foreign, random)}`, `illegal ${pick(foreign, random)}`);
  if (moves.length > 0 && moves.length * threats.length < 250) {
    claims.push('mate in 1', `mate in 1 ${side()}`);
    if (moves.length * threats.length < 60) claims.push('mate in 2', 'only-move');
    if (moves.length * threats.length < 60) claims.push(`only-move ${pick(sans, random)}`);
  }
  if (moves.length > 0 && moves.length * threats.length < 60) {
    claims.push(`only-move ${pick(sans, random)} else -${1 + number(3)}`);
    claims.push(`only-move else -${1 + number(2)}`);
  }
  if (castled.length > 0) claims.push(`castled ${castled[0]}`, `lost-castling ${castled[0]}`);
  return claims;
}

const ofOne = [
  'fork',
  'overloaded',
  'trapped',
  'no-square',
  'protected-passed',
  'backward',
  'blockaded',
];
const ofTwo = [
  'attacks',
  'battery',
  'only-defender',
  'discovered-attack',
  'connected-passed',
  'chain',
];
const ofTo = ['pinned', 'skewered'];

/** A claim of a kind that is rarely true, and is true here where the oracle finds such a one. */
export function rareClaim(place: Place, random: Random): string {
  const standing = [...place.chess.board.occupied].map(makeSquare);
  const pairs = (joint: string) =>
    standing.flatMap((one) =>
      standing.flatMap((two) => (one === two ? [] : [`${one}${joint}${two}`])),
    );
  const kind = pick([...ofOne, ...ofTwo, ...ofTo], random);
  const all = ofOne.includes(kind) ? standing : pairs(ofTwo.includes(kind) ? ' ' : ' to ');
  const claims = all.map((words) => `${kind} ${words}`);
  const found = claims.filter((claim) => truthOf(claim, place) === true);
  return pick(found.length > 0 ? found : claims, random);
}

function pairOnLine(standing: readonly string[], random: Random): [string, string] {
  for (let tries = 0; tries < 20; tries++) {
    const [one, two] = [pick(standing, random), pick(standing, random)];
    const aside = Math.abs(one.charCodeAt(0) - two.charCodeAt(0));
    const up = Math.abs(one.charCodeAt(1) - two.charCodeAt(1));
    if (one !== two && (aside === 0 || up === 0 || aside === up)) return [one, two];
  }
  return [pick(standing, random), pick(standing, random)];
}

/** Several claims joined, denied and spoken of what would be. */
export function joined(place: Place, claims: readonly string[], random: Random): string {
  const { chess } = place;
  const plain = claims.filter((claim) => !/^(mate in|only-move)/.test(claim));
  const part = () => `${random() < 0.3 ? 'not ' : ''}${pick(plain, random)}`;
  const joint = () => pick([' and ', ' or '], random);
  const moves = movesOf(chess);
  if (moves.length > 0 && random() < 0.6) {
    const move = pick(moves, random);
    const after = chess.clone();
    const san = sanOf(chess, move);
    after.play(move);
    const replies = movesOf(after);
    const reply =
      replies.length > 0 && random() < 0.5 ? ` ${sanOf(after, pick(replies, random))}` : '';
    const lead = random() < 0.2 ? 'after pass' : `after ${san}${reply}`;
    return `${random() < 0.3 ? part() + joint() : ''}${lead}: ${part()}${random() < 0.5 ? joint() + part() : ''}`;
  }
  return part() + joint() + part() + (random() < 0.5 ? joint() + part() : '');
}
