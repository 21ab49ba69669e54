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
      moves.push({ parent, san: played.san, key: played.after.key });
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
  ['another position', 4, { key: initialPosition.key }, /^leads to rnbqkb1r/],
] as const)('%s is found', (_, index, fault, verdict) => {
  const expected = typeof verdict === 'string' ? verdict : expect.stringMatching(verdict);
  expect(judgeTree(withFault(index, fault))).toMatchObject({ verdict: expected });
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
