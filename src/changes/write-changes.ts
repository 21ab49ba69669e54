import type { Code, List, Paragraph, PhrasingContent, Root, RootContent } from 'mdast';
import { type Options, toMarkdown } from 'mdast-util-to-markdown';
import { toString as plainText } from 'mdast-util-to-string';
import { type Counted, counted } from '../contract/index.ts';
import { fileAddress } from '../model/index.ts';
import { glyphSign } from '../movetext/index.ts';
import { numberedMove } from '../render/index.ts';
import { type Strings, stringsFor } from '../strings/index.ts';
import type {
  AdviceChange,
  Change,
  ChapterChanges,
  CourseChanges,
  EditionPlace,
  Move,
} from './types.ts';

/** Longer reasons end with an ellipsis: the whole stands at the move. */
const longestReason = 240;

/**
 * Changes in words of the course's language: as plain text, or as Markdown of the course language
 * whose links lead to the board, for a file in `news/`.
 */
export function writeChanges(
  changes: CourseChanges,
  { language, form }: { readonly language: string; readonly form: 'text' | 'markdown' },
): string {
  const tree = makeTree(changes, stringsFor(language));
  return form === 'text'
    ? makeText(tree)
    : toMarkdown(tree, { bullet: '-', fences: true, unsafe: courseSigns });
}

/** A colon before a letter would begin a directive, but not within an address. */
const courseSigns: Options['unsafe'] = [
  {
    character: ':',
    after: '[A-Za-z]',
    inConstruct: 'phrasing',
    notInConstruct: ['destinationRaw', 'destinationLiteral'],
  },
];

function makeTree({ side, chapters }: CourseChanges, strings: Strings): Root {
  const children: RootContent[] = [];
  if (side) children.push(paragraph([text(strings.changes.side[side.new])]));
  for (const chapter of chapters) children.push(...chapterTree(chapter, strings));
  return { type: 'root', children };
}

function chapterTree(chapter: ChapterChanges, strings: Strings): RootContent[] {
  const { title, status, positions, changes } = chapter;
  const words = strings.changes;
  const tree: RootContent[] = [{ type: 'heading', depth: 2, children: [text(title)] }];
  if (status === 'new')
    tree.push(paragraph([text(counted(words.newChapter, positions, strings.language))]));
  if (status === 'dropped')
    tree.push(paragraph([text(counted(words.droppedChapter, positions, strings.language))]));
  for (const kind of new Set(changes.map((change) => change.kind))) {
    const own = changes.filter((change) => change.kind === kind);
    tree.push(paragraph([{ type: 'strong', children: [text(words.kinds[kind])] }]));
    tree.push(list(own.map((change) => describeChange(change, strings))));
    tree.push(...own.flatMap((change) => board(change, strings)));
  }
  return tree;
}

function describeChange(change: Change, strings: Strings): PhrasingContent[] {
  const words = strings.changes;
  const at = link(change.at, positionWords(change.at, strings));
  const move = (given: Move | undefined) => (given ? numberedMove(given, strings) : '');
  switch (change.kind) {
    case 'advice': {
      const pattern = change.old
        ? change.new
          ? words.advice
          : words.adviceWithdrawn
        : words.adviceGiven;
      return [
        ...fill(pattern, { at, now: move(change.new), before: move(change.old) }),
        ...why(change, strings),
        ...more(change.positions, words.positions, strings),
      ];
    }
    case 'reply': {
      const pattern = change.answer ? words.replyAnswered : words.moveAdded;
      return [
        ...fill(pattern, { at, move: move(change.move), answer: move(change.answer) }),
        ...more(change.positions, words.positions, strings),
      ];
    }
    case 'extended':
    case 'option':
    case 'start': {
      const own = change.kind === 'start' ? link(change.at, words.ownStart) : at;
      return [
        ...fill(words.moveAdded, { at: own, move: move(change.move) }),
        ...more(change.positions, words.positions, strings),
      ];
    }
    case 'judged':
      return [
        ...fill(change.bad ? words.calledBad : words.calledBadNoMore, {
          at,
          move: move(change.move),
        }),
        ...(change.reason === undefined ? [] : [text(` ${words.why(shorten(change.reason))}`)]),
      ];
    case 'assessment':
      return fill(words.assessment, {
        at,
        now: glyphSign(change.new) ?? '',
        before: glyphSign(change.old) ?? '',
      });
    case 'dropped':
      return [
        ...(change.move ? fill(words.moveDropped, { at, move: move(change.move) }) : [at]),
        ...more(change.positions, words.positionsDropped, strings),
      ];
    case 'exercise':
      return fill(words.exercise[change.what], {
        exercise: link(change.at, strings.exerciseNumber(change.number)),
      });
    case 'pattern':
      return fill(words.pattern[change.what], { pattern: link(change.at, change.title) });
  }
}

