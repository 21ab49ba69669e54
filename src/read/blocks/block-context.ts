import type { Color } from '../../chess/index.ts';
import { nearestName } from '../../diagnostics/index.ts';
import { isLabel, labelHint } from '../names.ts';
import type { TextContext } from '../text-context.ts';
import type { CourseProblem, PlacedText, SourceFile } from '../types.ts';
import type { Fence } from './fence.ts';

/** What a block is read with, and where its problems go. */
export interface BlockContext extends TextContext {
  readonly reportMoves: (problem: Omit<CourseProblem, 'rule'>) => void;
  /** Makes the next block's key from its text. */
  readonly keyOf: (text: string) => string;
  /** The files of `games/` by their path. */
  readonly games: ReadonlyMap<string, SourceFile>;
  /** The length of all game texts that the chapter has taken from files so far. */
  readonly shownGames: { size: number };
}

/**
 * Reports attributes that the block does not have, and suggests the nearest one that it has.
 * @returns whether every attribute can be read and is known.
 */
export function checkAttributes(
  name: string,
  known: readonly string[],
  fence: Fence,
  { report, source }: BlockContext,
): boolean {
  const list = known.map((attribute) => `\`${attribute}="…"\``).join(', ');
  const has = list === '' ? 'It has none.' : `Its attributes are ${list}.`;
  if (fence.unreadable) {
    const { start, end } = fence.unreadable;
    const open = /^([A-Za-z][\w-]*)\s*=\s*["']/.exec(source.text.slice(start.offset, end.offset));
    report({
      place: fence.unreadable,
      message: open
        ? `The value of \`${open[1]}\` begins with a quotation mark that is never closed.`
        : 'This cannot be read as an attribute.',
      hint: open ? 'Close it in the same line.' : `Write attributes as name="value". ${has}`,
    });
  }
  for (const { text, place } of fence.repeated) {
    report({
      place,
      message: `The attribute \`${text}\` is given twice.`,
      hint: 'Keep one of them; the first counts until then.',
    });
  }
  for (const { text, place } of fence.curly) {
    report({
      place,
      message: 'A value stands between curly quotation marks here, and straight ones are wanted.',
      hint: `Write it with straight quotes: "${text}".`,
      fixes: [{ place, text: `"${text}"` }],
    });
  }
  for (const [attribute, { namePlace }] of fence.attributes) {
    if (known.includes(attribute)) continue;
    const near = nearestName(attribute, known);
    report({
      place: namePlace,
      message: `A \`${name}\` block has no attribute \`${attribute}\`.`,
      hint: near ? `Did you mean \`${near}\`?` : has,
    });
  }
  return !fence.unreadable && [...fence.attributes.keys()].every((name) => known.includes(name));
}

export function readView(fence: Fence, { report }: BlockContext): { view?: Color } {
  const view = fence.attributes.get('view');
  if (!view) return {};
  if (view.text === 'white' || view.text === 'black') return { view: view.text };
  report({
    place: view.place,
    message: `\`${view.text}\` is no side to view the board from.`,
    hint: 'Write view="white" or view="black".',
  });
  return {};
}

/** The attribute that gives the position, of which there may be one; a malformed name is reported and returned. */
export function pickAttribute<Name extends 'from' | 'at' | 'fen' | 'after'>(
  fence: Fence,
  names: readonly Name[],
  { report }: BlockContext,
): { [name in Name]?: PlacedText } {
  const given = names.filter((name) => fence.attributes.has(name));
  if (given.length > 1) {
    const list = given.map((name) => `\`${name}\``).join(' and ');
    report({
      place: fence.attributes.get(given[1] as Name)?.namePlace ?? fence.opening,
      message: `This block says twice where it starts: ${list}.`,
      hint: 'Keep one of them.',
    });
  }
  const name = given[0];
  const value = name && fence.attributes.get(name);
  if (!name || !value) return {};
  if ((name === 'from' || name === 'at') && !isLabel(value.text)) {
    report({
      place: value.place,
      message: `\`${value.text}\` is no name for a position.`,
      hint: labelHint,
    });
  }
  return { [name]: { text: value.text, place: value.place } } as { [name in Name]?: PlacedText };
}
