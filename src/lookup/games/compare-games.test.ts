import { describe, expect, test } from 'vitest';
import { courseOf } from '../../model/testing/course-of.ts';
import { assignAddresses } from '../../render/addresses.ts';
import { makeCourseTable } from '../../site/render/course-table.ts';
import { byPosition } from './by-position.ts';
import { compareGames } from './compare-games.ts';
import { linesOf } from './lines-of.ts';
import { partingOf } from './parting-of.ts';
import type { ComparedGame } from './types.ts';
import { withPlayer } from './with-player.ts';

function tableOf(text: string, side: 'white' | 'black' | 'both' = 'black', attributes = '') {
  const course = courseOf(`\`\`\`moves${attributes}\n${text}\n\`\`\`\n`, side);
  return makeCourseTable(course, assignAddresses(course));
}

const course = tableOf(
  '1. d4 d5 2. c4 e6 ( 2... c6 {:option[solid]} ) ( 2... g5? ) 3. Nc3 ( 3. Nf3 c5 ) 3... c5 4. cxd5 exd5',
);

function compare(pgn: string | Uint8Array, table = course): ComparedGame[] {
  const comparison = compareGames(table);
  const bytes = typeof pgn === 'string' ? new TextEncoder().encode(pgn) : pgn;
  return [...comparison.push(bytes), ...comparison.end()];
}

/** The one game, in short: how it parts from the course, after which move, by which. */
function parting(moves: string, table = course): string {
  const [game] = compare(moves, table);
  if (game?.kind !== 'met') return game?.kind === 'broken' ? game.fault.kind : `${game?.kind}`;
  const { leaving, by, moves: has } = partingOf(table, game.exit);
  const name = (move: typeof game.exit.next) =>
    move && `${move.number}${move.color === 'white' ? '.' : '...'}${move.san}`;
  return [
    leaving,
    by,
    name(game.exit.last),
    name(game.exit.next),
    has.map(({ san }) => san).join(' '),
  ]
    .filter(Boolean)
    .join(' | ');
}

