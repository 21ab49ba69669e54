import { bestCapture, otherColor } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { judgeMoves, named } from './shared/moves-of-piece.ts';
import { turnOf } from './shared/turn-of.ts';

const ark = 'r2qkbnr/3b1ppp/p2p4/1p1Q4/2p1P3/1B6/PPP2PPP/RNB1K2R w KQkq - 0 12';

export const trapped = defineClaim({
  name: 'trapped',
  usage: ['trapped b3'],
  definition: `
The knight, bishop, rook or queen is \`en-prise\`, and every legal move of it, as if it were its side's
move, loses material too, by static exchange on the square it goes to. Whether a move elsewhere would
save it is not looked at. A piece that nothing attacks yet is not trapped in this sense; that it has
nowhere to go is \`no-square\`.
`,
  source:
    'Chess Programming Wiki, “Trapped Pieces”, which also counts pieces not yet attacked; the proof by static exchange is ours',
  examples: [
    {
      fen: ark,
      claim: 'trapped b3',
      holds: true,
      because: 'it is en prise, and each of its moves Ba4 or Bxc4 loses material',
      note: "Noah's Ark: the pawns have caught the bishop.",
    },
    {
      fen: ark,
      claim: 'trapped d5',
      holds: false,
      because: 'Black has no legal capture of it that wins material',
    },
    {
      fen: '5k2/5p1B/6p1/8/8/8/8/6K1 b - - 0 1',
      claim: 'trapped h7',
      holds: false,
      because: 'Black has no legal capture of it that wins material',
      note: 'Shut in, but not attacked before the king comes to g7; some call it trapped now.',
    },
    {
      fen: '6k1/8/8/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'trapped e5',
      holds: false,
      note: 'En prise, but the knight can run.',
    },
    { fen: '4k3/8/8/8/8/8/8/4K3 w - - 0 1', claim: 'trapped e1', holds: 'empty' },
  ],
  parse: (words) => words.square('the square of a piece'),
  judge: ({ position }, square) =>
    judgeMoves(position, square, (moves, { color }) => {
      const enemy = otherColor(color);
      const capture = bestCapture(turnOf(position, enemy), square);
      if (!capture || capture.gain <= 0) {
        const side = enemy === 'white' ? 'White' : 'Black';
        return no(`${side} has no legal capture of it that wins material`);
      }
      const safe = moves.filter(({ gain }) => gain >= 0);
      if (safe.length > 0) return no(`${named(safe)} would lose nothing`);
      return yes(
        moves.length === 0
          ? 'it is en prise, and it has no legal move'
          : `it is en prise, and ${moves.length === 1 ? 'its only move' : 'each of its moves'} ${named(moves)} loses material`,
      );
    }),
});
