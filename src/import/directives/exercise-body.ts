import {
  type CommentPart,
  makeMovetext,
  partsOfComment,
  unpackText,
} from '../../movetext/index.ts';
import type { DraftGame, DraftLine, DraftVariation } from '../types.ts';
import { commentOf, unpackedLine } from './unpacked-line.ts';

type ListName = 'answer' | 'also' | 'wrong';

/** The content of an exercise: its main line is the answer, marked variations are the other lines. */
export function exerciseBody({ line }: DraftGame, before: readonly CommentPart[]): string {
  const texts = (wanted: 'ask' | 'hint') =>
    before.filter(({ name }) => name === wanted).map(({ text }) => unpackText(text));
  const comments = before.filter(
    ({ name, text }) => name !== 'ask' && name !== 'hint' && text !== '',
  );
  const [first, ...rest] = line.moves;
  const lists: Record<ListName, string[]> = { answer: [], also: [], wrong: [] };
  const marked = new Map<DraftVariation, ListName>();
  for (const item of first?.after ?? []) {
    const name = item.type === 'variation' ? listOf(item.line) : undefined;
    if (item.type === 'variation' && name !== undefined) marked.set(item, name);
  }
  if (first) {
    const after = first.after.filter((item) => item.type === 'comment' || !marked.has(item));
    const main = { ...line, before: [], moves: [{ ...first, after }, ...rest] };
    lists.answer.push(lineText(main, comments));
  }
  for (const [{ line: inner }, name] of marked) {
    const parts = inner.before.flatMap(({ text }) => partsOfComment(text));
    lists[name].push(
      lineText(
        { ...inner, before: [] },
        parts.filter(({ text }) => text !== ''),
      ),
    );
  }
  return [
    `ask: ${scalar(texts('ask').join(' '))}`,
    ...Object.entries({ ...lists, hint: texts('hint') }).flatMap(([name, list]) => {
      const [only, ...more] = list;
      if (only === undefined) return [];
      if (more.length === 0 && name !== 'hint') return [`${name}: ${scalar(only)}`];
      return [`${name}:`, ...list.map((each) => `  - ${scalar(each)}`)];
    }),
  ].join('\n');
}

/** A text as YAML: as it is where nothing in it can mean anything there, else as JSON writes it, which is YAML too. */
function scalar(text: string): string {
  const isPlain = /^\p{L}[\p{L}\p{M}\p{N} .,;()…!?+='’–-]*$/u.test(text) && !text.endsWith(' ');
  const isMoves = /^\d+\.{1,3} ?[\p{L}\p{N} .()!?+=#$-]*$/u.test(text) && !/\s#|\s$/.test(text);
  const isWord = /^(?:true|false|null|yes|no|on|off|y|n)$/i.test(text);
  return (isPlain || isMoves) && !isWord ? text : JSON.stringify(text);
}

function listOf({ before: [first] }: DraftLine): ListName | undefined {
  const [part] = first ? partsOfComment(first.text) : [];
  const name = part?.name;
  return name === 'answer' || name === 'also' || name === 'wrong' ? name : undefined;
}

function lineText(line: DraftLine, before: readonly CommentPart[]): string {
  const [first] = line.moves;
  const plain = { ...unpackedLine(line, 'packed'), before: before.map(commentOf('packed')) };
  const options = first && { number: first.number, color: first.color };
  return makeMovetext(
    { tags: [], line: plain },
    { ...options, width: Number.MAX_SAFE_INTEGER, signs: true },
  ).trim();
}
