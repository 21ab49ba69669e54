import { type Hover, MarkupKind, type Position } from 'vscode-languageserver-protocol';
import { claimKinds, rules } from '../../check/index.ts';
import type { Place } from '../../diagnostics/index.ts';
import { blockAt, type Course, movesSpokenOf, type NodeRef, standsAt } from '../../model/index.ts';
import type { Asked } from '../asked.ts';
import { moveInText } from '../move-in-text.ts';
import { nameAt } from '../names.ts';
import { positionCard } from '../position-card.ts';
import { attributeWords, blockWords, directiveWords, settingWords } from '../words.ts';

/** What stands at a place: the board there, the course's advice, what a word of the language means. */
export function hover(asked: Asked, position: Position): Hover | null {
  const course = asked.course();
  if (!course) return null;
  const offset = asked.offsetOf(position);
  const found =
    named(asked, offset, course) ?? standing(asked, offset, course) ?? setting(asked, offset);
  if (!found) return null;
  const { start, end } = found;
  const formats = asked.session.capabilities.textDocument?.hover?.contentFormat;
  const takesMarkdown = formats === undefined || formats.includes(MarkupKind.Markdown);
  return {
    contents: takesMarkdown
      ? { kind: MarkupKind.Markdown, value: found.text }
      : { kind: MarkupKind.PlainText, value: withoutMarks(found.text) },
    range: asked.session.places.toRange(asked.open, start, end),
  };
}

interface Told {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

function told(text: string | undefined, { start, end }: Pick<Place, 'start' | 'end'>) {
  return text === undefined ? undefined : { text, start: start.offset, end: end.offset };
}

function named(asked: Asked, offset: number, course: Course): Told | undefined {
  const there = nameAt(course, asked.desk, asked.file, offset);
  const label = there && Object.hasOwn(course.labels, there.name) && course.labels[there.name];
  return label ? told(card(label.ref, asked, course), there.written) : undefined;
}

function standing(asked: Asked, offset: number, course: Course): Told | undefined {
  const chapter = asked.chapter();
  const here = chapter && standsAt(chapter, offset);
  if (!here) return undefined;
  switch (here.kind) {
    case 'move': {
      const { node, block, place } = here;
      if (here.ref) return told(card(here.ref, asked, course), place);
      const known = node.position && { position: node.position, node, view: block.view };
      return told(known && positionCard(known, asked, course), place);
    }
    case 'moves-in-text': {
      const start = here.place.start.offset;
      const at = moveInText(here.moves, asked.text.slice(start), offset - start);
      const ref = movesSpokenOf(chapter, here.moves)[at];
      return told(ref && card(ref, asked, course), here.place);
    }
    case 'link': {
      const label = course.labels[here.link.label];
      return told(label && card(label.ref, asked, course), here.place);
    }
    case 'directive': {
      const { name, argument } = here.directive;
      const kinds = claimKinds.filter((kind) =>
        argument.split(/\s+/).join(' ').includes(kind.name),
      );
      const rule = rules.find(({ id }) => name === 'allow' && argument.startsWith(`${id} `));
      const parts = [
        `**:${name}** ${directiveWords[name]}`,
        ...(name === 'claim'
          ? kinds.map((kind) => `**${kind.name}** ${kind.definition.trim()}`)
          : []),
        ...(rule ? [`**${rule.id}** ${rule.finds}`] : []),
        ...(here.of ? [card(here.of, asked, course) ?? ''] : []),
      ];
      return told(parts.filter(Boolean).join('\n\n'), here.place);
    }
    case 'block':
      return onOpening(asked, here.block.place, offset, here.block.kind);
  }
}

/** The line that opens a block: what its word means. */
function onOpening(asked: Asked, place: Place, offset: number, kind: string): Told | undefined {
  const start = place.start.offset;
  const line = asked.text.slice(start).split(/[\r\n]/, 1)[0] ?? '';
  if (offset > start + line.length) return undefined;
  const { word, at } = wordAt(line, offset - start);
  const words = word === kind ? blockWords[kind] : attributeWords[word];
  if (words === undefined) return undefined;
  return { text: `**${word}** ${words}`, start: start + at, end: start + at + word.length };
}

/** A setting in `course.yaml` or in front matter, or the id of a rule there. */
function setting(asked: Asked, offset: number): Told | undefined {
  const { text, file } = asked;
  const lineStart =
    Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
  const line = text.slice(lineStart).split(/[\r\n]/, 1)[0] ?? '';
  const [, indent = '', key = ''] = /^(\s*)([\w-]+):/.exec(line) ?? [];
  const start = lineStart + indent.length;
  if (key === '' || offset > start + key.length) return undefined;
  if (file !== 'course.yaml' && !isFrontMatter(text, offset)) return undefined;
  const rule = rules.find(({ id }) => id === key);
  const words = rule?.finds ?? settingWords[key];
  if (words === undefined) return undefined;
  return { text: `**${key}** ${words}`, start, end: start + key.length };
}

function isFrontMatter(text: string, offset: number): boolean {
  const front = /^---[ \t]*\r?\n[\s\S]*?^---/m.exec(text);
  return front?.index === 0 && offset < front[0].length;
}

function card(ref: NodeRef, asked: Asked, course: Course): string | undefined {
  const block = blockAt(course, ref);
  const node = block?.nodes[ref.node];
  if (!block || !node) return undefined;
  const { position } = node;
  return position
    ? positionCard({ position, node, ref, view: block.view }, asked, course)
    : node.fault && 'reason' in node.fault
      ? `\`${node.written?.san}\` cannot be played: ${node.fault.reason}.`
      : undefined;
}

function wordAt(line: string, at: number): { readonly word: string; readonly at: number } {
  for (const match of line.matchAll(/[\w-]+/g)) {
    if (match.index <= at && at <= match.index + match[0].length) {
      return { word: match[0], at: match.index };
    }
  }
  return { word: '', at };
}

/** For an editor that shows plain text: the marks of Markdown that we write taken out. */
function withoutMarks(text: string): string {
  return text
    .replace(/^```.*\n/gm, '')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/\*\*|`/g, '');
}
