import type { Element } from 'hast';
import {
  fileOf,
  type PieceKind,
  pieceKinds,
  rankOf,
  readPlacement,
  squares,
} from '../../chess/index.ts';
import type { BoardPicture } from '../../draw/index.ts';
import { element } from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';

/**
 * A board of letters, capitals for White, with its ranks and files, then the marks and arrows in
 * words: what a picture shows, for a letter in plain text.
 */
export function textBoard(picture: BoardPicture, strings: Strings): Element {
  const { placement, view = 'white', marks = [], arrows = [] } = picture;
  const board = readPlacement(placement.split(' ', 1)[0] ?? '');
  const order = view === 'white' ? squares : squares.toReversed();
  const ranks: string[] = [];
  for (let start = 0; start < 64; start += 8) {
    const rank = order.slice(start, start + 8);
    const signs = rank.map((square) => {
      const piece = board.get(square);
      if (piece === undefined) return '.';
      const letter = letterOf(piece.kind, strings);
      return piece.color === 'white' ? letter : letter.toLowerCase();
    });
    ranks.push(`${rankOf(rank[0] ?? 'a1')} | ${signs.join(' ')} |`);
  }
  const files = order.slice(0, 8).map((square) => 'abcdefgh'.charAt(fileOf(square) - 1));
  const frame = `  +${'-'.repeat(17)}+`;
  const arrowLines = (['plan', 'threat', 'guard'] as const).flatMap((meaning) => {
    const found = arrows.filter((arrow) => arrow.meaning === meaning);
    if (found.length === 0) return [];
    return `${strings.letter.arrows[meaning]}: ${found.map(({ from, to }) => `${from}-${to}`).join(' ')}`;
  });
  const lines = [
    frame,
    ...ranks,
    frame,
    `    ${files.join(' ')}`,
    ...(marks.length > 0 ? [`${strings.letter.marked}: ${marks.join(' ')}`] : []),
    ...arrowLines,
  ];
  return element('pre', {}, [lines.join('\n')]);
}

/** What the letters of a board mean, `K king, Q queen, …`. */
export function lettersInWords(strings: Strings): string {
  return pieceKinds
    .map((kind) => `${letterOf(kind, strings)} ${strings.pieceNames[kind]}`)
    .join(', ');
}

function letterOf(kind: PieceKind, strings: Strings): string {
  return kind === 'pawn' ? strings.letter.pawnLetter : strings.pieceLetters[kind];
}
