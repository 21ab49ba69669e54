/** Games that `export --with-directives` wrote become the course again that they were. */
export { createPieceJoiner } from './join-pieces.ts';
export { isPiece, pieceOfGame } from './piece-of-game.ts';
