/** A piece of text: as it is, or the letter of a piece that moves. */
export interface TextPart {
  readonly text: string;
  readonly isPiece: boolean;
}

/**
 * Cuts the letters of pieces out of the moves of a text. A capital counts if what follows makes it a move, `Nf3`,
 * `Nbxd2`, or if a pawn becomes it, `e8=Q`: so no other word is taken for one.
 * @param letters of all pieces in the language of the text: `KQRBN`.
 */
export function splitMoves(text: string, letters: string): TextPart[] {
  // Nearly all text names no square, and this is asked of all text.
  if (!/[a-h][1-8]/.test(text)) return text === '' ? [] : [{ text, isPiece: false }];
  const move = moveIn.get(letters) ?? movePattern(letters);
  moveIn.set(letters, move);
  const parts: TextPart[] = [];
  let from = 0;
  for (const found of text.matchAll(move)) {
    const letter = found[1] ?? found[2] ?? '';
    const at = found.index + found[0].length - letter.length;
    if (at > from) parts.push({ text: text.slice(from, at), isPiece: false });
    parts.push({ text: letter, isPiece: true });
    from = at + letter.length;
  }
  if (from < text.length) parts.push({ text: text.slice(from), isPiece: false });
  return parts;
}

const moveIn = new Map<string, RegExp>();

function movePattern(letters: string): RegExp {
  // No lookbehind: Safari has it since 16.4 only.
  return new RegExp(
    `(?:[^\\p{L}\\p{N}]|^)([${letters}])(?=[a-h]?[1-8]?x?[a-h][1-8](?![\\p{L}\\p{N}]))|[a-h][18]=([${letters}])(?!\\p{L})`,
    'gu',
  );
}
