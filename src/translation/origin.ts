import { createHash } from 'node:crypto';
import type { TranslationUnit } from './chapter-units.ts';

/** Where a translation keeps what it was made of, below its own folder. */
export const originFile = 'origin.json';

/** A unit of the original as it was when it was translated: hashes of what it said. */
export interface OriginUnit {
  readonly kind: string;
  readonly board: string;
  readonly texts: readonly string[];
  readonly prose: { readonly board: string; readonly texts: readonly string[] };
}

/** What a translation was made of, by the original's files. */
export type Origin = ReadonlyMap<string, readonly OriginUnit[]>;

export function originOf(unit: TranslationUnit): OriginUnit {
  const { kind, board, texts, prose } = unit;
  return {
    kind,
    board: hashBoard(board),
    texts: texts.map(({ words }) => hash(words)),
    prose: { board: hashBag(prose.board), texts: prose.texts.map(({ words }) => hash(words)) },
  };
}

export function hashBoard(items: TranslationUnit['board']): string {
  return hash(items.map(({ says }) => says).join('\n'));
}

/** Sentences have their own order in each language, so what prose says of the board is a bag. */
export function hashBag(items: TranslationUnit['board']): string {
  return hash(
    items
      .map(({ says }) => says)
      .sort()
      .join('\n'),
  );
}

/** Eight letters: what is compared are two texts in one place, not one among many. */
export function hash(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 8);
}

/** Of all that something is made of, for whoever keeps it. */
export function printOf(inputs: unknown): string {
  return createHash('sha256').update(JSON.stringify(inputs)).digest('base64url');
}

/** One line a unit, so that two people who translate meet in few lines. */
export function writeOrigin(origin: Origin): string {
  const files = [...origin].map(([file, units]) => {
    const lines = units.map((unit) => `    ${JSON.stringify(lineOf(unit))}`);
    return `  ${JSON.stringify(file)}: [\n${lines.join(',\n')}\n  ]`;
  });
  return `{\n${files.join(',\n')}\n}\n`;
}

function lineOf({ kind, board, texts, prose }: OriginUnit): string {
  return [[kind, board, ...texts].join(' '), [prose.board, ...prose.texts].join(' ')].join(' | ');
}

/** @returns nothing where the text is none that `writeOrigin` makes. */
export function readOrigin(text: string): Origin | undefined {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof content !== 'object' || content === null || Array.isArray(content)) return undefined;
  const origin = new Map<string, readonly OriginUnit[]>();
  for (const [file, lines] of Object.entries(content)) {
    if (!Array.isArray(lines) || !lines.every((line) => typeof line === 'string')) return undefined;
    origin.set(file, lines.map(unitOfLine));
  }
  return origin;
}

function unitOfLine(line: string): OriginUnit {
  const [own = '', behind = ''] = line.split(' | ');
  const [kind = '', board = '', ...texts] = own.split(' ');
  const [proseBoard = '', ...proseTexts] = behind.split(' ');
  return { kind, board, texts, prose: { board: proseBoard, texts: proseTexts } };
}
