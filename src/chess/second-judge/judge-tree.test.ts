/** chess.js sees what a core that errs would have played. */
import { expect, test } from 'vitest';
import { initialPosition, isMoveFault, type PlayedTree, playMove } from '../index.ts';
import { judgeInThread } from './index.ts';
import { judgeTree } from './judge-tree.ts';

type Moves = PlayedTree['moves'];

/** Plays lines, each given as the index of the move it follows and its moves. */
function treeOf(...lines: readonly (readonly [parent: number, moves: string])[]): PlayedTree {
  const moves: Moves[number][] = [];
  const positions = new Map([[-1, initialPosition]]);
  for (const [first, written] of lines) {
    let parent = first;
    for (const move of written.split(' ')) {
      const position = positions.get(parent);
      const played = position && playMove(position, move);
      if (!played || isMoveFault(played)) throw new Error(move);
      moves.push({ parent, san: played.san, fen: played.after.fen });
      parent = moves.length - 1;
      positions.set(parent, played.after);
    }
  }
  return { start: initialPosition.fen, moves };
}

const sound = treeOf([-1, 'd4 Nf6 c4 g6 Nc3 d5'], [3, 'Nf3 Bg7'], [1, 'Nd2 e5'], [-1, 'e4 c5']);

/** The tree with one move told otherwise. */
function withFault(index: number, fault: Partial<Moves[number]>): PlayedTree {
  return {
    ...sound,
    moves: sound.moves.map((move, at) => (at === index ? { ...move, ...fault } : move)),
  };
}

test('a sound tree is found sound, variations and all', () => {
  expect(judgeTree(sound)).toBeUndefined();
});

test('so is one in the order of a text, where a variation comes before what it varies goes on', () => {
  const written = treeOf([-1, 'd4 d5'], [0, 'Nf6 c4'], [1, 'c4 e6'], [3, 'g6']);
  expect(judgeTree(written)).toBeUndefined();
});

test('so are castling, en passant, a promotion, a move that needs its file, and mate', () => {
  const lines = treeOf(
    [-1, 'e4 e5 Nf3 Nc6 Bc4 Bc5 O-O Nge7 Nc3'],
    [-1, 'b4 a5 bxa5 b5 axb6 Nc6 b7 Nf6 bxa8=N'],
    [-1, 'f3 e5 g4 Qh4#'],
  );
  expect(judgeTree(lines)).toBeUndefined();
});

test.each([
  ['an illegal move', 2, { san: 'c5' }, 'is no legal move'],
  ['a move in a variation that is illegal there', 9, { san: 'e6' }, /^leads to /],
  ['a spelling that names too much', 6, { san: 'Ngf3' }, 'is no legal move'],
  ['a check that is none', 8, { san: 'Nd2+' }, 'is Nd2'],
  ['another position', 4, { fen: initialPosition.fen }, /^leads to rnbqkb1r/],
] as const)('%s is found', (_, index, fault, verdict) => {
  const expected = typeof verdict === 'string' ? verdict : expect.stringMatching(verdict);
  expect(judgeTree(withFault(index, fault))).toMatchObject({ verdict: expected });
});

test('each field of a position is held against the second judge', () => {
  // Castling is lost by one side, a pawn can be taken in passing, and no clock stands at its start.
  const line = treeOf([-1, 'e4 Nf6 Nf3 Rg8 e5 d5']);
  const fields = line.moves.at(-1)?.fen.split(' ') ?? [];
  const others = ['8/8/8/8/8/8/8/8', 'b', 'KQkq', '-', '1', '3'];
  const unseen = others.filter((other, at) => {
    const fen = fields.with(at, other).join(' ');
    const moves = line.moves.with(-1, { parent: 4, san: 'd5', fen });
    return judgeTree({ ...line, moves }) === undefined;
  });
  expect(fields).toEqual([expect.any(String), 'w', 'KQq', 'd6', '0', '4']);
  expect(unseen).toEqual([]);
});

test.each([
  ['a pinned piece that moves', '4k3/4r3/8/8/8/8/4N3/4K3 w - - 0 1', 'Nc3', 'is no legal move'],
  ['castling through a check', '4kr2/8/8/8/8/8/8/4K2R w K - 0 1', 'O-O', 'is no legal move'],
  ['castling without the right', '4k3/8/8/8/8/8/8/4K2R w - - 0 1', 'O-O', 'is no legal move'],
  ['taking in passing too late', '4k3/8/8/3pP3/8/8/8/4K3 w - - 0 1', 'exd6', 'is no legal move'],
  ['a check without its sign', '4k3/8/8/8/8/8/8/R3K3 w - - 0 1', 'Ra8', 'is Ra8+'],
  ['a mate that is called a check', '4k3/7R/8/8/8/8/8/R3K3 w - - 0 1', 'Ra8+', 'is Ra8#'],
  ['a piece that may be another', '4k3/8/8/8/8/N7/8/N3K3 w - - 0 1', 'Nc2', 'is no legal move'],
  [
    'a file that the pin makes needless',
    '4k3/8/8/8/1b6/2N5/4N3/4K3 w - - 0 1',
    'Ned4',
    'is no legal move',
  ],
  ['a capture without its sign', '4k3/8/3p4/8/8/8/8/3RK3 w - - 0 1', 'Rd6', 'is no legal move'],
  ['a promotion to nothing', '8/P3k3/8/8/8/8/8/4K3 w - - 0 1', 'a8', 'is no legal move'],
  ['another king', '4k3/8/8/8/8/8/8/4K3 w - - 0 1', 'Ke8', 'is no legal move'],
])('%s is found', (_, start, san, verdict) => {
  const tree = { start, moves: [{ parent: -1, san, fen: start }] };
  expect(judgeTree(tree)).toEqual({ fen: start, san, verdict });
});

test('it names the position in which the move was played', () => {
  expect(judgeTree(withFault(9, { san: 'O-O' }))).toEqual({
    fen: 'rnbqkb1r/pppppppp/5n2/8/3P4/8/PPPNPPPP/R1BQKBNR b KQkq - 2 2',
    san: 'O-O',
    verdict: 'is no legal move',
  });
});

test('a thread finds the same', async () => {
  expect(await judgeInThread([sound, sound])).toBeUndefined();
  expect(await judgeInThread([sound, withFault(2, { san: 'c5' })])).toMatchObject({ san: 'c5' });
});
