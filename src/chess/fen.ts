/** Reads FEN (PGN standard, 16.1) and refuses what cannot be a position of a game. */
import { attackersOn } from './attacks.ts';
import { type Board, kingOf, otherColor, readPlacement, squaresOf } from './board.ts';
import { nameSquares, sideName } from './names.ts';
import { settle } from './rules.ts';
import { isSquare, rankOf, relativeRank, step } from './squares.ts';
import type { Color, FenFault, Position, Square } from './types.ts';
import { colors } from './types.ts';

/** A field of the text and where it starts. */
interface Field {
  readonly text: string;
  readonly offset: number;
}

/**
 * Reads a FEN of four to six fields; the counters are `0 1` where they are not given. The result
 * is in one form for one position: castling rights in the order KQkq, and the en-passant square
 * only where such a capture is legal.
 */
export function parseFen(text: string): Position | FenFault {
  const fields = [...text.matchAll(/\S+/g)].map(
    (match): Field => ({ text: match[0], offset: match.index }),
  );
  const [placement, turn, castling, enPassant, clock, number, extra] = fields;
  if (extra !== undefined) return fault('a FEN has six fields, and this is a seventh', extra);
  if (
    placement === undefined ||
    turn === undefined ||
    castling === undefined ||
    enPassant === undefined
  ) {
    const missing = [
      'the pieces',
      'the side to move',
      'the castling rights',
      'the en-passant square',
    ];
    const reason = `${missing[fields.length]} is missing: a FEN has six fields, and at least the first four must be given`;
    return {
      reason: reason.replace(/^(the (?:pieces|castling rights)) is/, '$1 are'),
      offset: text.trimEnd().length,
    };
  }
  const wrongPlacement = checkPlacement(placement);
  if (wrongPlacement !== undefined) return wrongPlacement;
  if (turn.text !== 'w' && turn.text !== 'b') {
    return fault(`the side to move is w or b, not ${turn.text}`, turn);
  }
  const color = turn.text === 'w' ? 'white' : 'black';
  const board = readPlacement(placement.text);
  const wrong =
    checkMaterial(board, placement) ??
    checkCastling(board, castling) ??
    checkEnPassant(board, color, enPassant) ??
    checkCounter(clock, /^\d{1,4}$/, 'the half-move clock is a whole number from 0') ??
    checkCounter(number, /^0*[1-9]\d{0,3}$/, 'the move number is a whole number from 1') ??
    checkCheck(board, color, turn);
  if (wrong !== undefined) return wrong;
  const counters = `${Number(clock?.text ?? 0)} ${Number(number?.text ?? 1)}`;
  return settle(`${placement.text} ${turn.text} ${castling.text} ${enPassant.text} ${counters}`);
}

export function isFenFault(result: Position | FenFault): result is FenFault {
  return 'reason' in result;
}

function fault(reason: string, field: Field, within = 0): FenFault {
  return { reason, offset: field.offset + within };
}

function checkPlacement(field: Field): FenFault | undefined {
  const ranks = field.text.split('/');
  let start = 0;
  for (const [index, rank] of ranks.entries()) {
    const name = 8 - index;
    if (name < 1) return fault('the pieces fill more than eight ranks', field, start - 1);
    let width = 0;
    for (const [at, letter] of [...rank].entries()) {
      if (/[1-8]/.test(letter)) width += Number(letter);
      else if (!/[kqrbnp]/i.test(letter)) {
        return fault(
          `${letter} stands for no piece: a FEN knows KQRBNP, kqrbnp and the digits 1 to 8`,
          field,
          start + at,
        );
      } else if (/p/i.test(letter) && (name === 8 || name === 1)) {
        return fault(`a pawn cannot stand on rank ${name}`, field, start + at);
      } else width++;
      if (width > 8) return fault(`rank ${name} has more than eight squares`, field, start + at);
    }
    if (width < 8) {
      const count = width === 1 ? '1 square' : `${width} squares`;
      return fault(`rank ${name} has ${count} instead of eight`, field, start);
    }
    start += rank.length + 1;
  }
  if (ranks.length < 8) {
    const count = ranks.length === 1 ? '1 rank' : `${ranks.length} ranks`;
    return fault(`the pieces fill ${count} instead of eight`, field, field.text.length);
  }
  return undefined;
}

