import { expect, test } from 'vitest';
import * as chess from './index.ts';

test('the public names', () => {
  expect(Object.keys(chess).sort()).toEqual([
    'attackersOf',
    'colors',
    'describePosition',
    'fileOf',
    'inCheck',
    'initialPosition',
    'isDark',
    'isFenFault',
    'isMate',
    'isMoveFault',
    'isSquare',
    'isStalemate',
    'legalMoves',
    'makeFen',
    'parseFen',
    'pieceAt',
    'pieceKinds',
    'playMove',
    'rankOf',
    'readBoard',
    'sideToMove',
    'squareAt',
    'squares',
  ]);
});
