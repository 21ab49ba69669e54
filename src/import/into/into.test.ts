/** A PGN file laid against a course, and written into it. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { initialPosition, legalMoves, playSan } from '../../chess/index.ts';
import { adviceOf, buildCourse, type Course, nodeAt } from '../../model/index.ts';
import { readCourse } from '../../read/index.ts';
import { type Laid, type LayOptions, layFile, writeBranches } from './index.ts';

const frame = { games: [], media: [], problems: [] };
const courseOf = (texts: ReadonlyMap<string, string>, side = 'white') =>
  buildCourse(
    readCourse({
      ...frame,
      settings: { path: 'course.yaml', text: `title: T\nside: ${side}\n` },
      chapters: [...texts].map(([file, text]) => ({ path: file, text })),
    }),
  );

async function lay(course: Course, pgn: string, options: Partial<LayOptions> = {}) {
  const parts = (async function* parts() {
    yield { text: pgn, line: 1, tooLong: false };
  })();
  return layFile(course, parts, { as: 'auto', ...options });
}

/** A course of one chapter with one block, and a file laid against it and written. */
async function into(moves: string, pgn: string, options: Partial<LayOptions> = {}) {
  const start = `---\ntitle: A\n---\n\nBefore.\n\n\`\`\`moves\n${moves}\n\`\`\`\n`;
  const texts = new Map<string, string>([['chapters/1.md', start]]);
  const course = courseOf(texts);
  const laid = await lay(course, pgn, options);
  const written = writeBranches(course, laid.branches, {
    texts,
    from: 'x.pgn',
    read: (now) => courseOf(now),
  });
  const text = written.texts.get('chapters/1.md') ?? start;
  return {
    laid,
    block: /```moves\n([\s\S]*?)\n```/.exec(text)?.[1],
    text,
    refused: written.refused,
  };
}

