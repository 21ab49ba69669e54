import {
  fullMoveNumber,
  isMoveFault,
  legalMoves,
  numberedSan,
  numberSign,
  type Position,
  playMove,
  sideToMove,
} from '../chess/index.ts';
import { type EngineFact, type EngineFacts, inPawns, type Score } from '../facts/index.ts';
import {
  blockAt,
  type Course,
  type GraphPosition,
  type MoveNode,
  type NodeRef,
  pathTo,
  positionsBefore,
  taughtInCourse,
} from '../model/index.ts';

/** A reply that a course lacks, and what speaks for writing it: at least one of `known`, `engine` and `games`. */
export interface Gap {
  /** `Position.key` before the reply. */
  readonly position: string;
  /** The moves that lead there, as the course plays them where it is to be written. */
  readonly path: readonly MoveNode[];
  /** Canonical SAN. */
  readonly san: string;
  /** `9.Nb5`. */
  readonly name: string;
  readonly place: WritingPlace;
  /** The position that it leads to stands in the course: its first place. */
  readonly known?: { readonly file: string; readonly line: number };
  readonly engine?: EngineVoice;
  /** How many games played it, if it is given in more than too few. */
  readonly games?: number;
}

/** A move of the course, behind which a variation is to be written. */
export interface WritingPlace {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** `9.Bg5`; empty for the start of a block. */
  readonly behind: string;
}

/** What an engine says of a reply. */
export interface EngineVoice {
  readonly engine: string;
  readonly depth: number;
  /** Its place among the engine's moves, from 1. */
  readonly rank: number;
  readonly score: Score;
  /** What it is worse than the engine's best move, in pawns. */
  readonly loss: number;
}

export interface GapOptions {
  readonly facts: EngineFacts;
  /** What a reply may be worse than the engine's best and still be among its best, in pawns. */
  readonly margin: number;
  /** How often games left the course by a move: by the position's key and the move's SAN. */
  readonly games: (key: string, san: string) => number;
  /** The moves by which games left a position. */
  readonly played: (key: string) => readonly string[];
  /** In so many games at least a reply must have been played. */
  readonly least: number;
}

/**
 * The replies that a course lacks, the most wanted first: those for which more reasons speak, then by games, then
 * those that an engine counts nearer to its best, then in the order of the course.
 *
 * A place of a reply is a position that the course teaches, with the other side to move; with a course for both
 * sides any. What comes before the position that the setting `begins` names is left out, and where the course has no
 * reply at all it has ended on purpose: there only a reply that leads back into the course is one.
 */
export function findGaps(course: Course, options: GapOptions): Gap[] {
  const before = positionsBefore(course);
  const taught = taughtInCourse(course);
  const gaps = Object.values(course.graph).flatMap((here) => {
    if (before.has(here.key) || sideToMove(here) === course.settings.side) return [];
    const at = here.at.filter((ref) => isTaught(course, ref, taught));
    return at.length === 0 ? [] : gapsAt(course, { ...here, at }, options);
  });
  return gaps
    .map((gap, index) => ({ gap, index }))
    .sort(byRank)
    .map(({ gap }) => gap);
}

interface Ranked {
  readonly gap: Gap;
  readonly index: number;
}

function byRank(a: Ranked, b: Ranked): number {
  return (
    reasonsOf(b.gap) - reasonsOf(a.gap) ||
    (b.gap.games ?? 0) - (a.gap.games ?? 0) ||
    (a.gap.engine?.loss ?? Number.MAX_VALUE) - (b.gap.engine?.loss ?? Number.MAX_VALUE) ||
    a.index - b.index
  );
}

function reasonsOf({ known, engine, games }: Gap): number {
  return [known, engine, games].filter((reason) => reason !== undefined).length;
}

function isTaught(course: Course, ref: NodeRef, taught: ReadonlySet<MoveNode>): boolean {
  const node = blockAt(course, ref)?.nodes[ref.node];
  return node !== undefined && taught.has(node);
}

function gapsAt(course: Course, here: GraphPosition, options: GapOptions): Gap[] {
  const [ref] = here.at;
  const position = ref && blockAt(course, ref)?.nodes[ref.node]?.position;
  if (position === undefined) return [];
  const covered = new Set(here.moves.map(({ san }) => san));
  const ends = covered.size === 0;
  const fact = options.facts.at(here.key);
  const wanted = legalMoves(position).flatMap((san) => {
    if (covered.has(san)) return [];
    const known = knownAfter(course, position, san);
    const engine = ends ? undefined : voiceOf(fact, san, options.margin);
    const count =
      ends || !options.played(here.key).includes(san) ? 0 : options.games(here.key, san);
    const games = count >= options.least ? count : undefined;
    if (known === undefined && engine === undefined && games === undefined) return [];
    return [{ san, ...(known && { known }), ...(engine && { engine }), ...(games && { games }) }];
  });
  if (wanted.length === 0) return [];
  const { place, path } = writingPlace(course, here);
  const number = fullMoveNumber(position);
  const sign = numberSign({ number, color: sideToMove(here) });
  return wanted.map((reply) => ({
    position: here.key,
    path,
    name: sign + reply.san,
    place,
    ...reply,
  }));
}

function knownAfter(course: Course, here: Position, san: string): Gap['known'] {
  const played = playMove(here, san);
  const there = isMoveFault(played) ? undefined : course.graph[played.after.key];
  const [ref] = there?.at ?? [];
  const block = ref && blockAt(course, ref);
  const place = (ref && block?.nodes[ref.node]?.written?.place) ?? block?.place;
  return place && { file: place.file, line: place.start.line };
}

function voiceOf(
  fact: EngineFact | undefined,
  san: string,
  margin: number,
): EngineVoice | undefined {
  const at = fact?.lines.findIndex(({ moves }) => moves[0] === san) ?? -1;
  const [best] = fact?.lines ?? [];
  const line = fact?.lines[at];
  if (!fact || !best || !line) return undefined;
  const loss = Math.round((inPawns(best.score) - inPawns(line.score)) * 100) / 100;
  if (loss > margin) return undefined;
  return { engine: fact.engine, depth: fact.depth, rank: at + 1, score: line.score, loss };
}

/** Behind the last of the replies where most of them stand; where there is none, behind the move that leads there. */
function writingPlace(course: Course, { at }: GraphPosition) {
  const places = at.flatMap((ref) => {
    const block = blockAt(course, ref);
    const node = block?.nodes[ref.node];
    return block && node ? [{ ref, block, node }] : [];
  });
  const [first, ...others] = places;
  if (first === undefined) throw new Error('a position of the graph stands nowhere');
  const { ref, block, node } = others.reduce(
    (a, b) => (b.node.children.length > a.node.children.length ? b : a),
    first,
  );
  const last = block.nodes[node.children.at(-1) ?? ref.node];
  const { file, start } = last?.written?.place ?? block.place;
  const behind = last?.move ? numberedSan(last.move) : '';
  return {
    place: { file, line: start.line, column: start.column, behind },
    path: pathTo(course, ref),
  };
}
