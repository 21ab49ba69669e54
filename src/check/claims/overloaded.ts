import {
  attackersOn,
  attacksFrom,
  type Board,
  bestCapture,
  isMoveFault,
  listMoves,
  nameOf,
  otherColor,
  type PieceKind,
  type Position,
  pieceAt,
  pieceValues,
  playMove,
  type Square,
} from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { pawnsWorth } from './shared/english.ts';
import { judgePiece } from './shared/judge-piece.ts';
import { turnOf } from './shared/turn-of.ts';

export const overloaded = defineClaim({
  name: 'overloaded',
  usage: ['overloaded d6'],
  definition: `
The piece is the \`only-defender\` of two pieces or pawns of its side, and the other side, if it is its
move or were its move, can use that: it takes one of them, the piece takes back, and then it takes the
other; with all captures there counted by static exchange, it has won material. A king can be
overloaded too. Other duties, such as guarding against mate, are not looked at.
`,
  source:
    'Wikipedia, “Overloading (chess)”: a defender with more duties than it can fulfil. The proof by captures is ours',
  examples: [
    {
      fen: '4k3/8/3n4/1b3b2/8/8/8/1R3RK1 w - - 0 1',
      claim: 'overloaded d6',
      holds: true,
      because: 'after Rxb5 Nxb5 nothing defends the bishop on f5, and the captures win a pawn',
    },
    {
      fen: '4k3/4p3/3n4/1b3b2/8/8/8/1R4K1 w - - 0 1',
      claim: 'overloaded d6',
      holds: false,
      because: 'taking both the bishop on b5 and the bishop on f5 wins nothing',
      note: 'It is the only defender of both bishops, but only one of them is attacked.',
    },
    {
      fen: '4k3/8/3n4/1b6/8/8/8/1R4K1 w - - 0 1',
      claim: 'overloaded d6',
      holds: false,
      because: 'it is the only defender of the bishop on b5 alone',
    },
    {
      fen: '4k3/8/8/3n4/8/8/8/1R4K1 w - - 0 1',
      claim: 'overloaded d5',
      holds: false,
      because: 'it is the only defender of nothing',
    },
  ],
  parse: (words) => words.square('the square of a piece'),
  judge: ({ position }, square) =>
    judgePiece(position, square, ({ board, color }) => {
      const wards = attacksFrom(board, square)
        .filter((to) => isWard(board, square, to))
        .sort();
      if (wards.length < 2) {
        const [only] = wards;
        return no(
          `it is the only defender of ${only ? `${nameOf(board, only)} alone` : 'nothing'}`,
        );
      }
      const turn = turnOf(position, otherColor(color));
      for (const first of wards) {
        for (const second of wards) {
          if (first === second) continue;
          const found = takeBoth(turn, square, first, second);
          if (found === undefined) continue;
          return yes(
            `after ${found.line} nothing defends ${nameOf(board, second)}, and the captures win ${pawnsWorth(found.gain)}`,
          );
        }
      }
      const names = wards.map((ward) => nameOf(board, ward));
      return no(`taking both ${names.join(' and ')} wins nothing`);
    }),
});

function isWard(board: Board, square: Square, to: Square): boolean {
  const [own, other] = [board.get(square), board.get(to)];
  if (!own || other?.color !== own.color || other.kind === 'king') return false;
  return attackersOn(board, to, own.color).length === 1;
}

/** A capture on `first`, the answer of the piece, and what it all wins; absent where that is nothing. */
function takeBoth(position: Position, defender: Square, first: Square, second: Square) {
  for (const capture of listMoves(position)) {
    if (capture.to !== first || !capture.capture) continue;
    const taken = playMove(position, capture.san);
    if (isMoveFault(taken)) continue;
    const answer = listMoves(taken.after).find(
      ({ from, to, promotion = 'queen' }) =>
        from === defender && to === first && promotion === 'queen',
    );
    const answered = answer && playMove(taken.after, answer.san);
    if (!answered || isMoveFault(answered)) continue;
    const then = bestCapture(answered.after, second);
    if (!then || then.gain <= 0) continue;
    const won = valueOn(position, first) + promoted(capture.promotion);
    const lost = valueOn(taken.after, first) + promoted(answer.promotion);
    const gain = won - lost + then.gain;
    if (gain > 0) return { line: `${taken.san} ${answered.san}`, gain };
  }
  return undefined;
}

function valueOn(position: Position, square: Square): number {
  const piece = pieceAt(position, square);
  return piece ? pieceValues[piece.kind] : 0;
}

function promoted(kind: PieceKind | undefined): number {
  return kind ? pieceValues[kind] - pieceValues.pawn : 0;
}
