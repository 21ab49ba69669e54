/** Moves in plain text, with their numbers: `7...Be7`, `12. Sf3`. */
import {
  type Color,
  fullMoveNumber,
  numberSign,
  type Position,
  sideToMove,
} from '../../chess/index.ts';
import type { Vocabulary } from './vocabulary.ts';

/** A move with its number, as a sentence mentions it. */
export interface Mention {
  readonly number: number;
  readonly color: Color;
  /** In SAN, with English letters: more than one where a letter has two meanings, as R in Spanish. */
  readonly spellings: readonly string[];
  /** `7...Be7`, as print has it. */
  readonly name: string;
  /** Whether the position has that number and that side to move. */
  readonly fits: (position: Position) => boolean;
}

const figurines: Readonly<Record<string, string>> = {
  '♔♚': 'K',
  '♕♛': 'Q',
  '♖♜': 'R',
  '♗♝': 'B',
  '♘♞': 'N',
  '♙♟': '',
};

/** A move without its number. */
export function sanSource({ letters }: Pick<Vocabulary, 'letters'>): string {
  const all = [...new Set(`KQRBN${Object.values(letters).join('')}`)].join('');
  return `(?:[${all}♔-♟]?[a-h]?[1-8]?[x:]?[a-h][1-8](?:=?[${all}])?|[O0]-[O0](?:-[O0])?)[+#]?`;
}

export const numberSource = '\\d{1,3}\\s?(?:\\.{1,3}|…)\\s?';

/** A move without its number, other than a bare square; one with dots in front; a push such as f2-f3. */
export function bareMove(vocabulary: Pick<Vocabulary, 'letters'>): RegExp {
  const san = sanSource(vocabulary);
  return new RegExp(
    `(?<![\\p{L}\\p{N}-])(?![a-h][1-8](?![\\p{L}\\p{N}=+#-]))${san}(?![\\p{L}\\p{N}])|(?:\\.{3}|…)\\s?${san}|[a-h][1-8]-[a-h][1-8]`,
    'u',
  );
}

/** Reads what `numberSource` and `sanSource` match. */
export function readMention(text: string, vocabulary: Pick<Vocabulary, 'letters'>): Mention {
  const [, digits = '', dots = '', san = ''] = /^(\d+)\s?(\.+|…)\s?(.*)$/su.exec(text) ?? [];
  const number = Number(digits);
  const color = dots === '.' ? 'white' : 'black';
  return {
    number,
    color,
    spellings: spellingsOf(san, vocabulary),
    name: `${numberSign({ number, color })}${san}`,
    fits: (position) => fullMoveNumber(position) === number && sideToMove(position) === color,
  };
}

/** Whether two spellings name one move: signs of a capture or a check, and zeros for castling, change nothing. */
export function isSameMove(one: string, other: string): boolean {
  const plain = (san: string) => san.replace(/[+#x]/g, '').replaceAll('0', 'O');
  return plain(one) === plain(other);
}

/** A written move in the letters of SAN, by the language's letters first. */
export function spellingsOf(san: string, { letters }: Pick<Vocabulary, 'letters'>): string[] {
  const first = san[0] ?? '';
  const figurine = Object.entries(figurines).find(([signs]) => signs.includes(first));
  if (figurine) return [figurine[1] + san.slice(1)];
  const kinds = { king: 'K', queen: 'Q', rook: 'R', bishop: 'B', knight: 'N' } as const;
  const own = Object.entries(kinds).flatMap(([kind, letter]) =>
    letters[kind as keyof typeof kinds] === first ? [letter + san.slice(1)] : [],
  );
  const english = /^[KQRBN]/.test(san) || !/^\p{Lu}/u.test(san) || /^O/.test(san) ? [san] : [];
  return [...new Set([...own, ...english])];
}
