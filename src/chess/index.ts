export { attackersOf, attackersOn, attacksFrom, inCheck, slidersOn, slides } from './attacks.ts';
export {
  type Board,
  fullMoveNumber,
  kingOf,
  otherColor,
  pieceAt,
  readBoard,
  readPlacement,
  sideToMove,
  squaresOf,
} from './board.ts';
export { PositionIndex } from './core/position-index.ts';
export { describePosition, type PositionWords } from './describe.ts';
export { exchangeColors, exchangeRanks } from './exchange-colors.ts';
export { isFenFault, parseFen } from './fen.ts';
export { initialPosition } from './initial.ts';
export {
  englishLetters,
  kindOfSanLetter,
  nameMoves,
  numberedSan,
  numberSign,
  type PieceLetters,
  sanIn,
} from './letters.ts';
export { listed, nameOf, nameSquares, sideName } from './names.ts';
export { whyNeverFrom } from './never-from.ts';
export { passMove } from './pass.ts';
export {
  type PiecesLanguage,
  pieceLettersOf,
  piecesLanguages,
} from './piece-letters.ts';
export { isMoveFault, playMove } from './play.ts';
export { playForgiving } from './play-forgiving.ts';
export { createReplay, type Replay } from './replay.ts';
export { isMate, isStalemate, type LegalMove, legalMoves, listMoves, playSan } from './rules.ts';
export { bestCapture, type Exchange, exchangeOf, gainfulCaptures } from './search/exchange.ts';
export { findMate, type MateSearch, positionBudget } from './search/find-mate.ts';
export { type Loss, lossAfter } from './search/loss.ts';
export { type MaterialBudget, wonByMoves } from './search/material.ts';
export { plainSpelling } from './spelling.ts';
export {
  between,
  fileOf,
  isDark,
  isSquare,
  rankOf,
  relativeRank,
  squareAt,
  squares,
  step,
} from './squares.ts';
export type {
  Color,
  FenFault,
  MoveFault,
  Piece,
  PieceKind,
  PlayedMove,
  PlayedTree,
  Position,
  Square,
} from './types.ts';
export { colors, pieceKinds } from './types.ts';
export { inUci } from './uci.ts';
export { pieceValues } from './values.ts';
export { writePlacement } from './write-placement.ts';
