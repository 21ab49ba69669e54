import { type Color, writePlacement } from '../../chess/index.ts';
import type { Place } from '../../diagnostics/index.ts';
import {
  type BlockSyntax,
  type DiagramSyntax,
  type ExerciseSyntax,
  type GameSyntax,
  type PatternSyntax,
  type PlacedText,
  parseArrow,
  type TreeSyntax,
} from '../../read/index.ts';
import { mainLine } from '../main-line.ts';
import type { Block, LabelUse, Statement } from '../types.ts';
import {
  type BlockInWork,
  endOfMainLine,
  hasBefore,
  type NodeInWork,
  positionOf,
  type ShownNode,
} from './work.ts';

/** What a block needs from outside. */
export interface BlockSurroundings {
  /** The default for the side at the bottom of the board. */
  readonly view: Color;
  readonly keyOfName: (name: string) => string | undefined;
  readonly report: (place: Place, message: string, hint: string) => void;
}

/**
 * Turns a played block into one of the finished model. `assembleCourse` adds what needs the graph: exits of games and
 * matches of patterns.
 */
export function finishBlock(block: BlockInWork, around: BlockSurroundings): Block {
  const { syntax, tree } = block;
  const fen = fenPlace(syntax);
  const base = {
    key: syntax.key,
    chapter: block.chapter.syntax.file,
    place: syntax.place,
    view: syntax.view ?? around.view,
    castled: block.castled,
    ...(fen && { fen }),
  };
  switch (syntax.kind) {
    case 'moves':
      return {
        ...base,
        kind: 'moves',
        nodes: tree.nodes,
        ...(syntax.learn === undefined ? {} : { learn: syntax.learn }),
        ...(syntax.from ? { from: labelUse(syntax.from) } : {}),
        ...tagsAndResult(syntax.moves),
      };
    case 'diagram':
      return { ...base, kind: 'diagram', ...position(syntax, block), ...drawn(syntax, block) };
    case 'exercise':
      return {
        ...base,
        kind: 'exercise',
        ...position(syntax, block),
        ...question(syntax, block),
      };
    case 'game':
      return { ...base, kind: 'game', ...game(syntax, block, around) };
    case 'pattern':
      return { ...base, kind: 'pattern', nodes: [], ...pattern(syntax) };
  }
}

/** Where an author typed a FEN; games have their own. */
function fenPlace(syntax: BlockSyntax): Place | undefined {
  if (syntax.kind === 'game' || syntax.kind === 'pattern') return undefined;
  if (syntax.fen) return syntax.fen.place;
  if (syntax.kind !== 'moves' || syntax.from) return undefined;
  return syntax.moves.tags.find(({ name }) => name === 'FEN')?.place;
}

function position(syntax: DiagramSyntax | ExerciseSyntax, { tree, shows }: BlockInWork) {
  const position = positionOf(shows);
  const move = shows && moveTo(shows);
  return {
    nodes: syntax.at && !hasBefore(syntax) ? [] : tree.nodes,
    ...(position ? { position } : {}),
    ...(move ? { lastMove: { from: move.from, to: move.to } } : {}),
    ...(shows ? { shows: shows.ref } : {}),
    ...(syntax.at ? { at: labelUse(syntax.at) } : {}),
  };
}

/** The move that led to a shown node. */
export function moveTo(shown: ShownNode) {
  return 'given' in shown ? shown.given.move : shown.node.move;
}

function drawn(syntax: DiagramSyntax, { tree, shows }: BlockInWork) {
  // What text behind a diagram says of its board is drawn on it too.
  const said = syntax.at || !shows ? undefined : tree.nodes[shows.ref.node];
  return {
    caption: syntax.caption,
    ...(syntax.alt === undefined ? {} : { alt: syntax.alt }),
    marks: [...syntax.marks.map(({ text }) => text), ...(said?.marks ?? [])],
    arrows: [
      ...syntax.arrows.map(({ text, meaning, place }) => ({
        meaning,
        ...parseArrow(text),
        place,
      })),
      ...(said?.arrows ?? []),
    ],
    claims: syntax.claims.map(claim),
  };
}

