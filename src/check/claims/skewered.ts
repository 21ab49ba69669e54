import { between, nameOf, otherColor, slidersOn } from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { judgePiece } from './shared/judge-piece.ts';
import { isWorthMore } from './shared/worth.ts';

export const skewered = defineClaim({
  name: 'skewered',
  usage: ['skewered e6 to e8'],
  definition: `
An enemy bishop, rook or queen attacks the piece on the first square, and behind it, next on the same
line, stands the piece on the second, of the same side and worth less by 1-3-3-5-9, a king more than
everything. Where the piece behind is worth more it is \`pinned\`; where both are worth the same it is
neither.
`,
  source:
    'Wikipedia, “Skewer (chess)”: the more valuable piece in front; an older text has “or of equal value”',
  examples: [
    {
      fen: '4r1k1/8/4q3/8/8/8/8/4R1K1 b - - 0 1',
      claim: 'skewered e6 to e8',
      holds: true,
      because: 'the rook on e1 attacks the rook on e8 through it',
    },
    {
      fen: '4q1k1/8/4r3/8/8/8/8/4R1K1 b - - 0 1',
      claim: 'skewered e6 to e8',
      holds: false,
      because: 'the queen on e8 is worth no less than the rook on e6',
      note: 'A pin.',
    },
    {
      fen: '4r1k1/8/4r3/8/8/8/8/4R1K1 b - - 0 1',
      claim: 'skewered e6 to e8',
      holds: false,
      because: 'the rook on e8 is worth no less than the rook on e6',
    },
    {
      fen: '4q3/8/4k3/8/8/8/8/4R1K1 b - - 0 1',
      claim: 'skewered e6 to e8',
      holds: true,
      note: 'The king must step aside.',
    },
  ],
  parse(words) {
    const square = words.square('the square of a piece');
    words.oneOf(['to']);
    return { square, to: words.square('the square of the piece behind') };
  },
  judge: ({ position }, { square, to }) =>
    judgePiece(position, square, ({ board, piece, color }) => {
      const behind = board.get(to);
      if (!behind) return empty(`${to} is empty`);
      const [front, back] = [nameOf(board, square), nameOf(board, to)];
      if (behind.color !== color) return no(`${front} and ${back} are of different sides`);
      const way = between(square, to);
      if (!way) return no(`${square} and ${to} share no rank, file or diagonal`);
      const attacker = slidersOn(board, square, otherColor(color)).find((from) =>
        between(from, to)?.includes(square),
      );
      if (attacker === undefined) {
        return no(`no ${otherColor(color)} piece attacks ${front} on the line to ${back}`);
      }
      const blocker = way.find((each) => board.has(each));
      if (blocker !== undefined) return no(`${nameOf(board, blocker)} stands between them`);
      if (!isWorthMore(piece, behind)) return no(`${back} is worth no less than ${front}`);
      return yes(`${nameOf(board, attacker)} attacks ${back} through it`);
    }),
});
