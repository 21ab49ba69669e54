import {
  attackersOn,
  kingOf,
  nameOf,
  nameSquares,
  otherColor,
  readBoard,
  sideToMove,
} from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';

export const discoveredCheck = defineClaim({
  name: 'discovered-check',
  usage: ['discovered-check', 'after Nc6: discovered-check'],
  definition: `
The side to move is in check from a piece that the last move did not move: it stood on its square
before. It speaks of the last move shown, or of the last one after \`after\`; where that move is not
known, the claim and its denial are false. With the piece that moved giving check as well it is a
\`double-check\` too.
`,
  source: 'Wikipedia, “Discovered attack”: check by a piece other than the one moved',
  examples: [
    {
      fen: '4k3/8/8/4N3/1q6/8/8/4R1K1 w - - 0 1',
      moves: ['Nc6+'],
      claim: 'discovered-check and not double-check',
      holds: true,
    },
    {
      fen: '4k3/8/8/4N3/1q6/8/8/4R1K1 w - - 0 1',
      claim: 'after Nc6: discovered-check',
      holds: true,
      because: 'after Nc6+, the rook on e1 gives check and has not moved',
    },
    {
      fen: '4k3/8/8/8/8/8/8/R5K1 w - - 0 1',
      moves: ['Ra8+'],
      claim: 'discovered-check',
      holds: false,
      because: 'the rook on a8 gives check and has just moved',
    },
    {
      fen: '5k2/8/8/8/8/8/8/4K2R w K - 0 1',
      moves: ['O-O+'],
      claim: 'discovered-check',
      holds: false,
      note: 'The rook has moved as well.',
    },
    {
      fen: '4k3/8/8/8/8/8/8/4R1K1 b - - 0 1',
      claim: 'discovered-check',
      holds: 'empty',
      because: 'the move that led here is not known',
    },
  ],
  parse: () => undefined,
  judge({ position, before }) {
    if (!before) return empty('the move that led here is not known');
    const board = readBoard(position);
    const king = kingOf(board, sideToMove(position));
    const checkers = king ? attackersOn(board, king, otherColor(sideToMove(position))).sort() : [];
    if (checkers.length === 0) return no('there is no check');
    const earlier = readBoard(before);
    const still = checkers.filter((from) => earlier.get(from) === board.get(from));
    const [first] = still;
    return first === undefined
      ? no(`${nameSquares(board, checkers)} gives check and has just moved`)
      : yes(`${nameOf(board, first)} gives check and has not moved`);
  },
});
