import type { PhrasingContent, RootContent } from 'mdast';
import type { Color } from '../../chess/index.ts';
import { type Place, withinLine } from '../../diagnostics/index.ts';
import { placeOfNode, walkText } from '../../model/index.ts';
import {
  checkAsked,
  doubtful,
  mateAsked,
  mateInMoves,
  notAsked,
  openQuestion,
  readNumber,
  sideNames,
  sideOf,
  sidesToMove,
  winnings,
} from './ask-words.ts';

/** What a question says in words that can be understood for sure. */
export interface Ask {
  /** The side that it says is to move, and where. */
  readonly toMove?: { readonly color: Color; readonly text: string; readonly place: Place };
  readonly goals: readonly Goal[];
}

/** What the student is asked to do; `text` is how it is said. */
export type Goal = { readonly text: string; readonly place: Place } & (
  | { readonly kind: 'mate'; readonly moves?: number }
  | { readonly kind: 'check' }
  | { readonly kind: 'win'; readonly pawns: number }
);

/** The words of a question, each with the node that it stands in. */
interface Words {
  readonly text: string;
  readonly placeOf: (offset: number, length: number) => Place;
}

/**
 * Reads a question. A sentence that speaks of another move, of a wish or of what does not happen says nothing
 * here, and neither does one that can be answered with no.
 * @param turn the side to move, which is asked.
 */
export function readAsk(content: readonly PhrasingContent[], file: string, turn: Color): Ask {
  const { text, placeOf } = wordsOf(content, file);
  const goals: Goal[] = [];
  const sides: NonNullable<Ask['toMove']>[] = [];
  for (const { 0: sentence, index } of text.matchAll(/[^.!?:;]+[.!?:;]*/g)) {
    const found = (match: RegExpExecArray) => ({
      text: match[0],
      place: placeOf(index + match.index, match[0].length),
    });
    if (!doubtful.test(sentence)) {
      for (const pattern of sidesToMove) {
        const match = pattern.exec(sentence);
        const color = sideOf(match?.[1] ?? '');
        if (match && color) sides.push({ color, ...found(match) });
      }
    }
    if (isAsked(sentence, turn)) goals.push(...goalsOf(sentence, found));
  }
  // Whoever names both sides means something else.
  const [toMove] = new Set(sides.map(({ color }) => color)).size === 1 ? sides : [];
  return { ...(toMove && { toMove }), goals };
}

function isAsked(sentence: string, turn: Color): boolean {
  if (doubtful.test(sentence) || notAsked.test(sentence) || openQuestion.test(sentence))
    return false;
  return [...sentence.matchAll(sideNames)].every(([name]) => sideOf(name) === turn);
}

function goalsOf(
  sentence: string,
  found: (match: RegExpExecArray) => Pick<Goal, 'text' | 'place'>,
): Goal[] {
  const counted = mateInMoves.exec(sentence);
  const moves = counted && readNumber(counted[1] ?? '');
  if (counted && moves) return [{ kind: 'mate', moves, ...found(counted) }];
  const goals: Goal[] = [];
  const first = (patterns: readonly RegExp[]) =>
    patterns.map((pattern) => pattern.exec(sentence)).find((match) => match !== null);
  const mate = first(mateAsked);
  if (mate) goals.push({ kind: 'mate', ...found(mate) });
  const check = first(checkAsked);
  if (check) goals.push({ kind: 'check', ...found(check) });
  for (const { asked, pawns } of winnings) {
    const match = asked.exec(sentence);
    if (match) goals.push({ kind: 'win', pawns, ...found(match) });
  }
  return goals;
}

function wordsOf(content: readonly PhrasingContent[], file: string): Words {
  let text = '';
  const parts: { readonly start: number; readonly node: PhrasingContent | RootContent }[] = [];
  walkText(content, (node) => {
    if (node.type === 'text' || node.type === 'inlineCode' || node.type === 'proseMoves') {
      parts.push({ start: text.length, node });
      // The points of a move number end no sentence.
      text += node.type === 'text' ? node.value : node.value.replace(/[.!?:;]/g, ' ');
    } else if (node.type === 'break') text += ' ';
  });
  return {
    text: text.replace(/\s/g, ' ').replace(/(\d)\.(?=[\p{L}\d. ])/gu, '$1 '),
    placeOf(offset, length) {
      const part = parts.findLast(({ start }) => start <= offset);
      const [first] = content;
      const place = placeOfNode(part?.node ?? (first as PhrasingContent), file);
      if (part?.node.type !== 'text') return place;
      const { start, end } = place;
      // Only what stands in one line as it is read can be pointed at to the character.
      const isPlain =
        start.line === end.line && end.offset - start.offset === part.node.value.length;
      const from = offset - part.start;
      if (!isPlain || from + length > part.node.value.length) return place;
      return withinLine(place, from, from + length);
    },
  };
}
