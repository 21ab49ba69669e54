import { rankOf, readBoard, relativeRank, sideName } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { filesNamed, pawnsOn, rankNamed } from './shared/english.ts';
import { filesBeside, isAhead, pawnsOnFiles } from './shared/pawns.ts';

export const weakSquare = defineClaim({
  name: 'weak-square',
  usage: ['weak-square d4'],
  definition: `
A hole: a square on a side's own third or fourth rank that none of its pawns attacks or could come to
attack by going straight on. So no pawn of that side stands further back on a file beside it. Its rank
says whose it is: squares on the third and fourth rank are weak for White, on the fifth and sixth for
Black. A pawn that might change files by a capture does not count, and where one of the side's own
pawns stands on the square, it is not weak. Whether anybody can make use of it is not asked.
`,
  source:
    "Wikipedia, “Glossary of chess”, “Hole”; the ranks after D. Levin's glossary. Others call a square weak that is merely hard to defend",
  examples: [
    {
      fen: 'rnbqkbnr/pppppppp/8/8/1P6/8/P1PPPPPP/RNBQKBNR b KQkq - 0 1',
      claim: 'weak-square a3 and weak-square a4',
      holds: true,
      note: 'After 1.b4 no pawn can guard them any more.',
    },
    {
      fen: 'rnbqkbnr/pppppppp/8/8/1P6/8/P1PPPPPP/RNBQKBNR b KQkq - 0 1',
      claim: 'weak-square c3',
      holds: false,
      because: 'the white pawn on d2 attacks it or can come to',
    },
    {
      fen: 'r1bqkb1r/pp2pppp/2n2n2/2pp4/3P1P2/2PBP3/PP4PP/RNBQK1NR b KQkq - 0 5',
      claim: 'weak-square e4',
      holds: true,
      because: 'no white pawn on the d- or f-file stands further back',
      note: 'The price of the Stonewall.',
    },
    {
      fen: 'r1bqkb1r/pp2pppp/2n2n2/2pp4/3P1P2/2PBP3/PP4PP/RNBQK1NR b KQkq - 0 5',
      claim: 'weak-square e3',
      holds: false,
      because: "White's own pawn stands on it",
      note: 'By its ranks and files e3 would be one; no enemy piece can settle there while the pawn stands.',
    },
    {
      fen: 'r2q1rk1/pp3ppp/3p4/4p3/8/8/PPP2PPP/R2Q1RK1 w - - 0 1',
      claim: 'weak-square d5',
      holds: true,
      because: 'no black pawn on the c- or e-file stands further back',
      note: "Black's fourth rank: a hole in Black's camp.",
    },
    {
      fen: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1',
      claim: 'weak-square e2',
      holds: false,
      because: "e2 lies on White's second rank, and a hole on the third or fourth",
    },
  ],
  parse: (words) => words.square(),
  judge({ position }, square) {
    const board = readBoard(position);
    const color = rankOf(square) <= 4 ? 'white' : 'black';
    const rank = relativeRank(square, color);
    if (rank < 3) {
      return no(
        `${square} lies on ${sideName(color)}'s ${rankNamed(rank)} rank, and a hole on the third or fourth`,
      );
    }
    const own = board.get(square);
    if (own?.kind === 'pawn' && own.color === color) {
      return no(`${sideName(color)}'s own pawn stands on it`);
    }
    const files = filesBeside(square);
    const guards = pawnsOnFiles(board, color, files).filter((pawn) => isAhead(square, pawn, color));
    return guards.length > 0
      ? no(
          `${pawnsOn(guards, color)} ${guards.length === 1 ? 'attacks it or can come to' : 'attack it or can come to'}`,
        )
      : yes(`no ${color} pawn on ${filesNamed(files)} stands further back`);
  },
});
