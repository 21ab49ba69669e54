/**
 * Searching a course for positions. The positions and moves that are searched for are made by
 * chessops, a second rules library, from the demo course's own moves.
 */
import { Chess } from 'chessops/chess';
import { makeFen, parseFen } from 'chessops/fen';
import { makeSan, parseSan } from 'chessops/san';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CourseTable } from '../../contract/course-table.ts';
import { buildCourse } from '../../model/index.ts';
import { findFiles, readCourse } from '../../read/index.ts';
import { assignAddresses } from '../../render/addresses.ts';
import { makeCourseTable } from '../../site/render/course-table.ts';
import { stringsFor } from '../../strings/index.ts';
import { pathsOf } from '../paths.ts';
import { tableOf } from '../testing/table-of.ts';
import { findPlacement } from './find-placement.ts';
import { searchPositions } from './search-positions.ts';

const [de, en, es] = [stringsFor('de'), stringsFor('en'), stringsFor('es')];

const letters = en.pieceLetters;

describe('every position of the demo course is found', () => {
  let table: CourseTable;
  /** By index: the FEN, and the moves from the start as movetext, both by chessops. */
  const asked: { fen: string; moves: string }[] = [];
  /** Where a block of the course begins from a FEN, no moves from the start lead there. */
  const ofNoGame = '-';

  beforeAll(async () => {
    const course = buildCourse(readCourse(await findFiles('demo-course')));
    table = makeCourseTable(course, assignAddresses(course));
    const paths = pathsOf(table);
    table.positions.forEach((_, index) => {
      const way = paths.to(index);
      const root = table.positions[way[0]?.from ?? index]?.key ?? '';
      const position = Chess.fromSetup(parseFen(root).unwrap()).unwrap();
      const fromStart = `${root} 0 1` === makeFen(Chess.default().toSetup());
      const written: string[] = [];
      for (const { move } of way) {
        const played = parseSan(position, move.san);
        if (played === undefined) throw new Error(`chessops does not know ${move.san}`);
        if (position.turn === 'white') written.push(`${position.fullmoves}.`);
        written.push(makeSan(position, played));
        position.play(played);
      }
      asked.push({
        fen: makeFen(position.toSetup()),
        moves: fromStart ? written.join(' ') : ofNoGame,
      });
    });
  });

  test('by its FEN', () => {
    expect(asked.length).toBeGreaterThan(100);
    for (const [index, { fen }] of asked.entries()) {
      expect(searchPositions(table, fen, letters)).toMatchObject({ exact: index });
    }
  });

  test('by its pieces alone', () => {
    for (const [index, { fen }] of asked.entries()) {
      const found = searchPositions(table, fen.split(' ')[0] ?? '', letters);
      expect(found.kind === 'placement' && found.exact).toContain(index);
    }
  });

  test('by its moves, with and without numbers, in three languages', () => {
    let followed = 0;
    for (const [index, { moves }] of asked.entries()) {
      if (moves === '' || moves === ofNoGame) continue;
      followed++;
      const bare = moves.replace(/\d+\.\s*/g, '');
      for (const text of [moves, bare]) {
        expect(searchPositions(table, text, letters)).toMatchObject({ known: index });
      }
      for (const { pieceLetters } of [de, es]) {
        const kinds = { K: 'king', Q: 'queen', R: 'rook', B: 'bishop', N: 'knight' } as const;
        const own = bare.replace(/[KQRBN]/g, (letter) => pieceLetters[kinds[letter as 'K']]);
        expect(searchPositions(table, own, pieceLetters)).toMatchObject({ known: index });
        // English letters are read in every course.
        expect(searchPositions(table, bare, pieceLetters)).toMatchObject({ known: index });
      }
    }
    expect(followed).toBeGreaterThan(100);
  });
});