describe('a game parts from the course', () => {
  test.each([
    ['1. d4 d5 2. c4 Nf6 3. cxd5 Nxd5', 'advised | black | 2.c4 | 2...Nf6 | e6'],
    ['1. d4 d5 2. Bf4', 'covered | white | 1...d5 | 2.Bf4 | c4'],
    ['1. d4 d5 2. c4 c6 3. Nf3', 'ended | 2...c6 | 3.Nf3'],
    ['1. d4 d5 2. c4', 'within | 2.c4 | e6 c6 g5'],
    ['1. d4 d5 2. c4 e6 3. Nf3 c5 4. e3', 'ended | 3...c5 | 4.e3'],
    ['1. e4 e5', 'apart'],
    ['', 'undefined'],
    ['[White "A"]\n\n*', 'empty'],
  ])('%s: %s', (moves, expected) => {
    expect(parting(moves)).toBe(expected);
  });

  test('what comes before the subject of the course counts for nothing', () => {
    const [start, first, second, third] = [0, 1, 2, 3];
    const later = { ...course, before: [start, first, second, third] };
    expect(parting('1. d4 d5 2. Bf4', later)).toBe('apart');
    expect(parting('1. d4 d5 2. c4 c6 3. Nf3', later)).toBe('ended | 2...c6 | 3.Nf3');
  });

  test('the last known position counts, by whatever order of moves', () => {
    const other = '1. c4 e6 2. Nc3 d5 3. d4 c5 4. cxd5 cxd4';
    expect(parting(other)).toBe('advised | black | 4.cxd5 | 4...cxd4 | exd5');
  });

  test.each([
    ['an option', '1. d4 d5 2. c4 c6 3. Nf3', '2.c4 | 2...c6 | option'],
    ['a bad move, written in other letters', '1. d4 d5 2. c4 g7-g5', '2.c4 | 2...g5 | bad'],
    ['in the order of another line', '1. c4 d5 2. d4 c6 3. Nf3', '2.d4 | 2...c6 | option'],
    ['the advice', '1. d4 d5 2. c4 e6 3. Nf3 c5', ''],
    ['what the course has not', '1. d4 d5 2. c4 Nf6', ''],
    ['a move that transposes to what it has', '1. c4 e6 2. Nc3 d5 3. d4', ''],
  ])('%s of its own side is noted: %s', (_, moves, expected) => {
    const [game] = compare(moves);
    const aside = game?.kind === 'met' ? game.aside : undefined;
    const kind = course.positions[aside?.position ?? -1]?.moves.find(
      ({ san }) => san === aside?.next.san,
    )?.kind;
    const { last, next } = aside ?? {};
    const noted = [
      last && `${last.number}.${last.san}`,
      next && `${next.number}...${next.san}`,
      kind,
    ];
    expect(noted.filter(Boolean).join(' | ')).toBe(expected);
    const rows = byPosition(course, compare(moves), (each) => each.aside);
    expect(rows.map(({ leaving, played }) => [leaving, played.map(({ san }) => san)])).toEqual(
      next ? [['advised', [next.san]]] : [],
    );
  });

  test('spelling does not matter, nor do comments and variations', () => {
    const written = '1.d2-d4 {a} d5! 2. c4+ (2. e3) e7e6 $1 3. Nb1-c3 c5 4. c4xd5 Qd8xd5';
    expect(parting(written)).toBe('advised | black | 4.cxd5 | 4...Qxd5 | exd5');
  });

  test('a course for both sides has no advice', () => {
    const both = tableOf('1. d4 d5 2. c4', 'both');
    expect(parting('1. d4 Nf6', both)).toBe('known | black | 1.d4 | 1...Nf6 | d5');
  });

  test('a start that the course knows counts, and one that it does not', () => {
    const fen = 'rnbqkbnr/ppp1pppp/8/3p4/3P4/8/PPP1PPPP/RNBQKBNR w KQkq - 0 2';
    expect(parting(`[SetUp "1"]\n[FEN "${fen}"]\n\n2. Bf4 *`)).toBe('covered | white | 2.Bf4 | c4');
    const endgame = '8/8/4k3/8/8/4K3/4P3/8 w - - 0 40';
    expect(parting(`[FEN "${endgame}"]\n\n40. Kd4 Kd6 *`)).toBe('apart');
    const late = tableOf('40. Kd4', 'white', ` fen="${endgame}"`);
    expect(parting(`[FEN "${endgame}"]\n\n40. Ke4 *`, late)).toBe('advised | white | 40.Ke4 | Kd4');
  });
});

describe('what cannot be compared is named, and the others count', () => {
  const file = (middle: string) =>
    `[White "A"]\n\n1. d4 d5 *\n\n[White "B"]\n${middle}\n\n[White "C"]\n\n1. d4 d5 2. c4 e6 *\n`;

  test.each([
    ['\n1. d4 d5 2. Ke3 *', { kind: 'illegal', written: 'Ke3', at: '2.' }],
    ['\n1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Rg1 Nf6 5. O-O *', { kind: 'illegal', at: '5.' }],
    ['\n1. d4 Nf6 2. Nf3 b6 3. Nd2 *', { kind: 'ambiguous', written: 'Nd2', at: '3.' }],
    ['\n1. d4 -- 2. c4 *', { kind: 'illegal', written: '--', at: '1...' }],
    ['\n1. d4 white resigns', { kind: 'unreadable', written: 'white', at: '1...' }],
    ['\n1. d4 {never', { kind: 'comment-unclosed', written: '{never', at: '1...' }],
    ['\n1. d4 (1. c4', { kind: 'variation-unclosed', at: '1...' }],
    ['[FEN "8/8/8/8 w - - 0 1"]\n\n1. d4 *', { kind: 'start', written: '8/8/8/8 w - - 0 1' }],
  ])('%s', (middle, fault) => {
    const [a, b, c, ...more] = compare(file(middle));
    expect(a).toMatchObject({ number: 1, white: 'A', kind: 'met' });
    expect(b).toMatchObject({ number: 2, white: 'B', kind: 'broken', fault });
    expect(c).toMatchObject({ number: 3, white: 'C', kind: 'met' });
    expect(more).toEqual([]);
  });

  test('a fault says why, on the board', () => {
    const [game] = compare('1. d4 d5 2. Ke3');
    expect(game).toMatchObject({ fault: { reason: expect.stringContaining('king') } });
  });

  test('other variants of chess are left out', () => {
    const fen = 'bqnbnrkr/pppppppp/8/8/8/8/PPPPPPPP/BQNBNRKR w HFhf - 0 1';
    const [, b] = compare(file(`[Variant "Chess960"]\n[FEN "${fen}"]\n\n1. d4 *`));
    expect(b).toMatchObject({ kind: 'variant', variant: 'Chess960' });
    // Without the tag the castling rights tell.
    const [, untold] = compare(file(`[FEN "${fen}"]\n\n1. d4 *`));
    expect(untold).toMatchObject({ kind: 'broken', fault: { kind: 'start' } });
    const [, standard] = compare(file('[Variant "Standard"]\n\n1. d4 *'));
    expect(standard).toMatchObject({ kind: 'met' });
  });
});

