import {
  type CommentPart,
  makeMovetext,
  partsOfComment,
  unpackText,
} from '../../movetext/index.ts';
import type { DraftGame, DraftLine, DraftVariation } from '../types.ts';
import { yamlText } from '../yaml-text.ts';
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
    `ask: ${yamlText(texts('ask').join(' '))}`,
    ...Object.entries({ ...lists, hint: texts('hint') }).flatMap(([name, list]) => {
      const [only, ...more] = list;
      if (only === undefined) return [];
      if (more.length === 0 && name !== 'hint') return [`${name}: ${yamlText(only)}`];
      return [`${name}:`, ...list.map((each) => `  - ${yamlText(each)}`)];
    }),
  ].join('\n');
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
