import { initialPosition, type Position } from '../../chess/index.ts';
import type { PlacedText, TreeSyntax } from '../../read/index.ts';
import { castledBefore } from '../castled.ts';
import { findName } from './find-name.ts';
import { playTree } from './play-tree.ts';
import { reportIn } from './report.ts';
import { positionOfFen, startOfTags } from './start-position.ts';
import {
  type BlockInWork,
  type CourseInWork,
  endOfMainLine,
  hasBefore,
  positionOf,
  type ShownNode,
  shownIn,
} from './work.ts';

/**
 * Plays a block, after those that it starts from.
 * @returns false if it is being played already, so that it depends on itself.
 */
export function playBlock(block: BlockInWork, course: CourseInWork): boolean {
  if (block.state === 'open') return false;
  if (block.state === 'played') return true;
  // Chains of blocks can be long, so open them first and play from the far end, without recursion.
  const way = openWay(block, course);
  course.depth++;
  for (let next = way.pop(); next; next = way.pop()) playOne(next, course);
  course.depth--;
  return true;
}

/** Opens a block and those that it starts from, one after the other, as long as comments give their names. */
function openWay(block: BlockInWork, { names, open }: CourseInWork): BlockInWork[] {
  const way: BlockInWork[] = [];
  for (let last: BlockInWork | undefined = block; last?.state === 'new'; ) {
    last.state = 'open';
    way.push(last);
    open.push(last);
    const name = nameOf(last);
    const site = name && names.get(name.text);
    last = site && 'at' in site ? site.at?.block : undefined;
  }
  return way;
}

function playOne(block: BlockInWork, course: CourseInWork): void {
  const { syntax } = block;
  const start = startOf(block, course);
  playTree(block.tree.nodes, start?.position);
  block.castled = start?.castled ?? [];
  const isStill = syntax.kind === 'diagram' || syntax.kind === 'exercise';
  const still = isStill && !hasBefore(syntax) ? syntax.at : undefined;
  const named = still && course.found.get(still.text);
  if (named) block.shows = { ...named, by: still.text };
  else if (still) block.shows = undefined;
  else if (syntax.kind !== 'pattern') {
    block.shows = shownIn(block, endOfMainLine(block.tree.nodes));
  }
  const shown = positionOf(block.shows);
  for (const { nodes } of [...block.lines.answer, ...block.lines.also, ...block.lines.wrong]) {
    playTree(nodes, shown);
  }
  course.open.pop();
  block.state = 'played';
}

interface Start {
  readonly position: Position | undefined;
  readonly castled: BlockInWork['castled'];
}

/** The position that a block starts from; undefined where there is none, which has a finding of its own. */
function startOf(block: BlockInWork, course: CourseInWork): Start | undefined {
  const { syntax, chapter } = block;
  const report = reportIn(chapter);
  const plain = (position: Position | undefined) => ({ position, castled: [] });
  if (syntax.kind === 'pattern') return undefined;
  if (syntax.kind === 'game') return plain(startOfTags(syntax.moves, report));
  if (syntax.fen) return plain(positionOfFen(syntax.fen, report));
  const name = nameOf(block);
  if (name) {
    const shown = startOfName(name, block, course);
    return shown && { position: positionOf(shown), castled: castledTo(shown) };
  }
  if (syntax.kind === 'moves') {
    if (syntax.startInDoubt && !beginsAtMoveOne(syntax.moves)) return undefined;
    return plain(startOfTags(syntax.moves, report));
  }
  return plain(syntax.after ? initialPosition : undefined);
}

/** The name that a block starts from. */
export function nameOf({ syntax }: BlockInWork): PlacedText | undefined {
  if (syntax.kind === 'moves') return syntax.fen ? undefined : syntax.from;
  if (syntax.kind === 'diagram' || syntax.kind === 'exercise') return syntax.at;
  return undefined;
}

/** Whether the first move is numbered as the first of a game, or not numbered. */
function beginsAtMoveOne({ nodes }: TreeSyntax): boolean {
  const number = nodes[1]?.written?.number;
  return number === undefined || (number.value === 1 && number.dots < 2);
}

function startOfName(
  name: PlacedText,
  block: BlockInWork,
  course: CourseInWork,
): ShownNode | undefined {
  if (course.depth > course.limits.chain) {
    for (const { chapter } of course.open) chapter.isCircular = true;
    reportIn(block.chapter)(
      name.place,
      `More than ${course.limits.chain} blocks start from one another here, each before the one it starts from.`,
      'Put each block behind the one that it starts from.',
    );
    return undefined;
  }
  const shown = findName(name.text, block.chapter, course);
  // Such a name has a finding of its own.
  if (shown === undefined) return undefined;
  if ('circle' in shown) reportCircle(shown.circle, course);
  else if ('given' in shown || playBlock(shown.block, course)) return shown;
  else reportCircle(shown.block, course);
  return undefined;
}

/**
 * Reports the block of a circle that is first in the course. Where the circle was entered depends on what was kept,
 * and must not matter.
 */
function reportCircle(entry: BlockInWork, { open }: CourseInWork): void {
  const circle = open.slice(open.indexOf(entry));
  for (const { chapter } of circle) chapter.isCircular = true;
  const [first] = circle
    .filter((block) => nameOf(block) !== undefined)
    .sort((a, b) => a.chapter.order - b.chapter.order || a.index - b.index);
  const name = first && nameOf(first);
  if (!name) return;
  reportIn(first.chapter)(
    name.place,
    `This block starts from \`${name.text}\`, but the way to that position leads through this block.`,
    'Name the position in a block that stands on its own, or start this block otherwise.',
  );
}

export function castledTo(shown: ShownNode): BlockInWork['castled'] {
  if ('given' in shown) return shown.given.castled;
  const { block, node } = shown;
  return castledBefore({ nodes: block.tree.nodes, castled: block.castled }, node.index);
}
