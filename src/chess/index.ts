export { attackersOf, inCheck } from './attacks.ts';
export { type Board, pieceAt, readBoard, sideToMove } from './board.ts';
export { describePosition } from './describe.ts';
export { isFenFault, parseFen } from './fen.ts';
export { initialPosition } from './initial.ts';
export { makeFen } from './make-fen.ts';
export { isMoveFault, playMove } from './play.ts';
export { isMate, isStalemate, legalMoves } from './rules.ts';
export { fileOf, isDark, isSquare, rankOf, squareAt, squares } from './squares.ts';
export type {
  Color,
  FenFault,
  MoveFault,
  Piece,
  PieceKind,
  PlayedMove,
  Position,
  Square,
} from './types.ts';
export { colors, pieceKinds } from './types.ts';
