import type { Color } from '../chess/index.ts';
import type { DeskScriptData } from './desk.ts';

/** The parts that a board may have below its squares (`browser/board/course-board.ts`). */
export type BoardPart =
  | 'caption'
  | 'steps'
  | 'turn'
  | 'fold'
  | 'comment'
  | 'choices'
  | 'also'
  | 'own'
  | 'voice';

/**
 * Every `data-…` attribute that the build writes and a script reads, by the element that has it. What is not
 * here is written and read in the browser alone.
 */
export interface DataAttributes {
  /** What a page's scripts live in. */
  readonly page: {
    /** `writeWords` */
    readonly words: string;
    /** Path of the script that finds what an address names. */
    readonly finder?: string | undefined;
    /** Path of the script that makes exercises live. */
    readonly solver?: string | undefined;
    /** Path of the script with the exercises of the course (`CourseExercises`). */
    readonly exercises?: string | undefined;
    /** Path of the script that keeps how far the chapter was read. */
    readonly keep?: string | undefined;
    /** Path of the script that compares games beside the page. */
    readonly worker?: string | undefined;
    /** Path of the script that lets a reader play on the cover. */
    readonly board?: string | undefined;
    /** The courses of a shelf (`ShelfTable`), as JSON. */
    readonly shelf?: string | undefined;
    /** Path of the script that asks whether WebAssembly may run. */
    readonly probe?: string | undefined;
  };
  /** The body of every page: `CourseTable.course`. */
  readonly course: { readonly course: string };
  /** The script that runs before a page's text. */
  readonly begin: {
    /** Path of the script of the reader's settings. */
    readonly settings: string;
    /** How the page writes moves, where that is not in letters. */
    readonly written?: string | undefined;
    /** The letters of the pieces in the page's language, king to knight. */
    readonly letters: string;
    /** There on the page of a chapter. */
    readonly chapter?: '' | undefined;
  };
  /** The link to the reader's settings: paths of the script with their words, and of their style sheet. */
  readonly settings: { readonly asks: string; readonly look: string };
  /** The handout: `page {n}`, and the path of the sheet for letter paper. */
  readonly handout: { readonly page: string; readonly letter: string };
  /** What tells on paper where a link leads: the number of a diagram. */
  readonly place: { readonly diagram?: number | undefined };
  /** Tells of another edition. */
  readonly edition: { readonly worker: string };
  readonly board: { readonly parts: string };
  /** The position on the first page. */
  readonly cover: {
    /** `Position.key` */
    readonly key: string;
    readonly view: Color;
    /** The move that led to it: `f8e8`. */
    readonly last?: string | undefined;
  };
  /** A course on a shelf: `CourseTable.course`, and the address of its folder. */
  readonly book: { readonly course: string; readonly at: string };
  readonly moves: BoardData & {
    readonly view: Color;
    /** Number and side of its first move: `7b`. */
    readonly start: string;
    /** What it is to its exercise. */
    readonly line?: LineKind | undefined;
  };
  /**
   * A move that can be played through. What follows from the positions is left out, since a page has hundreds
   * of moves: its squares, and its address as a link.
   */
  readonly move: BoardData & {
    /** Index of its parent among the moves of its block, where that is not the move before it. */
    readonly up?: number | undefined;
    /** There, and empty, where the line of an exercise marks the move as bad. */
    readonly bad?: string | undefined;
    /** Where else the course reaches its position: addresses and moves, in turn. */
    readonly also?: string | undefined;
  };
  /** A diagram: what the page's board shows while it is read. */
  readonly diagram: Omit<BoardData, 'p'> & {
    readonly p: string;
    readonly view: Color;
    /** The move that led to its position: `g1f3`. */
    readonly last?: string | undefined;
    /** Id of the move that leads to its position in the text. */
    readonly at?: string | undefined;
  };
  readonly exercise: {
    readonly view: Color;
    readonly turn: Color;
    /** `Position.key`. */
    readonly p: string;
    /** The move that led to its position: `g1f3`. */
    readonly last?: string | undefined;
  };
  readonly plate: {
    /** The first field of the FEN, where the board is drawn in the browser. */
    readonly board?: string | undefined;
    readonly view?: Color | undefined;
    /** The move that led there: `g1f3`. */
    readonly last?: string | undefined;
    /** The key of the position that practice asks here, and the course's moves there, in SAN. */
    readonly asked?: string | undefined;
    readonly advice?: string | undefined;
  };
  /** An exercise on the page of all: its `Position.key`. */
  readonly card: { readonly key: string };
  /** A script of the desk, in `dev` alone. */
  readonly desk: DeskScriptData;
  /** What opens the place of a finding in an editor, in `dev` alone. */
  readonly finding: { readonly file: string; readonly line: number; readonly column: number };
  /** A paragraph that speaks of a position: its id. */
  readonly text: { readonly at?: string | undefined };
}

/** A line of an exercise: its answer, one that is as good, one that is not. */
export type LineKind = 'answer' | 'also' | 'wrong';

/** What a board shows at a place in the text. */
interface BoardData {
  /** The address of the position (`position-address.ts`), where the id is another. */
  readonly p?: string | undefined;
  readonly mark?: string | undefined;
  /** Arrows, each as `f3e5`. */
  readonly plan?: string | undefined;
  readonly threat?: string | undefined;
  readonly guard?: string | undefined;
}

type Value = string | number | undefined;

/** The attributes of an element of a tree: `dataUp`. */
export function dataProperties<Kind extends keyof DataAttributes>(
  _kind: Kind,
  values: DataAttributes[Kind],
): Record<string, string | number> {
  return named(values, (name) => `data${name.charAt(0).toUpperCase()}${name.slice(1)}`);
}

/** The same in a page: `data-up`. */
export function dataAttributes<Kind extends keyof DataAttributes>(
  _kind: Kind,
  values: DataAttributes[Kind],
): Record<string, string | number> {
  return named(values, (name) => `data-${name}`);
}

function named(values: object, nameOf: (name: string) => string): Record<string, string | number> {
  const given: Record<string, string | number> = {};
  for (const name in values) {
    const value = (values as Readonly<Record<string, Value>>)[name];
    if (value !== undefined) given[nameOf(name)] = value;
  }
  return given;
}

/** What an element was given; any of it may be missing, since the page may be another edition's. */
export function dataOf<Kind extends keyof DataAttributes>(
  _kind: Kind,
  { dataset }: { readonly dataset: Readonly<Record<string, string | undefined>> },
): Readonly<Partial<Record<keyof DataAttributes[Kind], string>>> {
  return dataset as Partial<Record<keyof DataAttributes[Kind], string>>;
}

/** The parts of a board as its attribute has them. */
export function boardParts(...parts: readonly BoardPart[]): DataAttributes['board'] {
  return { parts: parts.join(' ') };
}