describe('what a file has for a course', () => {
  test('moves behind the last one of a line', async () => {
    const { laid, block } = await into('1. d4 d5 2. c4', '1. d4 d5 2. c4 e6 $1 {Solid.} 3. Nc3 *');
    expect(laid).toMatchObject({ known: 3, against: [], said: [], apart: [] });
    expect(block).toBe('1. d4 d5 2. c4 2... e6! {:todo[from x.pgn, game 1] Solid.} 3. Nc3');
  });

  test('a reply with its alternatives; those of the own side are options', async () => {
    const { block } = await into(
      '1. d4 d5 2. c4 e6 3. Nc3',
      '1. d4 d5 2. c4 c6 3. Nf3 (3. Nc3 {too} dxc4) (3. e4 $2) 3... Nf6 (3... Bf5) *',
    );
    expect(block).toBe(
      [
        '1. d4 d5 2. c4 e6',
        '  ( 2... c6 {:todo[from x.pgn, game 1]} 3. Nf3 ( 3. Nc3 {:option[] too} 3... dxc4 ) ( 3. e4? ) 3... Nf6 ( 3... Bf5 ) )',
        '3. Nc3',
      ].join('\n'),
    );
  });

  test('what disagrees is told and not written, unless it is called bad', async () => {
    const { laid, block } = await into('1. d4 d5 2. c4', '1. d4 d5 2. Nf3 Nf6 *');
    expect(laid.against).toMatchObject([
      { san: 'Nf3', advised: ['c4'], rest: '2...Nf6', way: '1.d4 d5' },
    ]);
    expect(block).toBe('1. d4 d5 2. c4');
    const bad = await into('1. d4 d5 2. c4', '1. d4 d5 2. e4 $2 dxe4 *');
    expect(bad.laid.against).toEqual([]);
    expect(bad.block).toContain('( 2. e4? {:todo[from x.pgn, game 1]} 2... dxe4 )');
  });

  test.each(['Nf3 {:option[]}', 'Nf3?'])(
    'a move that the course has is known: 2. %s',
    async (has) => {
      const { laid, block } = await into(
        `1. d4 d5 2. c4\n  ( 2. ${has} )`,
        '1. d4 d5 2. Nf3 Nf6 *',
      );
      expect(laid).toMatchObject({ known: 3, against: [] });
      expect(block).toContain('2... Nf6');
    },
  );

  test('nothing behind a move against the advice is new, though it comes to the course again', async () => {
    const { laid, block } = await into(
      '1. d4 d5 2. c4 e6 3. Nf3',
      '1. d4 d5 2. Nf3 e6 3. c4 {Our words} Nf6 *',
    );
    expect(laid.against).toMatchObject([{ san: 'Nf3', rest: '2...e6 3.c4 Nf6' }]);
    expect(laid.said).toMatchObject([{ text: 'Our words' }]);
    expect(block).toBe('1. d4 d5 2. c4 e6 3. Nf3');
  });

  test('where the course ends on purpose a line goes on only if that is asked', async () => {
    const moves = '1. d4 d5 2. c4\n  ( 2. Nf3 {:option[]} Nf6 {:end[not our way]} )';
    const pgn = '1. d4 d5 2. Nf3 Nf6 3. c4 (3. g3) e6 *';
    const { laid, block } = await into(moves, pgn);
    expect(laid.past).toMatchObject([
      { san: 'c4', rest: '3...e6', way: '1.d4 d5 2.Nf3 Nf6' },
      { san: 'g3', rest: '' },
    ]);
    expect(laid.branches).toEqual([]);
    expect(block).toBe(moves);
    const asked = await into(moves, pgn, { pastEnds: true });
    expect(asked.laid.past).toEqual([]);
    expect(asked.block).toContain('3. c4 {:todo[from x.pgn, game 1]}');
  });

  test('what cannot be played stays as code, which states nothing', async () => {
    const { block, text } = await into('1. d4 d5', '1. d4 d5 2. c4 dxc4 3. Qxc4 {won `a` }Nf6 *');
    expect(block).toContain('2... dxc4 {``[not read: 3. Qxc4 (won `a` )Nf6]``}');
    expect(messagesOf(courseOf(new Map([['chapters/1.md', text]])))).toEqual([]);
  });

  test('words at known moves are told, and so are those of lines that are left', async () => {
    const { laid } = await into(
      '1. d4 {The queen’s pawn.} d5 2. c4',
      '{First words} 1. d4 {pawn} d5 {New words} 2. Nf3 {Left words} *',
    );
    expect(laid.said.map(({ text }) => text)).toEqual(['First words', 'New words', 'Left words']);
  });

  test('a line that comes to a position of the course ends there', async () => {
    const { block, laid } = await into(
      '1. d4 d5 2. c4 e6 {:here[qgd]} 3. Nc3 Nf6',
      '1. d4 e6 2. c4 d5 3. Nc3 Nf6 4. Bg5 *',
    );
    expect(block).toBe(
      '1. d4 d5\n  ( 1... e6 {:todo[from x.pgn, game 1]} 2. c4 d5 {:same[qgd]} )\n2. c4 e6 {:here[qgd]} 3. Nc3 Nf6 4. Bg5 {:todo[from x.pgn, game 1]}',
    );
    expect(laid.known).toBe(3);
  });

  test('two games that share new moves make one line of it, one branch at a time finds its place', async () => {
    const { block, refused } = await into(
      '1. d4 d5 2. c4',
      '[White "a"]\n\n1. d4 Nf6 2. c4 e6 *\n\n[White "b"]\n\n1. d4 Nf6 2. c4 g6 *\n\n[White "c"]\n\n1. d4 f5 *\n',
    );
    expect(refused).toEqual([]);
    expect(block).toBe(
      [
        '1. d4 d5',
        '  ( 1... Nf6 {:todo[from x.pgn, game 1, 2]} 2. c4 e6 ( 2... g6 ) )',
        '  ( 1... f5 {:todo[from x.pgn, game 3]} )',
        '2. c4',
      ].join('\n'),
    );
  });

  test('a played game is no line, but a block for a chapter of games', async () => {
    const game = '[White "Ann"]\n[Black "Bob"]\n[Result "1-0"]\n\n1. e4 {bold} e5 1-0\n';
    const { laid, block } = await into('1. d4 d5', game);
    expect(laid.branches).toEqual([]);
    expect(laid.played).toMatchObject([{ number: 1, name: 'Ann – Bob', isThere: false }]);
    expect(laid.played[0]?.block).toContain('1. e4 {bold} 1... e5 1-0');
    expect(block).toBe('1. d4 d5');
    const course = courseOf(
      new Map([['chapters/1.md', '---\ntitle: A\n---\n\n```moves\n1. d4 d5\n```\n']]),
    );
    expect((await lay(course, game, { as: 'lines' })).against).toHaveLength(1);
  });

  test('a game from a position that the course has not is apart', async () => {
    const fen = '[FEN "4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"]\n\n1. e4 *';
    expect((await into('1. d4 d5', fen)).laid.apart).toMatchObject([{ number: 1 }]);
  });
});

