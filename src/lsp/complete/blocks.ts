import type { Course } from '../../model/index.ts';
import {
  blockAttributes,
  blockNames,
  type Choices,
  diagramChoices,
  exerciseChoices,
  learnWords,
  patternChoices,
} from '../../read/index.ts';
import type { Asked } from '../asked.ts';
import { attributeWords, blockWords, bodyWords } from '../words.ts';
import { claimOffers, labelOffers, type SpeaksOf, textOffers } from './directives.ts';
import type { FenceAt } from './fence-at.ts';
import { CompletionItemKind, type Offers } from './item.ts';
import { moveOffers, moveWordStart } from './moves.ts';
import { cursorInMoves } from './piece.ts';
import { keyOffers, wordOffers, yamlCursor } from './yaml.ts';

type BlockName = (typeof blockNames)[number];

/** What may stand on the line that opens a block: its name, attributes, their values. */
export function openingOffers(
  { start: fenceStart, marks }: FenceAt,
  asked: Asked,
  offset: number,
  course: Course,
): Offers | undefined {
  const typed = asked.text.slice(fenceStart, offset);
  const name = /^[`~]+[ \t]*([\w-]*)$/.exec(typed)?.[1];
  if (name !== undefined) {
    // A block that is not closed takes in what follows: it is closed at once where nothing does.
    const isLast = /^[ \t]*(?:$|(?:\r\n?|\n)[ \t]*(?:[\r\n]|$))/.test(asked.text.slice(offset));
    const rest = isLast ? `\n$0\n${marks}` : '';
    return {
      start: offset - name.length,
      offers: blockNames.map((label) => ({
        label,
        kind: CompletionItemKind.Class,
        text: label + rest,
        words: blockWords[label],
      })),
    };
  }
  const block = blockNames.find((one) => typed.slice(marks.length).trimStart().startsWith(one));
  if (!block) return undefined;
  const value = /([A-Za-z][\w-]*)\s*=\s*["']([^"']*)$/.exec(typed);
  if (value) {
    const [, attribute = '', written = ''] = value;
    return valueOffers(block, attribute, written, { asked, offset, course });
  }
  const word = /\s([\w-]*)$/.exec(typed)?.[1];
  if (word === undefined) return undefined;
  return {
    start: offset - word.length,
    offers: blockAttributes[block]
      .filter((one) => !new RegExp(`\\s${one}\\s*=`).test(typed))
      .map((label) => ({
        label,
        kind: CompletionItemKind.Property,
        text: `${label}="$0"`,
        words: attributeWords[label],
      })),
  };
}

function valueOffers(
  block: BlockName,
  attribute: string,
  written: string,
  {
    asked,
    offset,
    course,
  }: { readonly asked: Asked; readonly offset: number; readonly course: Course },
): Offers | undefined {
  const start = offset - written.length;
  switch (attribute) {
    case 'from':
    case 'to':
    case 'at':
      return { start, offers: labelOffers(course) };
    case 'view':
      return wordOffers(['white', 'black'], start);
    case 'learn':
      return block === 'moves' ? wordOffers(learnWords, start) : undefined;
    case 'file':
      return {
        start,
        offers: asked.desk.games().map((label) => ({ label, kind: CompletionItemKind.File })),
      };
    case 'after': {
      const wordStart = moveWordStart(asked.text, offset);
      const before = asked.text.slice(start, wordStart);
      const position = cursorInMoves('```moves', before, course)?.node.position;
      return position && moveOffers(position, course, { start: wordStart, before });
    }
    default:
      return undefined;
  }
}

/** What may stand in a block of movetext: legal moves, and in its comments what texts may hold. */
export function movetextOffers(
  fence: FenceAt,
  asked: Asked,
  offset: number,
  course: Course,
): Offers | undefined {
  const { text } = asked;
  const start = moveWordStart(text, offset);
  const opening = fence.name === 'game' ? fence.opening.replace('game', 'moves') : fence.opening;
  const cursor = cursorInMoves(opening, text.slice(fence.contentStart, start), course);
  if (!cursor || cursor.isInComment) return textOffers(asked, offset, course, () => cursor);
  const { position } = cursor.node;
  const before = text.slice(fence.contentStart, start);
  return position && moveOffers(position, course, { start, before });
}

const bodies: Readonly<Record<string, Choices>> = {
  diagram: diagramChoices,
  exercise: exerciseChoices,
  pattern: patternChoices,
};

/** What may stand in a block of `name: value` lines. */
export function bodyOffers(
  fence: FenceAt,
  asked: Asked,
  offset: number,
  course: Course,
): Offers | undefined {
  const choices = bodies[fence.name];
  if (!choices) return undefined;
  const { text } = asked;
  const content = text.slice(fence.contentStart, offset);
  const rest = text.slice(offset).split(/^[ \t>]*[`~]{3,}/m)[0] ?? '';
  const cursor = yamlCursor(content, content + rest);
  const { key, typed } = cursor;
  if (key === undefined) return keyOffers(choices, cursor, offset, bodyWords);
  const shown: SpeaksOf = () => cursorInMoves(...startOf(fence, content + rest), course);
  const last = offset - (/\S*$/.exec(typed)?.[0].length ?? 0);
  switch (key) {
    case 'claim':
      return claimOffers(typed, { offset, course, at: shown() });
    case 'at':
    case 'except':
      return { start: last, offers: labelOffers(course) };
    case 'answer':
    case 'also':
    case 'wrong':
    case 'before': {
      const start = moveWordStart(text, offset);
      const moves = typed.slice(0, typed.length - (offset - start));
      const [opening, lead] = startOf(fence, key === 'before' ? '' : content + rest);
      const at = cursorInMoves(opening, `${lead} ${moves}`, course);
      if (at?.isInComment) return textOffers(asked, offset, course, () => at);
      const position = at?.node.position;
      return position && moveOffers(position, course, { start, before: moves || lead });
    }
    default: {
      const words = choices[key] ?? [];
      return words.length > 0 ? wordOffers(words, last) : textOffers(asked, offset, course, shown);
    }
  }
}

/** A block of moves that ends where a diagram or an exercise begins: its opening line and its moves. */
function startOf({ opening }: FenceAt, body: string): [opening: string, moves: string] {
  const attribute = (name: string) =>
    new RegExp(`\\b${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(opening)?.slice(1).find(Boolean);
  const at = attribute('at');
  const fen = attribute('fen');
  const start = at !== undefined ? ` from="${at}"` : fen !== undefined ? ` fen="${fen}"` : '';
  const before = attribute('before') ?? /^before:\s*["']?([^"'\r\n]*)/m.exec(body)?.[1] ?? '';
  return [`\`\`\`moves${start}`, `${attribute('after') ?? ''} ${before}`.trim()];
}