/** Why the old move is advised no more: an erratum where it was a mistake, else the author's reason. */
function why({ mistake, old, reason }: AdviceChange, strings: Strings): PhrasingContent[] {
  const words = strings.changes;
  const said = reason === undefined ? undefined : shorten(reason);
  if (mistake && old) return [text(` ${words.mistake(numberedMove(old, strings), said)}`)];
  return said === undefined ? [] : [text(` ${words.why(said)}`)];
}

/** A diagram of the course language: the position, with the move that is advised. */
function board(change: Change, strings: Strings): Code[] {
  if (change.kind !== 'advice' && change.kind !== 'judged') return [];
  const { fen, advised } = change.board;
  const label = change.at.stands ? change.at.label : undefined;
  const plan = advised === undefined ? [] : [`plan: ${advised}`];
  const caption = capital(positionWords(change.at, strings));
  return [
    {
      type: 'code',
      lang: 'diagram',
      meta: label === undefined ? `fen="${fen}"` : `at="${label}"`,
      value: [`caption: ${JSON.stringify(`${caption}.`)}`, ...plan].join('\n'),
    },
  ];
}

function capital(words: string): string {
  const [first = ''] = words;
  return first.toUpperCase() + words.slice(first.length);
}

function positionWords({ after }: EditionPlace, strings: Strings): string {
  return after === undefined ? strings.startPosition : strings.after(numberedMove(after, strings));
}

/** A link to the place, by its name where it has one, since a name lasts; else plain words. */
function link({ stands, label, file, id }: EditionPlace, words: string): PhrasingContent {
  if (!stands) return text(words);
  const url =
    label === undefined ? `../${fileAddress(file)}#${encodeURIComponent(id)}` : `pos:${label}`;
  return { type: 'link', url, children: [text(words)] };
}

/** A sentence of the catalogue with its gaps in braces filled; it begins with a capital letter. */
function fill(
  sentence: string,
  parts: Readonly<Record<string, PhrasingContent | string>>,
): PhrasingContent[] {
  return sentence
    .split(/\{(\w+)\}/)
    .map((piece, index) => (index % 2 === 0 ? piece : (parts[piece] ?? '')))
    .filter((part) => part !== '')
    .map((part) => (typeof part === 'string' ? text(part) : part));
}

function more(positions: number, words: Counted, { language }: Strings): PhrasingContent[] {
  return positions > 1 ? [text(` (${counted(words, positions, language)})`)] : [];
}

function shorten(reason: string): string {
  if (reason.length <= longestReason) return reason;
  return `${reason.slice(0, longestReason).replace(/\s+\S*$/, '')} …`;
}

function makeText({ children }: Root): string {
  const lines = children.map((node) => {
    if (node.type === 'code') return '';
    if (node.type === 'heading') return `\n${plainText(node)}\n`;
    if (node.type !== 'list') return `  ${plainText(node)}\n`;
    return node.children.map((item) => `    ${plainText(item)}\n`).join('');
  });
  return lines.join('').replace(/^\n/, '');
}

function text(value: string): PhrasingContent {
  return { type: 'text', value };
}

function paragraph(children: PhrasingContent[]): Paragraph {
  return { type: 'paragraph', children };
}

function list(items: readonly PhrasingContent[][]): List {
  return {
    type: 'list',
    ordered: false,
    spread: false,
    children: items.map((item) => ({
      type: 'listItem',
      spread: false,
      children: [paragraph(item)],
    })),
  };
}