test('names are UTF-8, or Latin-1 where they are not, each game by itself', () => {
  const utf8 = Buffer.from('[White "Löwe"]\n\n1. d4 *\n\n');
  const latin1 = Buffer.from('[White "Jäger"]\n\n1. d4 *\n\n', 'latin1');
  const games = compare(Buffer.concat([utf8, latin1, utf8]));
  expect(games.map(({ white }) => white)).toEqual(['Löwe', 'Jäger', 'Löwe']);
});

test.each([
  ['1. d4 d5 2. Bf4 1-0', '1-0'],
  ['1. d4 d5 (1... f5 0-1) 2. Bf4 {lost on time 1-0} 1/2-1/2', '1/2-1/2'],
  ['[Result "*"]\n\n1. e4 0-1', '0-1'],
  ['[Result "1-0"]\n\n1. d4 *', '1-0'],
  ['[White "A"]\n\n0-1', '0-1'],
  ['1. d4 d5 2. Bf4', '*'],
])(
  'the result stands in its tag, else behind the moves (PGN standard, 8.2.6): %j',
  (pgn, result) => {
    expect(compare(pgn)[0]?.result).toBe(result);
  },
);

describe('over all games', () => {
  const game = (white: string, black: string, result: string, moves: string) =>
    `[White "${white}"]\n[Black "${black}"]\n[Result "${result}"]\n\n${moves} ${result}\n\n`;
  const games = compare(
    game('Ann', 'Bo', '1-0', '1. d4 d5 2. c4 Nf6') +
      game('Cy', 'Bo', '0-1', '1. d4 d5 2. c4 dxc4') +
      game('Bo', 'Dee', '1/2-1/2', '1. d4 d5 2. c4 Nf6') +
      game('Ann', 'Bo', '*', '1. d4 d5 2. Bf4 c5') +
      game('Ann', 'Bo', '1-0', '1. e4'),
  );

  test('positions are sorted by how often games leave there', () => {
    const line = linesOf(course);
    const rows = byPosition(course, games).map(({ exit, ...row }) => ({
      ...row,
      next: exit.next?.san,
      line: line(row.position)?.map(({ san }) => san),
      games: row.games.map(({ number }) => number),
      moves: row.moves.map(({ san }) => san),
    }));
    expect(rows).toEqual([
      {
        position: 3,
        next: 'Nf6',
        line: ['d4', 'd5', 'c4'],
        leaving: 'advised',
        by: 'black',
        moves: ['e6'],
        games: [1, 2, 3],
        played: [
          { san: 'Nf6', games: 2 },
          { san: 'dxc4', games: 1 },
        ],
        score: { won: 1, drawn: 1, lost: 1 },
      },
      {
        position: 2,
        next: 'Bf4',
        line: ['d4', 'd5'],
        leaving: 'covered',
        by: 'white',
        moves: ['c4'],
        games: [4],
        played: [{ san: 'Bf4', games: 1 }],
        score: { won: 0, drawn: 0, lost: 0 },
      },
    ]);
  });

  test('a player counts where they had the side of the course', () => {
    const numbers = (name: string) => {
      const { games: own, otherSide } = withPlayer(course, games, name);
      return [own.map(({ number }) => number), otherSide];
    };
    expect(numbers('Bo')).toEqual([[1, 2, 4, 5], 1]);
    expect(numbers(' dee')).toEqual([[3], 0]);
    expect(numbers('')).toEqual([[1, 2, 3, 4, 5], 0]);
  });
});