const demo = ['1-the-isolated-pawn.md', '2-other-answers.md', '3-move-orders.md'].map(
  (name) =>
    [`chapters/${name}`, readFileSync(path.join('demo-course/chapters', name), 'utf8')] as const,
);

const messagesOf = ({ chapters }: Course) =>
  chapters.flatMap(({ problems }) => problems.map(({ message }) => message));

test('random lines, written into the demo: nothing else changes, and all is there afterwards', async () => {
  const texts = new Map<string, string>(demo);
  const course = courseOf(texts, 'black');
  const keys = Object.values(course.graph).flatMap(
    ({ at: [ref] }) => (ref && nodeAt(course, ref)?.position) ?? [],
  );
  const shape = fc.array(
    fc.record({ at: fc.nat(), picks: fc.array(fc.nat(), { minLength: 1, maxLength: 8 }) }),
    { minLength: 1, maxLength: 12 },
  );
  await fc.assert(
    fc.asyncProperty(shape, async (lines) => {
      const pgn = lines
        .map(({ at, picks }) => {
          const { fen } = keys[at % keys.length] ?? { fen: initialPosition.fen };
          let position = { key: fen.split(' ').slice(0, 4).join(' '), fen };
          const moves: string[] = [];
          for (const pick of picks) {
            const legal = legalMoves(position);
            const played = playSan(position, legal[pick % Math.max(1, legal.length)] ?? '');
            if (played === undefined) break;
            moves.push(played.san);
            position = played.after;
          }
          return `[SetUp "1"]\n[FEN "${fen}"]\n\n${moves.join(' ')} *\n`;
        })
        .join('\n');
      const laid: Laid = await lay(course, pgn);
      const { texts: changed, refused } = writeBranches(course, laid.branches, {
        texts,
        from: 'x.pgn',
        read: (now) => courseOf(now, 'black'),
      });
      expect(refused).toEqual([]);
      const now = courseOf(new Map([...texts, ...changed]), 'black');
      for (const [file, text] of changed) {
        // What was there is still there, in its order.
        let at = 0;
        for (const word of (texts.get(file) ?? '').split(/\s+/)) {
          at = text.indexOf(word, at);
          expect(at).toBeGreaterThanOrEqual(0);
          at += word.length;
        }
      }
      expect(messagesOf(now)).toEqual(messagesOf(course));
      const after = adviceOf(now);
      for (const [key, advice] of adviceOf(course)) {
        expect(after.get(key)?.map(({ san }) => san)).toEqual(
          expect.arrayContaining(advice.map(({ san }) => san)),
        );
      }
      expect((await lay(now, pgn)).branches).toEqual([]);
    }),
    { numRuns: runs(2) },
  );
});
