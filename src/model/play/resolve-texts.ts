import type { PhrasingContent, RootContent } from 'mdast';
import { type Place, pointBehind } from '../../diagnostics/index.ts';
import { type DirectiveNode, parseArrow, parseList } from '../../read/index.ts';
import { placeOfNode } from '../place-of-node.ts';
import type { Arrow, Statement } from '../types.ts';
import { walkText } from '../walk-text.ts';
import { findMovesOfText } from './find-moves-of-text.ts';
import { lastOf } from './find-name.ts';
import { playBlock } from './play-block.ts';
import { reportIn } from './report.ts';
import {
  type BlockInWork,
  type ChapterInWork,
  type CourseInWork,
  type NodeInWork,
  type ShownNode,
  shownIn,
  textsOf,
  treesOf,
} from './work.ts';

/** What a text speaks of. Nodes in the lines of an exercise have no address, so there is only a `node`. */
type SpeaksOf =
  | { readonly shown: ShownNode | undefined }
  | { readonly node: NodeInWork | undefined };

/** Finds the position that each directive of a chapter speaks of, and records what it says there. */
export function resolveTexts(chapter: ChapterInWork, course: CourseInWork): void {
  const { syntax } = chapter;
  let shown: ShownNode | undefined;
  let last = -1;
  walkText(syntax.body.children, (node) => {
    if (node.type === 'courseBlock') {
      last = node.block;
      const block = chapter.blocks[node.block];
      if (!block) return;
      playBlock(block, course);
      shown = block.shows ?? shown;
      resolveInBlock(block, course);
    } else if (node.type === 'proseMoves') {
      findMovesOfText(node, { chapter, last }, course);
      shown = lastOf(chapter, node.id, last) ?? shown;
    } else if (node.type === 'courseDirective') {
      const place = placeOfNode(node, syntax.file);
      if (shown || node.name === 'allow') applyDirective(node, { shown }, place, chapter, course);
      else {
        reportIn(chapter)(
          place,
          `\`:${node.name}[…]\` speaks of the last move shown, but this chapter shows no move before it.`,
          'Put it behind a block of moves, or into a comment of one.',
        );
      }
    }
  });
}

/** Does the same for the comments, captions and questions of a block. */
function resolveInBlock(block: BlockInWork, course: CourseInWork): void {
  const { chapter, index } = block;
  const resolveText = (
    content: readonly (RootContent | PhrasingContent)[],
    speaksOf: SpeaksOf,
    own?: number,
  ) =>
    walkText(content, (inner) => {
      if (inner.type === 'courseDirective') {
        applyDirective(inner, speaksOf, placeOfNode(inner, chapter.syntax.file), chapter, course);
      } else if (inner.type === 'proseMoves') {
        findMovesOfText(inner, { chapter, last: index, own }, course);
      }
    });
  for (const tree of treesOf(block)) {
    const isOwn = tree === block.tree;
    for (const { node, content } of tree.syntax.comments) {
      if (isOwn) resolveText(content, { shown: shownIn(block, node) }, node);
      else resolveText(content, { node: tree.nodes[node] });
    }
  }
  if (block.syntax.kind === 'pattern') resolveInPattern(block, course);
  else for (const text of textsOf(block.syntax)) resolveText(text, { shown: block.shows });
}

/** A pattern stands for many positions or none, so its text can speak of no single one. */
function resolveInPattern({ syntax, chapter, index }: BlockInWork, course: CourseInWork): void {
  for (const text of textsOf(syntax)) {
    walkText(text, (inner) => {
      if (inner.type === 'proseMoves') {
        findMovesOfText(inner, { chapter, last: index }, course);
      } else if (inner.type === 'courseDirective' && !ofNoPosition.has(inner.name)) {
        reportIn(chapter)(
          placeOfNode(inner, chapter.syntax.file),
          `\`:${inner.name}[…]\` speaks of a position, and a pattern shows none.`,
          inner.name === 'claim'
            ? 'List it under `claim`: it is verified wherever the pattern stands.'
            : 'Put it behind a move.',
        );
      }
    });
  }
}

/** Directives that need no position. */
const ofNoPosition: ReadonlySet<string> = new Set(['judge', 'todo', 'allow']);

/** Records what a directive says at the node that it speaks of. */
function applyDirective(
  directive: DirectiveNode,
  of: SpeaksOf,
  place: Place,
  chapter: ChapterInWork,
  course: CourseInWork,
): void {
  const { name, argument, id } = directive;
  // These concern the check and the author, not a position.
  if (name === 'allow' || name === 'todo') return;
  const shown = 'shown' in of ? of.shown : undefined;
  const node = 'node' in of ? of.node : undefined;
  if (!shown && !node) return;
  if (shown) chapter.spoken.directives[id] = shown.ref;
  const said = saidBy(directive, place);
  if (name === 'here') {
    if (!shown) {
      reportIn(chapter)(
        place,
        'A position of an exercise cannot be named: it would give the answer away.',
        'Name it in a `moves` block.',
      );
      return;
    }
    chapter.asked.add(argument);
    const site = course.names.get(argument);
    if (!site || 'given' in site || site.directive !== directive) return;
    course.found.set(argument, shown);
  }
  const own =
    node ??
    (shown && !('given' in shown) && shown.block.chapter === chapter ? shown.node : undefined);
  if (own) {
    if (said.label !== undefined) own.labels.push(said.label);
    own.marks.push(...said.marks);
    own.arrows.push(...said.arrows);
    if (said.statement) own.statements.push(said.statement);
  } else if (shown) chapter.elsewhere.push({ ref: shown.ref, ...said });
}

function saidBy(directive: DirectiveNode, place: Place) {
  const { name, argument } = directive;
  const label = name === 'here' ? { label: argument } : {};
  const marks = name === 'mark' ? parseList(argument) : [];
  const arrows =
    name === 'plan' || name === 'threat' || name === 'guard'
      ? arrowsOf(directive, name, place)
      : [];
  return { ...label, marks, arrows, ...statement(name, argument, place) } as {
    readonly label?: string;
    readonly marks: ReturnType<typeof parseList>;
    readonly arrows: typeof arrows;
    readonly statement?: Statement;
  };
}

function arrowsOf(
  { argument, argumentRange: { start, end } }: DirectiveNode,
  meaning: Arrow['meaning'],
  { file }: Place,
): Arrow[] {
  // Over two lines, or with wide gaps, the argument differs from the file.
  const asWritten = end.line === start.line && end.offset - start.offset === argument.length;
  let next = 0;
  return parseList(argument).map((text) => {
    const at = argument.indexOf(text, next);
    next = at + text.length;
    const range = asWritten
      ? { start: pointBehind(start, at), end: pointBehind(start, next) }
      : { start, end };
    return { meaning, ...parseArrow(text), place: { file, ...range } };
  });
}

function statement(name: DirectiveNode['name'], argument: string, place: Place) {
  switch (name) {
    case 'same':
    case 'later':
      return { statement: { name, argument, place, label: { name: argument, place } } };
    case 'claim':
    case 'end':
    case 'option':
    case 'learn':
      return { statement: { name, argument, place } };
    default:
      return {};
  }
}
