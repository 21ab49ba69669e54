import { isSquare } from '../../chess/squares.ts';
import type { Square } from '../../chess/types.ts';

export interface OwnArrow {
  readonly from: Square;
  readonly to: Square;
}

/** A reader's note, marks and arrows at a position. */
export interface OwnEntry {
  /** `Position.key` */
  readonly key: string;
  readonly text?: string | undefined;
  readonly bookmark?: boolean | undefined;
  readonly marks?: readonly Square[] | undefined;
  readonly arrows?: readonly OwnArrow[] | undefined;
  /** When it was changed last, in ms since 1970. */
  readonly changed: number;
  /** The moves of the reader's own that led there from the text, in SAN. */
  readonly line?: readonly string[] | undefined;
  /** The page's words for the position, `after 9.Bg5`, and the link back. */
  readonly label: string;
  readonly href: string;
}

export function isEmpty({ text = '', bookmark, marks = [], arrows = [] }: OwnEntry): boolean {
  return text.trim() === '' && bookmark !== true && marks.length === 0 && arrows.length === 0;
}

/** The four fields of a key, by their characters alone. */
const keyForm =
  /^[KQRBNPkqrbnp1-8]+(?:\/[KQRBNPkqrbnp1-8]+){7} [wb] (?:-|[KQkq]{1,4}) (?:-|[a-h][36])$/;
/** A page of the course and a place in it: no address elsewhere. */
const hrefForm = /^(?![a-z]+:)[\w.%-]*(?:#[\w.%-]*)?$/i;
const longest = 20_000;

/** Reads an entry from a file or a storage; undefined if malformed. */
export function readOwnEntry(value: unknown): OwnEntry | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { key, text, bookmark, marks, arrows, line, changed, label, href } = value as Partial<
    Record<keyof OwnEntry, unknown>
  >;
  if (typeof key !== 'string' || !keyForm.test(key)) return undefined;
  if (typeof changed !== 'number' || !Number.isFinite(changed)) return undefined;
  const entry: OwnEntry = {
    key,
    changed,
    label: typeof label === 'string' ? label.slice(0, 200) : '',
    href: typeof href === 'string' && hrefForm.test(href) ? href : '',
    ...(typeof text === 'string' && text.trim() !== '' && { text: text.slice(0, longest) }),
    ...(bookmark === true && { bookmark }),
    ...listed('marks', marks, (mark) => typeof mark === 'string' && isSquare(mark)),
    ...listed('arrows', arrows, isArrow),
    ...listed('line', line, (move) => typeof move === 'string' && move.length < 12),
  };
  return isEmpty(entry) ? undefined : entry;
}

function listed(name: string, value: unknown, isSound: (item: unknown) => boolean): object {
  const sound = Array.isArray(value) ? value.filter(isSound) : [];
  return sound.length === 0 ? {} : { [name]: sound };
}

function isArrow(value: unknown): value is OwnArrow {
  const { from, to } = (value ?? {}) as Partial<Record<keyof OwnArrow, unknown>>;
  return (
    typeof from === 'string' &&
    typeof to === 'string' &&
    isSquare(from) &&
    isSquare(to) &&
    from !== to
  );
}

/** Draws the arrow between two squares, or takes it away; of one square, its mark. */
export function withDrawn(entry: OwnEntry, from: Square, to: Square): OwnEntry {
  const { marks = [], arrows = [] } = entry;
  if (from === to) {
    const others = marks.filter((mark) => mark !== from);
    return { ...entry, marks: others.length < marks.length ? others : [...marks, from] };
  }
  const others = arrows.filter((arrow) => arrow.from !== from || arrow.to !== to);
  return { ...entry, arrows: others.length < arrows.length ? others : [...arrows, { from, to }] };
}

/** Entries from elsewhere that are newer than ours. */
export function laterOf(
  here: ReadonlyMap<string, OwnEntry>,
  others: readonly OwnEntry[],
): OwnEntry[] {
  return others.filter((entry) => entry.changed > (here.get(entry.key)?.changed ?? 0));
}
