import { initialPosition, isFenFault, type Position, parseFen } from '../../chess/index.ts';
import { type Place, withinLine } from '../../diagnostics/index.ts';
import type { PlacedText, TreeSyntax } from '../../read/index.ts';

type Report = (place: Place, message: string, hint: string) => void;

/** The position of a FEN. A fault is reported at its field or rank. */
export function positionOfFen({ text, place }: PlacedText, report: Report): Position | undefined {
  const position = parseFen(text);
  if (!isFenFault(position)) return position;
  const from = Math.min(position.offset, text.length);
  const length = Math.max(1, text.slice(from).search(/[\s/]|$/));
  report(
    withinLine(place, from, from + length),
    `This FEN is no position: ${position.reason}.`,
    'Copy the FEN again from where it was made, or set the piece right by hand.',
  );
  return undefined;
}

/**
 * Where a pasted game starts: at the position of its `FEN` tag (PGN standard, 9.7.2), else at the initial one. With a
 * faulty tag the start is unknown, and its moves are not judged.
 */
export function startOfTags(moves: TreeSyntax | undefined, report: Report): Position | undefined {
  const tag = moves?.tags.find(({ name }) => name === 'FEN');
  if (!tag) return initialPosition;
  return positionOfFen({ text: tag.value, place: tag.place }, report);
}
