import {
  type Comment,
  isMoveSuffix,
  type Line,
  parseMovetext,
  type Span,
  type Variation,
  type WrittenMove,
} from '../movetext/index.ts';

export interface LayOptions {
  /** Only what stands between these offsets is changed. */
  readonly from: number;
  readonly to: number;
  /** The number and the side of the first move. */
  readonly number: number;
  readonly color: 'white' | 'black';
  readonly lineEnd: string;
}

export interface Change extends Span {
  readonly text: string;
}

/** The longest line, in UTF-16 units (PGN standard, 8.2.1). */
const width = 79;

/** Something that is set: a move with its number, a sign, a comment, a parenthesis. */
interface Piece extends Span {
  /** What it becomes; comments and moves stay as they are. */
  readonly text: string;
  /** What stands in front of it: nothing, a space or a new line, a new line always. */
  readonly gap: 'none' | 'space' | 'line';
  /** How deep in variations: lines are indented by it. */
  readonly depth: number;
  /** Whether the line ends behind it, as behind a comment with a semicolon. */
  readonly endsLine?: boolean;
}

/**
 * Lays out movetext: every White move has its number, a Black one where something stands before it; a variation begins
 * a line, indented by its depth; lines are filled. No move, sign or comment changes.
 * @returns the changes to make, in the order of the text; none for movetext that cannot be read in full.
 */
export function layMovetext(content: string, options: LayOptions): Change[] {
  const { line, problems, tooLong } = parseMovetext(content);
  if (problems.length > 0 || tooLong) return [];
  const changes = changesFor(piecesOf(line, content, options), content, options);
  const laid = applyChanges(content, changes);
  // Whatever is laid out must say the same.
  return meaning(parseMovetext(laid).line) === meaning(line) ? changes : [];
}

function piecesOf(line: Line, content: string, { number, color }: LayOptions): Piece[] {
  const pieces: Piece[] = [];
  let breaks = false;
  const add = (span: Span, text: string, depth: number, gap: Piece['gap'] = 'space') => {
    pieces.push({ ...span, text, depth, gap: breaks && gap === 'space' ? 'line' : gap });
    breaks = false;
  };
  const addComment = ({ outer, form }: Comment, depth: number) => {
    const text = content.slice(outer.start, outer.end);
    add(outer, text, depth);
    breaks = form === 'line';
  };
  const addMove = (
    { number: written, san, glyphs }: WrittenMove,
    ply: number,
    depth: number,
    isCut: boolean,
  ) => {
    const sign = ply % 2 === 0 ? `${ply / 2}. ` : isCut ? `${(ply - 1) / 2}... ` : '';
    add(
      { start: written?.span.start ?? san.span.start, end: san.span.end },
      sign + san.text,
      depth,
    );
    for (const { span, nag, text } of glyphs) {
      const isSuffix = isMoveSuffix(nag) && /^[!?]/.test(text);
      add(span, text, depth, isSuffix ? 'none' : 'space');
    }
  };
  const addVariation = ({ line: inner, span }: Variation, ply: number, depth: number) => {
    add({ start: span.start, end: span.start + 1 }, '(', depth, 'line');
    addLine(inner, ply, depth);
    add({ start: span.end - 1, end: span.end }, ')', depth);
    breaks = true;
  };
  const addLine = ({ before, moves, result }: Line, first: number, depth: number) => {
    for (const comment of before) addComment(comment, depth);
    let isCut = true;
    for (const [index, move] of moves.entries()) {
      addMove(move, first + index, depth, isCut);
      for (const item of move.after) {
        if (item.type === 'comment') addComment(item, depth);
        else addVariation(item, first + index, depth + 1);
      }
      isCut = move.after.length > 0;
    }
    if (result) add(result.span, content.slice(result.span.start, result.span.end), depth);
  };
  addLine(line, 2 * number + (color === 'black' ? 1 : 0), 0);
  return pieces;
}

function changesFor(
  pieces: readonly Piece[],
  content: string,
  { from, to, lineEnd }: LayOptions,
): Change[] {
  const changes: Change[] = [];
  const isWithin = ({ start, end }: Span) => start >= from && end <= to;
  let column = 0;
  for (const [index, piece] of pieces.entries()) {
    const before = pieces[index - 1];
    const gap: Span = { start: before?.end ?? piece.start, end: piece.start };
    const indent = ' '.repeat(2 * piece.depth);
    const [head = ''] = piece.text.split(/[\r\n]/, 1);
    const opens = piece.text !== '(' && before?.text === '(';
    let between = content.slice(gap.start, gap.end);
    if (before && isWithin(gap)) {
      const breaks =
        piece.gap === 'line' ||
        (piece.gap === 'space' && !opens && column + 1 + firstWord(head).length > width);
      between = breaks ? lineEnd + indent : piece.gap === 'none' ? '' : ' ';
    }
    if (between !== content.slice(gap.start, gap.end)) changes.push({ ...gap, text: between });
    const written = content.slice(piece.start, piece.end);
    const text = isWithin(piece) ? piece.text : written;
    if (text !== written) changes.push(...lessOf({ ...piece, text }, written));
    const set = before ? between + text : text;
    const last = Math.max(set.lastIndexOf('\n'), set.lastIndexOf('\r'));
    column = last < 0 ? column + set.length : set.length - last - 1;
  }
  return changes;
}

/** A comment may begin on a line that it does not fit on whole; a move may not. */
function firstWord(text: string): string {
  return text.startsWith('{') ? (/^\S*/.exec(text)?.[0] ?? '') : text;
}

/** A change without what stays as it is at its end: of a move only its number. */
function lessOf({ start, end, text }: Change, written: string): Change[] {
  let same = 0;
  while (
    same < text.length &&
    same < written.length &&
    text.at(-1 - same) === written.at(-1 - same)
  ) {
    same++;
  }
  return [{ start, end: end - same, text: text.slice(0, text.length - same) }];
}

export function applyChanges(text: string, changes: readonly Change[]): string {
  let made = '';
  let done = 0;
  for (const change of changes) {
    made += text.slice(done, change.start) + change.text;
    done = change.end;
  }
  return made + text.slice(done);
}

/** All of a line but places and numbers. */
function meaning(line: Line): string {
  return JSON.stringify(line, (key, value) =>
    key === 'span' || key === 'outer' || key === 'number' ? undefined : value,
  );
}
