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

/**
 * The same in runs: browsers break lines around a figurine, so what touches a letter is one run with it. Words stand
 * apart: a run with a space in it is one part.
 */
export function splitUnbroken(text: string, letters: string): TextPart[][] {
  const parts = splitMoves(text, letters);
  if (!parts.some(({ isPiece }) => isPiece)) return parts.map((part) => [part]);
  const runs: TextPart[][] = [];
  let isOpen = false;
  for (const part of parts.flatMap(cutAtMoves)) {
    const isSpaced = /\s/.test(part.text);
    if (isOpen && !isSpaced) runs.at(-1)?.push(part);
    else runs.push([part]);
    isOpen = !isSpaced;
  }
  return runs;
}

/** Cuts a text between two pieces into what goes with the first, the words, and what goes with the second. */
function cutAtMoves(part: TextPart): TextPart[] {
  const { text } = part;
  const head = /^\S{0,8}/.exec(text)?.[0].length ?? 0;
  const tail = Math.max(head, text.length - (/\S{0,8}$/.exec(text)?.[0].length ?? 0));
  return [text.slice(0, head), text.slice(head, tail), text.slice(tail)]
    .filter((cut) => cut !== '')
    .map((cut) => ({ ...part, text: cut }));
}

const moveIn = new Map<string, RegExp>();

function movePattern(letters: string): RegExp {
  // No lookbehind: Safari has it since 16.4 only.
  return new RegExp(
    `(?:[^\\p{L}\\p{N}]|^)([${letters}])(?=[a-h]?[1-8]?x?[a-h][1-8](?![\\p{L}\\p{N}]))|[a-h][18]=([${letters}])(?!\\p{L})`,
    'gu',
  );
}
