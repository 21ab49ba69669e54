import { printable } from '../../diagnostics/index.ts';
import {
  type ComparedGame,
  countPositions,
  type GameMove,
  linesOf,
  type PositionRow,
} from '../../lookup/games/index.ts';
import { count } from '../console.ts';
import {
  type ComparedCourse,
  type ComparisonReport,
  countGames,
  endsOnPurpose,
  type GameSums,
  whereOf,
} from './comparison.ts';

/** Positions of each kind, and broken games, that are shown without `--all`. */
const most = 10;

const headings = {
  advised: 'Where the course gives advice, and something else was played',
  aside: 'Where a move was played that the course has beside its advice',
  covered: 'Replies that the course does not answer',
  known: 'Where the course knows other moves',
  ended: 'Where the course ends, and games went on',
  within: 'Where games ended within the course',
} as const;

/** First the replies that the course lacks: authors want those most. */
const order = ['covered', 'advised', 'aside', 'known', 'ended', 'within'] as const;

/** The report for a terminal: sums, then positions, most games first. */
export function createTextReport(
  compared: ComparedCourse,
  { all }: { readonly all: boolean },
): ComparisonReport {
  const { table } = compared;
  const limit = all ? Number.POSITIVE_INFINITY : most;
  const keep = ({ number }: ComparedGame) => number;
  const exits = countPositions(table, { keep });
  const asides = countPositions(table, { keep, exitOf: ({ aside }) => aside });
  const { add: addToSums, sums } = countGames();
  const broken: string[] = [];
  const variants = new Set<string>();
  const add = (game: ComparedGame) => {
    addToSums(game);
    exits.add(game);
    asides.add(game);
    if (game.kind === 'variant') variants.add(game.variant);
    if (game.kind === 'broken' && broken.length < limit) {
      broken.push(`   ${nameOf(game)}: ${faultText(game.fault)}\n`);
    }
    return '';
  };
  const end = (otherSide: number) => {
    const isOutside = ({ leaving, position }: PositionRow<number>) =>
      leaving === 'ended' && endsOnPurpose(compared.course, table.positions[position]?.key ?? '');
    const rows = exits.rows().filter((row) => !isOutside(row));
    const outside = exits.rows().filter(isOutside);
    const lineOf = linesOf(table);
    const parts = [
      summary(compared, sums, otherSide, variants),
      gamesOutside(outside.reduce((sum, { games }) => sum + games.length, 0)),
      brokenGames(broken, sums.broken),
    ];
    for (const leaving of order) {
      const some =
        leaving === 'aside' ? asides.rows() : rows.filter((row) => row.leaving === leaving);
      if (some.length === 0) continue;
      const shown = some.slice(0, limit).map((row) => rowText(row, compared, lineOf(row.position)));
      const rest = some.length - shown.length;
      const more = rest > 0 ? `   … and ${count(rest, 'position')} more: --all shows them\n` : '';
      parts.push(`${headings[leaving]}\n${shown.join('')}${more}`);
    }
    return parts.filter((part) => part !== '').join('\n');
  };
  return { add, end };
}

function summary(
  { player, table }: ComparedCourse,
  sums: GameSums,
  otherSide: number,
  variants: ReadonlySet<string>,
): string {
  const whose = player === '' ? '' : ` of ${printable(player)}`;
  const lines = [
    `${count(sums.games, 'game')}${whose}: ${sums.met} met the course, ${sums.apart} never entered it.`,
  ];
  if (otherSide > 0) {
    const side = table.side === 'white' ? 'Black' : 'White';
    lines.push(
      `${count(otherSide, 'game')} with ${side} not counted: the course is for the other side.`,
    );
  }
  if (sums.empty > 0) lines.push(`${count(sums.empty, 'game')} without moves.`);
  if (sums.variant > 0) {
    const names = [...variants].join(', ');
    lines.push(`${count(sums.variant, 'game')} of other variants left out: ${names}.`);
  }
  return `${lines.join('\n')}\n`;
}

/** Games that left where a line ends on purpose: the course lacks nothing there. */
function gamesOutside(games: number): string {
  if (games === 0) return '';
  return `${count(games, 'game')} went on where a line ends on purpose, by \`:end\`.\n`;
}

/** @param shown a line for each that is shown, of `all`. */
function brokenGames(shown: readonly string[], all: number): string {
  if (all === 0) return '';
  const rest = all - shown.length;
  const more = rest > 0 ? `   … and ${rest} more: --all shows them\n` : '';
  return `${count(all, 'game')} left out, since they cannot be followed\n${shown.join('')}${more}`;
}

function nameOf({ number, white, black, date }: ComparedGame): string {
  const players = white || black ? `, ${white || '?'} – ${black || '?'}` : '';
  return `game ${number}${players}${date ? `, ${date}` : ''}`;
}

function faultText({
  kind,
  written,
  at,
  reason,
}: Extract<ComparedGame, { kind: 'broken' }>['fault']): string {
  const why = reason === '' ? '' : `: ${reason}`;
  switch (kind) {
    case 'illegal':
      return `${at}${written} cannot be played${why}.`;
    case 'ambiguous':
      return `${at}${written} could be more than one move${why}.`;
    case 'unreadable':
      return `“${written}” at move ${at.replace(/\.+$/, '')} is no move${why}.`;
    case 'comment-unclosed':
      return `a comment is never closed: ${written}`;
    case 'variation-unclosed':
      return `a variation is never closed: ${written}`;
    case 'start':
      return `its start is no position${why}. FEN: ${written}`;
    case 'too-long':
      return 'it is longer than any game can be.';
  }
}

function rowText(
  row: PositionRow<number>,
  { course, table }: ComparedCourse,
  line: readonly GameMove[] | undefined,
): string {
  const place = whereOf(course, table.positions[row.position]?.key ?? '');
  const games = String(row.games.length).padStart(6);
  const { next, last } = row.exit;
  const where = line
    ? line.length === 0
      ? 'the initial position'
      : line.map((move, at) => numbered(move, at === 0)).join(' ')
    : last
      ? `after ${numbered(last, true)}`
      : 'at the start of the game';
  const name = (san: string) => (next ? numbered({ ...next, san }, true) : san);
  const has = row.moves.map(({ san }) => san).join(', ');
  const verb = { advised: 'advises', covered: 'answers', known: 'has', ended: '', within: '' }[
    row.leaving
  ];
  const few = row.played.slice(0, 5).map(({ san, games }) => `${name(san)} (${games})`);
  const rest = row.played.length - few.length;
  const played =
    few.length === 0 ? '' : `played: ${few.join(', ')}${rest > 0 ? `, ${rest} other moves` : ''}`;
  const { won, drawn, lost } = row.score;
  const score =
    won + drawn + lost === 0
      ? ''
      : `score of ${table.side === 'black' ? 'Black' : 'White'}: +${won} =${drawn} -${lost}`;
  const facts = [verb && `the course ${verb}: ${has}`, played, score].filter((fact) => fact !== '');
  return `${games}  ${where}${place ? `   ${printable(place)}` : ''}\n${facts.map((fact) => `        ${fact}\n`).join('')}`;
}

/** `1.d4`, `d5`: a move of Black has its number only at the start of a line. */
function numbered({ san, color, number }: GameMove, first: boolean): string {
  if (color === 'white') return `${number}.${san}`;
  return first ? `${number}...${san}` : san;
}
