import {
  nameMoves,
  type PlayedMove,
  type Position,
  playSan,
  sideToMove,
} from '../../chess/index.ts';
import { adviceOf, type Course, isBadSign, nodeAt, positionsBefore } from '../../model/index.ts';
import type { DraftComment, DraftGame, DraftLine, DraftMove } from '../types.ts';
import type { AgainstAdvice, NewBranch, NewNode, PastEnd, SaidOnly, SourceGame } from './types.ts';
import { hasWords, type Words, wordsOf } from './words-of.ts';

/** What is found in the games of a file, each thing once. */
export class Findings {
  known = 0;
  /** By the position and the first move. */
  readonly branches = new Map<string, NewBranch>();
  readonly against = new Map<string, AgainstAdvice>();
  readonly past = new Map<string, PastEnd>();
  readonly said = new Map<string, SaidOnly>();
  /** The new node of each position that only new lines lead to. */
  readonly fresh = new Map<string, NewNode>();
}

/**
 * Where a line is: in what the course has, on a new line, before or beside the course (`left`), or behind a move that
 * is reported and not written (`closed`), which it stays to its end, so that no move is both reported and written.
 */
type Ground = 'known' | 'left' | 'closed' | NewNode;

interface Walk {
  readonly line: DraftLine;
  readonly start: Position;
  readonly way: readonly DraftMove[];
  readonly ground: Ground;
}

export interface LaidGame {
  readonly game: DraftGame;
  readonly start: Position;
  readonly source: SourceGame;
  /** Whether lines go on where the course ends on purpose. */
  readonly pastEnds: boolean;
}

/**
 * Lays the lines of a game against a course. A move that leads to a position of the course is known, by whatever order
 * of moves. One that does not begins a new branch, unless it is the course's side's and the course advises
 * another or ends there on purpose: then it is reported, with what follows it, and nothing of it is new. What the game
 * itself calls bad is no rival of the advice.
 * @returns whether the game meets the course's subject at all.
 */
export function layLines(
  course: Course,
  { game, start, source, pastEnds }: LaidGame,
  found: Findings,
): boolean {
  const before = positionsBefore(course);
  const first = course.graph[start.key] === undefined ? 'left' : 'known';
  const open: Walk[] = [{ line: game.line, start, way: [], ground: first }];
  let meets = false;
  for (let walk = open.pop(); walk; walk = open.pop()) {
    const { line } = walk;
    let { start: position, ground, way } = walk;
    const inner: Walk[] = [];
    for (const [index, move] of line.moves.entries()) {
      const played = playSan(position, move.san);
      if (played === undefined) break;
      const isMet = ground === 'known' && !before.has(position.key);
      meets ||= isMet;
      const at = { course, found, source, game, pastEnds, before, position, played, move, way };
      const next = step(
        {
          ...at,
          rest: line.moves.slice(index + 1),
          lead: index === 0 ? line.before : [],
        },
        ground,
      );
      for (const item of move.after) {
        if (item.type === 'variation')
          inner.push({ line: item.line, start: position, way, ground });
      }
      ground = next;
      way = [...way, move];
      position = played.after;
    }
    // The line comes first, so that its moves are the main ones; then its variations, in their order.
    open.push(...inner.reverse());
  }
  return meets;
}

interface LaidMove {
  readonly course: Course;
  readonly found: Findings;
  readonly source: SourceGame;
  readonly game: DraftGame;
  readonly before: ReadonlySet<string>;
  readonly position: Position;
  readonly played: PlayedMove;
  readonly move: DraftMove;
  readonly way: readonly DraftMove[];
  readonly rest: readonly DraftMove[];
  /** Comments before the first move of its line, if it is that. */
  readonly lead: readonly DraftComment[];
  readonly pastEnds: boolean;
}

function step(at: LaidMove, ground: Ground): Ground {
  const { course, found, position, played, pastEnds } = at;
  if (ground === 'closed') {
    say(at);
    return 'closed';
  }
  const to = course.graph[played.after.key];
  const has = course.graph[position.key]?.moves.some((move) => move.to === played.after.key);
  if (typeof ground === 'string' && (has || (ground === 'left' && to !== undefined))) {
    if (has) found.known += 1;
    say(at);
    return 'known';
  }
  if (ground === 'left' || (ground === 'known' && at.before.has(position.key))) {
    say(at);
    return 'left';
  }
  if (ground !== 'known') return childOf(at, ground.children);
  if (disagree(at) || (!pastEnds && goesPastEnd(at))) {
    say(at);
    return 'closed';
  }
  const name = `${position.key} ${played.san}`;
  const known = found.branches.get(name);
  const branch = see(found.branches, at, played.san, (where) => ({ ...where, root: newNode(at) }));
  return enter(at, branch.root, known !== undefined);
}