function question(syntax: ExerciseSyntax, { lines, tree }: BlockInWork) {
  const before = syntax.before && tree.nodes[endOfMainLine(tree.nodes)];
  return {
    ask: syntax.ask,
    ...(before && { before }),
    hints: syntax.hints,
    answer: lines.answer.map(({ nodes }) => nodes),
    also: lines.also.map(({ nodes }) => nodes),
    wrong: lines.wrong.map(({ nodes }) => nodes),
  };
}

function game(syntax: GameSyntax, block: BlockInWork, around: BlockSurroundings) {
  const { nodes } = block.tree;
  const unknownLimits: LabelUse[] = [];
  const limit = (text: PlacedText | undefined, which: 'first' | 'last', otherwise: number) => {
    if (!text) return otherwise;
    const found = findLimit(text.text, which, nodes, around.keyOfName);
    if (found === undefined) unknownLimits.push(labelUse(text));
    return found ?? otherwise;
  };
  const first = limit(syntax.from, 'first', 0);
  const last = limit(syntax.to, 'last', endOfMainLine(nodes));
  if (last <= first && syntax.to && unknownLimits.length === 0) {
    const from = syntax.from ? `\`${syntax.from.text}\`` : 'its start';
    around.report(
      syntax.to.place,
      `The game has no move from ${from} to \`${syntax.to.text}\`.`,
      'Let the second of the two come later in the game than the first.',
    );
  }
  return {
    nodes,
    file: syntax.file,
    first,
    last: Math.max(first, last),
    limits: [syntax.from, syntax.to].flatMap((text) => (text ? [labelUse(text)] : [])),
    unknownLimits,
    ...tagsAndResult(syntax.moves),
  };
}

/** Resolves `from` or `to`: a move number (`from` before White's move, `to` behind Black's) or a named position. */
function findLimit(
  text: string,
  which: 'first' | 'last',
  nodes: readonly NodeInWork[],
  keyOfName: (name: string) => string | undefined,
): number | undefined {
  const number = /^\d+$/.test(text) ? Number(text) : undefined;
  const key = number === undefined ? keyOfName(text) : undefined;
  const line = mainLine(nodes);
  if (number === undefined) {
    return key === undefined
      ? undefined
      : line.find(({ position }) => position?.key === key)?.index;
  }
  const isMove = ({ move }: NodeInWork) => move?.number === number;
  if (which === 'last') return line.findLast(isMove)?.index;
  // The position before the move; the start has no move, so there always is one.
  return line[line.findIndex(isMove) - 1]?.index;
}

function tagsAndResult(moves: TreeSyntax | undefined) {
  const tags = moves?.tags.map(({ name, value }) => [name, value] as const) ?? [];
  return {
    tags: Object.fromEntries(tags) as Record<string, string>,
    tagPlaces: Object.fromEntries(
      moves?.tags.map(({ name, place }) => [name, place] as const) ?? [],
    ) as Record<string, Place>,
    ...(moves?.result === undefined ? {} : { result: moves.result }),
    ...(moves?.unread === undefined ? {} : { unread: true as const }),
  };
}

function pattern(syntax: PatternSyntax) {
  const pieces = syntax.pieces.map(({ color, kind, square }) => ({ color, kind, square }));
  // Of two pieces on one square, which is reported already, the first counts.
  const board = new Map(pieces.toReversed().map(({ square, ...piece }) => [square, piece]));
  return {
    title: syntax.title,
    pieces,
    empty: syntax.empty.map(({ text }) => text),
    at: syntax.at.map(labelUse),
    reversed: syntax.reversed,
    advice: syntax.advice.map(({ text, place }) => ({ san: text, place })),
    claims: syntax.claims.map(claim),
    text: syntax.text,
    except: syntax.except.map(labelUse),
    placement: writePlacement(board),
    matches: [],
  };
}

function claim({ text, place }: PlacedText): Statement {
  return { name: 'claim', argument: text, place };
}

function labelUse({ text, place }: PlacedText): LabelUse {
  return { name: text, place };
}
