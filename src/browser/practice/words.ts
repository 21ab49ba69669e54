import { sanIn } from '../../chess/letters.ts';
import { pieceKinds } from '../../chess/types.ts';
import type { BoardWords } from '../board/board-words.ts';
import { fill } from '../board/fill.ts';
import type { EntryWords } from '../board/move-entry.ts';

/** A sentence for one and for another number, `{n}`. */
export interface Counted {
  readonly one: string;
  readonly other: string;
}

/** What practice says in the page's language; gaps in braces. */
export interface PracticeWords {
  readonly moves: Counted;
  readonly untouched: string;
  readonly due: Counted;
  readonly nothingDue: string;
  readonly changed: Counted;
  readonly fresh: Counted;
  readonly allSeen: string;
  readonly ahead: string;
  readonly beginDue: Counted;
  readonly beginNew: Counted;
  readonly noneChosen: string;
  readonly overview: string;
  readonly overviewHelp: string;
  readonly chapter: string;
  readonly known: string;
  readonly learning: string;
  readonly unseen: string;
  readonly dueNow: string;
  readonly whole: string;
  readonly wholeHelp: string;
  readonly adopted: Counted;
  readonly resting: Counted;
  readonly keeping: string;
  readonly keepingHelp: string;
  readonly save: string;
  readonly load: string;
  readonly forget: string;
  readonly forgetHelp: string;
  readonly forgetNow: string;
  readonly forgotten: string;
  readonly notForgotten: string;
  readonly taken: Counted;
  readonly takenOther: Counted;
  readonly mended: Counted;
  readonly notTaken: string;
  readonly notProgress: string;
  readonly cutShort: string;
  readonly otherCourse: string;
  readonly newer: string;
  readonly unreadable: string;
  readonly denied: string;
  readonly full: string;
  readonly lost: string;
  readonly help: string;
  readonly helpText: readonly string[];
  readonly session: string;
  readonly left: Counted;
  readonly stop: string;
  readonly yourMove: string;
  readonly played: string;
  readonly newMove: string;
  readonly changedMove: string;
  readonly notShown: string;
  readonly shown: string;
  readonly right: string;
  readonly option: string;
  readonly bad: string;
  readonly other: string;
  readonly hint: string;
  readonly hinted: string;
  readonly show: string;
  readonly given: string;
  readonly on: string;
  readonly nextLine: string;
  readonly finish: string;
  readonly blank: string;
  readonly ended: string;
  readonly endedEarly: string;
  readonly answered: Counted;
  readonly answeredNone: string;
  readonly atOnce: Counted;
  readonly slowly: Counted;
  readonly missed: Counted;
  readonly seen: Counted;
  readonly toOverview: string;
}

/** All that the page sends (`data-words`). */
export interface PageWords extends BoardWords, EntryWords {
  readonly practice: PracticeWords;
  /** Moves are printed with figures instead of letters. */
  readonly figurines: boolean;
  readonly cannotGo: string;
  readonly notYours: Readonly<Record<'white' | 'black', string>>;
}

/** A sentence with its number, in the form that the page's language has for it. */
export function counted(sentence: Counted, n: number): string {
  const rule = new Intl.PluralRules(document.documentElement.lang).select(n);
  return fill(rule === 'one' ? sentence.one : sentence.other, { n: String(n) });
}

/** Canonical SAN in the letters of the page. */
export function printed(san: string, { letters }: PageWords): string {
  return sanIn(letters, san);
}

/** The same for the page, with figures where the course has them: `.figurine`, as in its text. */
export function printedNodes(san: string, words: PageWords): (string | HTMLElement)[] {
  const text = printed(san, words);
  if (!words.figurines) return [text];
  return text.split(/(\p{Lu})/u).map((part) => {
    const kind = pieceKinds.find((each) => part !== '' && words.letters[each] === part);
    if (kind === undefined) return part;
    const figure = document.createElement('span');
    figure.className = `figurine ${kind}`;
    figure.textContent = part;
    return figure;
  });
}
