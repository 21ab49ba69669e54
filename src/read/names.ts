import { kindOfSanLetter, type PieceKind } from '../chess/index.ts';

/** The small texts of the course language: names of positions, and lists of squares and arrows. */

const label = /^[\p{L}\p{N}][\p{L}\p{N}_.-]*$/u;
const square = /^[a-h][1-8]$/;
const arrow = /^([a-h][1-8])-([a-h][1-8])$/;

export const labelHint =
  'A name is letters and digits with - or _ between them, such as `quiet-exchange`.';

export function isLabel(text: string): boolean {
  return label.test(text);
}

/** `course/label`: a named position of another course. */
export function readCourseLabel(text: string): { course: string; label: string } | undefined {
  const [course = '', name = '', ...more] = text.split('/');
  return more.length === 0 && isLabel(course) && isLabel(name)
    ? { course, label: name }
    : undefined;
}

/** Splits a list at spaces or commas. */
export function parseList(text: string): string[] {
  return text.split(/[\s,]+/).filter((item) => item !== '');
}

/** `wrong` is the item that the problem is about, if it is about one. */
export function squareProblem(text: string) {
  const items = parseList(text);
  const wrong = items.find((item) => !square.test(item));
  if (items.length > 0 && wrong === undefined) return undefined;
  return {
    wrong,
    message:
      wrong === undefined ? 'No square is named here.' : `\`${wrong}\` is no square of the board.`,
    hint: 'Name squares from a1 to h8 with spaces between them, such as `e5 f4`.',
  };
}

/** As `squareProblem`. */
export function arrowProblem(text: string) {
  const items = parseList(text);
  const wrong = items.find((item) => {
    const match = arrow.exec(item);
    return !match || match[1] === match[2];
  });
  if (items.length > 0 && wrong === undefined) return undefined;
  return {
    wrong,
    message:
      wrong === undefined ? 'No arrow is named here.' : `\`${wrong}\` is no arrow on the board.`,
    hint: 'Write an arrow as two different squares with a hyphen, such as `f3-e5`.',
  };
}

const piece = /^([KQRBN]?)([a-h][1-8])$/;

/** `Nf3` or `d4`: a piece with its square, a bare square being a pawn's. */
export function piecePlace(text: string): { kind: PieceKind; square: string } | undefined {
  const match = piece.exec(text);
  const kind = kindOfSanLetter[match?.[1] ?? ''];
  return match?.[2] && kind ? { kind, square: match[2] } : undefined;
}

/** The two squares of an arrow that `arrowProblem` found nothing wrong with. */
export function parseArrow(text: string): { from: string; to: string } {
  return { from: text.slice(0, 2), to: text.slice(3, 5) };
}
