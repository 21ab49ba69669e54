import {
  type Board,
  between,
  type Color,
  fileOf,
  kingOf,
  nameOf,
  otherColor,
  rankOf,
  type Square,
  slidersOn,
  step,
} from '../../chess/index.ts';
import { defineClaim, empty, no, type Verdict, yes } from './define-claim.ts';
import { possessive } from './shared/english.ts';
import { judgePiece } from './shared/judge-piece.ts';
import { isWorthMore } from './shared/worth.ts';

export const pinned = defineClaim({
  name: 'pinned',
  usage: ['pinned f3', 'pinned f3 to d1'],
  definition: `
An enemy bishop, rook or queen attacks the piece on the square, and behind it, next on the same
line, stands its own king (\`pinned f3\`), or the piece named, which is worth more than it by
1-3-3-5-9 (\`pinned f3 to d1\`). A piece that may still move along the line is pinned too. \`not
pinned f3\` denies only the pin to the king.
`,
  source: 'Wikipedia, “Pin (chess)”: absolute, relative and partial pins',
  examples: [
    {
      fen: 'r1bqk1nr/ppp2ppp/2np4/4p3/1b1PP3/2N2N2/PPP2PPP/R1BQKB1R w KQkq - 0 5',
      claim: 'pinned c3',
      holds: true,
      because: 'the bishop on b4 attacks the king on e1 through it',
    },
    {
      fen: 'rnbqk2r/ppp2ppp/3p1n2/4p3/1b1PP3/2N5/PPPB1PPP/R2QKBNR w KQkq - 0 5',
      claim: 'pinned c3',
      holds: false,
      because:
        'after the knight on c3 leaves, the bishop on b4 attacks the king on e1 only through d2, where a bishop stands',
    },
    {
      fen: 'rn1qkbnr/ppp1pppp/8/3p4/3P2b1/5N2/PPP1PPPP/RNBQKB1R w KQkq - 2 3',
      claim: 'pinned f3 to d1',
      holds: false,
      because:
        'after the knight on f3 leaves, the bishop on g4 attacks the queen on d1 only through e2, where a pawn stands',
    },
    {
      fen: '4r1k1/8/8/8/8/8/4R3/4K3 w - - 0 1',
      claim: 'pinned e2',
      holds: true,
      note: 'The rook may move along the file, even take on e8: a partial pin is a pin.',
    },
    {
      fen: 'r1bqk2r/pppp1ppp/2n2n2/4p1B1/1b2P3/2NP1N2/PPP2PPP/R2QKB1R b KQkq - 0 5',
      claim: 'pinned f6 to d8',
      holds: true,
      because: 'the bishop on g5 attacks the queen on d8 through it',
    },
    {
      fen: 'r1bqk2r/pppp1ppp/2n2n2/4p1B1/1b2P3/2NP1N2/PPP2PPP/R2QKB1R b KQkq - 0 5',
      claim: 'pinned f6',
      holds: false,
      because: 'f6 and the king on e8 share no rank, file or diagonal',
      note: 'It is pinned to the queen, and that is claimed with `to d8`.',
    },
    {
      fen: '3qk3/8/5q2/6B1/8/8/8/4K3 w - - 0 1',
      claim: 'pinned f6 to d8',
      holds: false,
      because: 'the queen on d8 is worth no more than the queen on f6',
    },
    {
      fen: 'q3k3/8/8/R7/8/8/8/K7 w - - 0 1',
      claim: 'pinned a5',
      holds: true,
      note: 'A pin along the edge.',
    },
  ],
  parse(words) {
    const square = words.square('the square of a piece');
    if (words.done) return { square, to: undefined };
    words.oneOf(['to']);
    return { square, to: words.square('the square of the piece behind') };
  },
  judge: ({ position }, { square, to }) =>
    judgePiece(position, square, ({ board, piece, color }) => {
      if (piece.kind === 'king')
        return empty(`the king stands on ${square}, and it is never pinned`);
      const target = to ?? kingOf(board, color);
      if (target === undefined) return empty('there is no king');
      const behind = board.get(target);
      if (!behind) return empty(`${target} is empty`);
      if (behind.color !== color) {
        return no(
          `${nameOf(board, target)} is ${possessive(behind.color)}, as ${nameOf(board, square)} is not`,
        );
      }
      const judged = judgeLine(board, square, target, color);
      if (judged.holds !== true) return { ...judged, ...suggestion(board, square, color) };
      if (!isWorthMore(behind, piece)) {
        return no(`${nameOf(board, target)} is worth no more than ${nameOf(board, square)}`);
      }
      return judged;
    }),
});

function judgeLine(board: Board, square: Square, target: Square, color: Color): Verdict {
  const way = between(square, target);
  const [piece, aim] = [nameOf(board, square), nameOf(board, target)];
  if (way === undefined) return no(`${square} and ${aim} share no rank, file or diagonal`);
  const attacker = slidersOn(board, square, otherColor(color)).find((from) =>
    between(from, target)?.includes(square),
  );
  if (attacker === undefined) {
    return no(`no ${otherColor(color)} piece attacks ${piece} on the line to ${aim}`);
  }
  const blocker = way.find((each) => board.has(each));
  if (blocker !== undefined) {
    const what = board.get(blocker)?.kind;
    return no(
      `after ${piece} leaves, ${nameOf(board, attacker)} attacks ${aim} only through ${blocker}, where a ${what} stands`,
    );
  }
  return yes(`${nameOf(board, attacker)} attacks ${aim} through it`);
}

/** The pin that there is, to another piece than the one claimed. */
function suggestion(board: Board, square: Square, color: Color): { instead?: string } {
  const piece = board.get(square);
  if (!piece) return {};
  for (const from of slidersOn(board, square, otherColor(color))) {
    const right = Math.sign(fileOf(square) - fileOf(from));
    const up = Math.sign(rankOf(square) - rankOf(from));
    let behind = step(square, right, up);
    while (behind !== undefined && !board.has(behind)) behind = step(behind, right, up);
    const target = behind === undefined ? undefined : board.get(behind);
    if (!target || target.color !== color || !isWorthMore(target, piece)) continue;
    return {
      instead: target.kind === 'king' ? `pinned ${square}` : `pinned ${square} to ${behind}`,
    };
  }
  return {};
}