function checkMaterial(board: Board, field: Field): FenFault | undefined {
  for (const color of colors) {
    const side = sideName(color);
    const letters = color === 'white' ? 'KP' : 'kp';
    const nth = (pattern: RegExp, count: number) =>
      [...field.text.matchAll(pattern)][count - 1]?.index ?? 0;
    const kings = squaresOf(board, color, 'king').length;
    if (kings === 0) return fault(`${side} has no king`, field);
    if (kings > 1) {
      return fault(`${side} has ${kings} kings`, field, nth(new RegExp(letters[0] ?? '', 'g'), 2));
    }
    const pawns = squaresOf(board, color, 'pawn').length;
    if (pawns > 8) {
      return fault(
        `${side} has ${pawns} pawns, and a side has at most eight`,
        field,
        nth(new RegExp(letters[1] ?? '', 'g'), 9),
      );
    }
    const pieces = squaresOf(board, color).length;
    if (pieces > 16) {
      return fault(
        `${side} has ${pieces} pieces and pawns, and a side has at most sixteen`,
        field,
        nth(color === 'white' ? /[KQRBNP]/g : /[kqrbnp]/g, 17),
      );
    }
  }
  return undefined;
}

const castlingHomes: Readonly<Record<string, { color: Color; king: Square; rook: Square }>> = {
  K: { color: 'white', king: 'e1', rook: 'h1' },
  Q: { color: 'white', king: 'e1', rook: 'a1' },
  k: { color: 'black', king: 'e8', rook: 'h8' },
  q: { color: 'black', king: 'e8', rook: 'a8' },
};

function checkCastling(board: Board, field: Field): FenFault | undefined {
  if (field.text === '-') return undefined;
  for (const [at, letter] of [...field.text].entries()) {
    const home = castlingHomes[letter];
    if (home === undefined) {
      return fault(`the castling rights are - or some of KQkq, not ${letter}`, field, at);
    }
    if (field.text.indexOf(letter) < at) {
      return fault(`the castling right ${letter} is given twice`, field, at);
    }
    for (const [kind, square] of [
      ['king', home.king],
      ['rook', home.rook],
    ] as const) {
      const piece = board.get(square);
      if (piece?.kind !== kind || piece.color !== home.color) {
        const side = sideName(home.color);
        const wing = letter.toLowerCase() === 'k' ? 'kingside' : 'queenside';
        return fault(
          `${side} cannot have the right to castle ${wing}, since no ${home.color} ${kind} stands on ${square}`,
          field,
          at,
        );
      }
    }
  }
  return undefined;
}

function checkEnPassant(board: Board, color: Color, field: Field): FenFault | undefined {
  const target = field.text;
  if (target === '-') return undefined;
  if (!isSquare(target))
    return fault(`the en-passant square is - or a square, not ${target}`, field);
  const other = otherColor(color);
  const side = other === 'white' ? 'White' : 'Black';
  const forward = other === 'white' ? 1 : -1;
  const home = step(target, 0, -forward);
  const pawn = step(target, 0, forward);
  if (relativeRank(target, other) !== 3 || home === undefined || pawn === undefined) {
    const rank = other === 'white' ? 3 : 6;
    return fault(
      `${target} cannot be the en-passant square: ${side} moved last, so it lies on rank ${rank}, not ${rankOf(target)}`,
      field,
    );
  }
  const standing = board.get(pawn);
  if (standing?.kind !== 'pawn' || standing.color !== other) {
    return fault(
      `${target} cannot be the en-passant square, since no ${other} pawn stands on ${pawn}`,
      field,
    );
  }
  for (const square of [target, home]) {
    if (board.has(square)) {
      return fault(
        `${target} cannot be the en-passant square, since a pawn that has just come from ${home} to ${pawn} leaves ${square} empty`,
        field,
      );
    }
  }
  return undefined;
}

function checkCounter(field: Field | undefined, form: RegExp, meaning: string) {
  if (field === undefined || form.test(field.text)) return undefined;
  return fault(`${meaning}, not ${field.text}`, field);
}

/** FIDE Laws, 3.9: no piece may be moved that leaves the own king in check. */
function checkCheck(board: Board, color: Color, field: Field): FenFault | undefined {
  const other = otherColor(color);
  const king = kingOf(board, other);
  const attackers = king === undefined ? [] : attackersOn(board, king, color);
  if (attackers.length === 0) return undefined;
  const [mover, waiting] = color === 'white' ? ['White', 'Black'] : ['Black', 'White'];
  return fault(
    `it is ${mover}'s move, yet ${waiting}'s king on ${king} is in check from ${nameSquares(board, attackers)}`,
    field,
  );
}
