/** Moves in plain text, with their numbers, that can be played nowhere in the chapter. */
import {
  fullMoveNumber,
  isMoveFault,
  type Position,
  playMove,
  playSan,
  sideToMove,
} from '../../chess/index.ts';
import { type Chapter, treesOf } from '../../model/index.ts';
import type { CourseView } from '../view/index.ts';
import {
  bareMove,
  isSameMove,
  type Mention,
  numberSource,
  readMention,
  sanSource,
  spellingsOf,
} from './mentions.ts';
import type { Passage } from './passage.ts';
import { passagesOf } from './passages.ts';
import { sentencesIn } from './sentences.ts';
import { isWithin, quotedIn } from './statements.ts';
import type { Vocabulary } from './vocabulary.ts';
import type { WordsScope } from './words-scope.ts';

export interface WrongMention {
  readonly mention: Mention;
  /** Offsets in the passage's text. */
  readonly start: number;
  readonly end: number;
  /** Moves that the chapter has at that number. */
  readonly there: readonly string[];
  /** Whether it can be played, and a heading announces what no line of the course has. */
  readonly isUnkept: boolean;
}

/** So many positions of the chapter are asked; where it has more at a move's number, that move is left alone. */
export const mostAsked = 300;

interface Patterns {
  readonly quick: RegExp;
  readonly run: RegExp;
  readonly bare: RegExp;
  readonly elsewhere: RegExp;
  /** What makes a heading announce nothing. */
  readonly hedged: RegExp;
}

const compiled = new WeakMap<Vocabulary, Patterns>();

function patternsFor(vocabulary: Vocabulary): Patterns {
  const known = compiled.get(vocabulary) ?? compile(vocabulary);
  compiled.set(vocabulary, known);
  return known;
}

function compile(vocabulary: Vocabulary): Patterns {
  const san = sanSource(vocabulary);
  return {
    quick: /\d\s?[.…]+\s?[\p{L}\d♔-♟]/u,
    // A move with its number, and the reply that may follow without one.
    run: new RegExp(
      `(?<![\\p{L}\\p{N}.])(?<mention>${numberSource}${san})[!?]{0,2}(?: (?<reply>${san})(?![\\p{L}\\p{N}-]))?`,
      'gu',
    ),
    bare: bareMove(vocabulary),
    hedged: new RegExp(
      `\\?|(?<![\\p{L}])(?:${vocabulary.unreal}|${vocabulary.denial})(?![\\p{L}])`,
      'iu',
    ),
    elsewhere: new RegExp(`(?<![\\p{L}])(?:${vocabulary.elsewhere})(?![\\p{L}])`, 'iu'),
  };
}

/** The first such move of a passage. */
export function wrongMention(
  passage: Passage,
  { chapter, course, vocabulary }: WordsScope,
): WrongMention | undefined {
  const { quick, run, bare, elsewhere, hedged } = patternsFor(vocabulary);
  const { text } = passage.text;
  if (!quick.test(text)) return undefined;
  /** Positions that the words have reached by moves which the chapter does not have. */
  const imagined: Position[] = [];
  const quotes = quotedIn(text);
  for (const sentence of sentencesIn(passage.text, vocabulary.language)) {
    if (elsewhere.test(sentence.text)) return undefined;
    let end = 0;
    for (const found of sentence.text.matchAll(run)) {
      const { mention: written = '', reply } = found.groups ?? {};
      // What stands between two moves may be moves too, which lead where nobody knows.
      if (bare.test(sentence.text.slice(end, found.index))) return undefined;
      end = found.index + found[0].length;
      if (isWithin(quotes, sentence.start + found.index)) continue;
      const mention = readMention(written, vocabulary);
      const placed = positionsAt(chapter, mention);
      const from = [...placed, ...imagined.filter(mention.fits)];
      if (from.length === 0 || from.length > mostAsked) return undefined;
      const after = playAll(from, mention.spellings);
      const isAnnounced =
        after.length > 0 && passage.kind === 'heading' && !hedged.test(sentence.text);
      if (after.length === 0 || (isAnnounced && !isTold(mention, chapter, course))) {
        const names = mention.spellings.map((san) => mention.name.replace(/[^.]*$/, san));
        if (names.some((name) => course.ask('moveNamed', name))) return undefined;
        const start = sentence.start + found.index;
        const there = movesAt(chapter, mention);
        return { mention, start, end: start + written.length, there, isUnkept: isAnnounced };
      }
      imagined.push(...after);
      if (reply !== undefined) {
        const spellings = spellingsOf(reply, vocabulary);
        imagined.push(...playAll(after, spellings));
      }
      if (imagined.length > mostAsked) return undefined;
    }
  }
  return undefined;
}

/** Whether a line of the chapter has a move, or a text that is no heading speaks of it. */
function isTold(mention: Mention, chapter: Chapter, course: CourseView): boolean {
  const played = movesAt(chapter, mention);
  if (mention.spellings.some((san) => played.some((move) => isSameMove(san, move)))) return true;
  for (const { kind, text } of passagesOf(chapter, course)) {
    if (kind !== 'heading' && text.text.replaceAll(' ', '').includes(mention.name)) return true;
  }
  return false;
}

/** The positions after a move, from wherever it can be played. */
export function playAll(from: readonly Position[], spellings: readonly string[]): Position[] {
  const after = from.flatMap((position) =>
    spellings.flatMap((san) => playSan(position, san)?.after ?? []),
  );
  return after.length > 0 ? after : from.flatMap((position) => play(position, spellings));
}

/** The same, however it is spelt; an ambiguous move counts as played, and leads nowhere further. */
function play(position: Position, spellings: readonly string[]): Position[] {
  return spellings.flatMap((san) => {
    const played = playMove(position, san);
    if (!isMoveFault(played)) return [played.after];
    return played.kind === 'ambiguous' ? [position] : [];
  });
}

interface Numbered {
  readonly positions: Map<string, Position>;
  readonly moves: Set<string>;
}

const numbered = new WeakMap<Chapter, ReadonlyMap<string, Numbered>>();

function at(chapter: Chapter, { number, color }: Mention): Numbered | undefined {
  const known = numbered.get(chapter) ?? byNumber(chapter);
  numbered.set(chapter, known);
  return known.get(`${number} ${color}`);
}

/** The positions that a chapter has at a move's number, with that side to move. */
export function positionsAt(chapter: Chapter, mention: Mention): Position[] {
  return [...(at(chapter, mention)?.positions.values() ?? [])];
}

function movesAt(chapter: Chapter, mention: Mention): string[] {
  return [...(at(chapter, mention)?.moves ?? [])];
}

function byNumber(chapter: Chapter): Map<string, Numbered> {
  const all = new Map<string, Numbered>();
  const add = (position: Position) => {
    const name = `${fullMoveNumber(position)} ${sideToMove(position)}`;
    const there = all.get(name) ?? { positions: new Map(), moves: new Set() };
    all.set(name, there);
    there.positions.set(position.key, position);
    return there;
  };
  for (const block of chapter.blocks) {
    if ((block.kind === 'diagram' || block.kind === 'exercise') && block.position)
      add(block.position);
    for (const tree of treesOf(block)) {
      for (const { position, move, parent } of tree) {
        if (position) add(position);
        const before = parent === undefined ? undefined : tree[parent]?.position;
        if (move && before) add(before).moves.add(move.san);
      }
    }
  }
  return all;
}
