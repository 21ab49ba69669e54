import type { MoveWords } from '../course-move.ts';
import type { Words } from '../words.ts';

/** A sentence for one and for more. */
export interface Counted {
  readonly one: string;
  readonly many: string;
}

/** What the search says in the page's language; gaps in braces. */
export interface SearchWords extends MoveWords, Pick<Words, 'white' | 'black' | 'pieces'> {
  readonly toMove: Readonly<Record<'white' | 'black', string>>;
  readonly searching: string;
  readonly after: string;
  readonly start: string;
  readonly inChapter: string;
  readonly againIn: string;
  readonly board: string;
  readonly places: string;
  readonly goesOn: string;
  readonly ends: string;
  readonly names: string;
  readonly inTree: string;
  readonly and: string;
  readonly more: string;
  readonly namesFound: string;
  readonly chaptersFound: Counted;
  readonly noWords: string;
  readonly moreInChapter: Counted;
  readonly fromFolder: string;
  readonly noIndex: string;
  readonly noWasm: string;
  readonly has: string;
  readonly hasNot: string;
  readonly alike: string;
  readonly alikeToo: string;
  readonly differs: Readonly<Record<'turn' | 'castling' | 'en-passant', string>>;
  readonly but: string;
  readonly knowsUpTo: string;
  readonly knowsNot: string;
  readonly cannotPlay: string;
  readonly cannotPlayAfter: string;
  readonly meant: string;
  readonly or: string;
  readonly reason: string;
  readonly reasonLanguage: string;
  readonly noFen: string;
  readonly fenHere: string;
  readonly fenHelp: string;
  readonly unreadable: string;
  readonly emptyField: string;
  readonly emptyWords: string;
  readonly emptyBoard: string;
  readonly exactly: Counted;
  readonly holding: Counted;
  readonly nowhere: string;
}

/** The sentence for a number of things. */
export function counted(sentence: Counted, count: number): string {
  return (count === 1 ? sentence.one : sentence.many).replace('{count}', String(count));
}