describe('moves', () => {
  const table = tableOf('1. d4 d5 2. c4 e6 3. Nc3 c5');
  const search = (text: string) => searchPositions(table, text, letters);

  test('that leave the course tell where, and may come back by another order', () => {
    expect(search('1.d4 d5 2.c4 dxc4')).toMatchObject({ kind: 'moves', knownPlies: 3 });
    expect(search('1.c4 e6 2.Nc3 d5 3.d4 c5')).toMatchObject({ kind: 'moves', knownPlies: 6 });
  });

  test('that cannot be played tell which, and keep what went before', () => {
    const found = search('1.d4 d5 2.Nf4');
    expect(found).toMatchObject({ kind: 'moves', knownPlies: 2, stopped: { written: 'Nf4' } });
  });

  test('that have a letter of another language tell that letter', () => {
    const reasonOf = (text: string, own = letters) => {
      const found = searchPositions(table, text, own);
      return found.kind === 'moves' ? found.stopped?.fault.reason : undefined;
    };
    expect(reasonOf('1.d4 Sf6')).toMatch(/^S stands for no piece/);
    expect(reasonOf('1.d4 Cf6', de.pieceLetters)).toMatch(/^C stands for no piece/);
    expect(reasonOf('1.d4 Nd6', de.pieceLetters)).not.toContain('Y stands');
  });

  test('are read from a pasted game with its tags, comments and variations', () => {
    const game = '[Event "Club night"]\n\n1. d4 {a comment} d5 (1... Nf6 2. c4) 2. c4 $1 e6 1-0';
    expect(search(game)).toMatchObject({ kind: 'moves', knownPlies: 4 });
  });

  test('start where a pasted game says', () => {
    const fen = 'rnbqkbnr/ppp1pppp/8/3p4/2PP4/8/PP2PPPP/RNBQKBNR b KQkq - 0 2';
    expect(search(`[SetUp "1"]\n[FEN "${fen}"]\n\n2... e6`)).toMatchObject({ knownPlies: 1 });
    expect(search(`[FEN "${fen}"]`)).toMatchObject({ kind: 'position', exact: 3 });
  });

  test('that are none are told with their place', () => {
    expect(search('isolated pawn')).toMatchObject({ kind: 'unreadable', start: 0 });
    expect(search('1.d4 d5 then c4')).toMatchObject({ kind: 'unreadable', words: 'then' });
    expect(search('  ')).toEqual({ kind: 'empty' });
  });
});

describe('a FEN', () => {
  const table = tableOf('1. d4 d5 2. c4 e6');

  test('that is none tells why and where', () => {
    const fault = (text: string) => {
      const found = searchPositions(table, text, letters);
      return found.kind === 'fen-fault' ? found.fault : found;
    };
    expect(fault('rnbqkbnr/pppppppp/8/8/9/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1')).toEqual({
      reason: '9 stands for no piece: a FEN knows KQRBNP, kqrbnp and the digits 1 to 8',
      offset: 22,
    });
    expect(fault('8/8/8/8/8/8/8/8')).toEqual({ reason: 'White has no king', offset: 0 });
    expect(fault('rnbqkbnr/pppppppp/8/8 w')).toHaveProperty('reason');
  });

  test('with other rights or the other side to move finds what has the same pieces', () => {
    const found = searchPositions(
      table,
      'rnbqkbnr/ppp1pppp/8/3p4/2PP4/8/PP2PPPP/RNBQKBNR w KQ - 0 2',
      letters,
    );
    expect(found).toEqual({
      kind: 'position',
      key: 'rnbqkbnr/ppp1pppp/8/3p4/2PP4/8/PP2PPPP/RNBQKBNR w KQ -',
      alike: [{ position: 3, differs: ['turn', 'castling'] }],
    });
  });
});

test('a few pieces are found wherever they stand together, and the same board apart', () => {
  const table = tableOf('1. d4 d5 2. c4 e6');
  expect(findPlacement(table, '8/8/8/3p4/2PP4/8/8/8')).toEqual({ exact: [], holding: [3, 4] });
  expect(findPlacement(table, '8/8/8/8/8/8/8/8')).toEqual({ exact: [], holding: [] });
  const start = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR';
  expect(findPlacement(table, start)).toEqual({ exact: [0], holding: [] });
  // A knight of the other colour is another piece.
  expect(findPlacement(table, '8/8/8/8/8/8/8/1n6')).toEqual({ exact: [], holding: [] });
});