/** Reports a new move that rivals what the course advises; what the game calls bad is no rival of it. */
function disagree(at: LaidMove): boolean {
  const { course, found, position, played, move, rest } = at;
  const advised = [...new Set((adviceOf(course).get(position.key) ?? []).map(({ san }) => san))];
  const isBad = move.glyphs.some(({ nag }) => isBadSign(nag));
  if (!isOwn(at) || advised.length === 0 || isBad) return false;
  const more = { san: played.san, rest: nameMoves(rest), advised };
  see(found.against, at, played.san, (where) => ({ ...where, ...more }));
  return true;
}

/** Reports a move at a position where the course has none and says `:end`. */
function goesPastEnd(at: LaidMove): boolean {
  const { course, found, position, played, rest } = at;
  const places = course.graph[position.key];
  if (places === undefined || places.moves.length > 0) return false;
  const ends = places.at.some((ref) =>
    nodeAt(course, ref)?.statements.some(({ name }) => name === 'end'),
  );
  if (!ends) return false;
  const more = { san: played.san, rest: nameMoves(rest) };
  see(found.past, at, played.san, (where) => ({ ...where, ...more }));
  return true;
}

function isOwn({ course, position }: LaidMove): boolean {
  return course.settings.side === sideToMove(position);
}

/** The node of a move among those that follow a new node. */
function childOf(at: LaidMove, children: NewNode[]): Ground {
  const known = children.find(({ san }) => san === at.played.san);
  const node = known ?? newNode(at);
  if (!known) children.push(node);
  return enter(at, node, known !== undefined);
}

function newNode(at: LaidMove): NewNode {
  return { san: at.played.san, isOwn: isOwn(at), glyphs: [], comments: [], children: [] };
}

/** Takes what the game says of a new move, and tells where its line goes on. */
function enter(at: LaidMove, node: NewNode, isThere: boolean): Ground {
  const { move, course, found, played } = at;
  for (const { nag } of move.glyphs) if (!node.glyphs.includes(nag)) node.glyphs.push(nag);
  for (const words of wordsAt(at)) {
    if (!node.comments.some((each) => JSON.stringify(each) === JSON.stringify(words.written))) {
      node.comments.push(words.written);
    }
  }
  const { key } = played.after;
  if (course.graph[key] !== undefined) {
    node.meets = key;
    return 'known';
  }
  const other = found.fresh.get(key);
  if (other !== undefined && other !== node) {
    // What follows stands where the position was first.
    if (!isThere) node.meets = key;
    return other;
  }
  found.fresh.set(key, node);
  return node;
}

/** Comments behind a move, and those before the line that it begins. */
function wordsAt({ game, move, lead }: LaidMove): Words[] {
  const comments = move.after.filter((item) => item.type === 'comment');
  return [...lead, ...comments].flatMap((comment) => wordsOf(game, comment));
}

/** Words that are not written, since the move is known or left. */
function say(at: LaidMove): void {
  const { course, found, played, position } = at;
  for (const { text } of wordsAt(at)) {
    if ([played.after, position].some(({ key }) => hasWords(course, key, text))) continue;
    const here = { ...at, position: played.after, way: [...at.way, at.move] };
    see(found.said, here, text, (where) => ({ ...where, text }));
  }
}

type AtPosition = Pick<NewBranch, 'position' | 'way' | 'games'>;

/** Adds a game to what was found at a position, once. */
function see<Each extends AtPosition>(
  found: Map<string, Each>,
  { position, way, source }: Pick<LaidMove, 'position' | 'way' | 'source'>,
  name: string,
  make: (at: AtPosition) => Each,
): Each {
  const key = `${position.key} ${name}`;
  const each = found.get(key) ?? make({ position, way: nameMoves(way), games: [] });
  found.set(key, each);
  if (each.games.at(-1)?.number !== source.number) each.games.push(source);
  return each;
}
