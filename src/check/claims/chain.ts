import { fileOf, readBoard, relativeRank } from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';

export const chain = defineClaim({
  name: 'chain',
  usage: ['chain d4 e5', 'chain c3 d4 e5'],
  definition: `
Pawns of one colour stand on all the squares, and each but the rearmost is defended by the one
behind it: they stand on ranks that follow each other and on neighbouring files. The squares may
be given in any order. The chain may go on beyond them, and may turn, as in c3, d4, c5.
`,
  source: 'Wikipedia, “Pawn structure”, on pawn chains',
  examples: [
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2ppP3/3P4/2P5/PP3PPP/RNBQKBNR b KQkq - 0 4',
      claim: 'chain c3 d4 e5',
      holds: true,
      because: 'the pawn on c3 defends d4 and the one on d4 defends e5',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2ppP3/3P4/2P5/PP3PPP/RNBQKBNR b KQkq - 0 4',
      claim: 'chain d5 e6',
      holds: true,
      note: "Black's chain runs the other way; the order of the squares does not matter.",
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2ppP3/3P4/2P5/PP3PPP/RNBQKBNR b KQkq - 0 4',
      claim: 'chain c5 d5',
      holds: false,
      because: 'the pawns on c5 and d5 stand on one rank, and neither defends the other',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2ppP3/3P4/2P5/PP3PPP/RNBQKBNR b KQkq - 0 4',
      claim: 'chain d4 d5',
      holds: false,
      because: "the pawn on d4 is White's and the one on d5 is Black's",
    },
    {
      fen: '4k3/8/8/P7/1P6/P7/8/4K3 w - - 0 1',
      claim: 'chain a3 b4 a5',
      holds: true,
      note: 'A chain at the edge turns.',
    },
    {
      fen: '4k3/8/8/2P5/8/P7/8/4K3 w - - 0 1',
      claim: 'chain a3 b4 c5',
      holds: 'empty',
      because: 'no pawn stands on b4',
    },
  ],
  parse: (words) => words.squares(2),
  judge({ position }, squares) {
    const board = readBoard(position);
    const missing = squares.find((square) => board.get(square)?.kind !== 'pawn');
    if (missing) return empty(`no pawn stands on ${missing}`);
    const [first = '', ...rest] = squares;
    const color = board.get(first)?.color ?? 'white';
    const foreign = rest.find((square) => board.get(square)?.color !== color);
    if (foreign) {
      const [own, other] = color === 'white' ? ["White's", "Black's"] : ["Black's", "White's"];
      return no(`the pawn on ${first} is ${own} and the one on ${foreign} is ${other}`);
    }
    const rank = (square: string) => relativeRank(square, color);
    const line = [...squares].sort((a, b) => rank(a) - rank(b) || a.localeCompare(b));
    const links: string[] = [];
    for (const [index, square] of line.entries()) {
      const next = line[index + 1];
      if (!next) break;
      if (rank(next) === rank(square)) {
        return no(
          `the pawns on ${square} and ${next} stand on one rank, and neither defends the other`,
        );
      }
      const joined =
        rank(next) === rank(square) + 1 && Math.abs(fileOf(next) - fileOf(square)) === 1;
      if (!joined) return no(`the pawn on ${square} does not defend ${next}`);
      links.push(`${index === 0 ? 'the pawn' : 'the one'} on ${square} defends ${next}`);
    }
    return yes(links.join(' and '));
  },
});
