import {
  isSquare,
  listMoves,
  type Position,
  passMove,
  readBoard,
  squares,
} from '../../chess/index.ts';
import { claimKinds } from './claim-kinds.ts';
import type { ClaimContext, ClaimKind } from './define-claim.ts';
import { judgeClaim } from './judge-claim.ts';
import { isClaimFault, parseClaim } from './reading/parse-claim.ts';
import { saysLeast, tellingOrder } from './telling-order.ts';

/** Claims that hold in every position in great numbers, or whose judging is a search: nobody wants them listed. */
export const leftOut: ReadonlySet<string> = new Set(['legal', 'illegal', 'clear', 'mate in']);

const kindsInOrder = claimKinds
  .filter(({ name }) => !leftOut.has(name))
  .sort((a, b) => tellingOrder.indexOf(a.name) - tellingOrder.indexOf(b.name));

/** What is asked of the claims that hold. */
export interface ClaimsWanted {
  /** How the claim begins. Claims of two pieces, which are many, are there only if this names their kind. */
  readonly typed?: string;
  /** So many are enough; no more are looked for. */
  readonly most?: number;
}

/**
 * Claims that are true in a position, as an author would write them, for whoever offers claims: the most telling
 * first, as `tellingOrder` has it, with counts of nothing and denials behind all others. A kind that is named
 * by what is typed comes before the rest.
 * @returns each claim once; no moves ahead (`after …`), no counts since a named position.
 */
export function claimsThatHold(
  context: ClaimContext,
  { typed = '', most = Number.POSITIVE_INFINITY }: ClaimsWanted = {},
): string[] {
  const telling = new Set<string>();
  const least = new Set<string>();
  const named = kindsInOrder.filter((kind) => isNamed(kind, typed));
  for (const kind of new Set([...named, ...kindsInOrder])) {
    for (const claim of holdingOf(kind, context, typed)) {
      (saysLeast(claim) ? least : telling).add(claim);
    }
    if (telling.size >= most) break;
  }
  return [...telling, ...least].slice(0, most);
}

function isNamed({ name }: ClaimKind, typed: string): boolean {
  return typed.length > 2 && name.startsWith(/^\S*/.exec(typed)?.[0] ?? '');
}

function holdingOf(kind: ClaimKind, context: ClaimContext, typed: string): string[] {
  const holding = new Set<string>();
  for (const form of kind.usage) {
    if (/\b(?:since|after|else)\b/.test(form)) continue;
    if (!isNamed(kind, typed) && form.split(/\s+/).filter(isSquare).length > 1) continue;
    for (const text of fill(kind, form, context.position)) {
      const held = holds(text, kind, context);
      if (held !== undefined) holding.add(held);
    }
  }
  // Whose square it is goes without saying where nobody asks.
  const isShort = (claim: string) =>
    !holding.has(claim.replace(/ (?:white|black)$/, '')) || !/ (?:white|black)$/.test(claim);
  return isNamed(kind, typed) ? [...holding] : [...holding].filter(isShort);
}

/** The claim, or the one of its kind that is true instead; undefined where neither is. */
function holds(text: string, { name }: ClaimKind, context: ClaimContext): string | undefined {
  const claim = readOnce(text);
  if (isClaimFault(claim)) return undefined;
  const [refuted] = judgeClaim(claim, context);
  if (refuted === undefined) return text;
  // One of another kind is found among its own, in the place of that kind.
  return refuted.instead?.replace(/^not /, '').split(' ', 1)[0] === name
    ? refuted.instead
    : undefined;
}

const known = new Map<string, ReturnType<typeof parseClaim>>();

/** The same claims are asked of every position. */
function readOnce(text: string): ReturnType<typeof parseClaim> {
  const claim = known.get(text) ?? parseClaim(text);
  known.set(text, claim);
  return claim;
}

/** What a form of a claim becomes with other squares, files, sides and moves in the place of its own. */
function fill({ name }: ClaimKind, form: string, position: Position): string[] {
  const words = form.slice(name.length).trim().split(/\s+/).filter(Boolean);
  const slots = words.filter((word) => isSquare(word)).length;
  const board = readBoard(position);
  const taken = squares.filter((square) => board.has(square));
  let filled = [''];
  for (const word of words) {
    const choices = choicesFor(word, slots > 1 ? taken : squares, position);
    filled = filled.flatMap((before) => choices.map((choice) => `${before} ${choice}`));
  }
  return filled.map((rest) => name + rest);
}

function choicesFor(
  word: string,
  places: readonly string[],
  position: Position,
): readonly string[] {
  if (isSquare(word)) return places;
  if (/^[a-h]$/.test(word)) return [...'abcdefgh'];
  if (word === 'white' || word === 'black') return ['white', 'black'];
  if (word === 'king' || word === 'queen') return ['king', 'queen'];
  if (word === 'queenside' || word === 'kingside' || word === 'a-c') {
    return ['queenside', 'kingside'];
  }
  if (/^[KQRBN]/.test(word)) return threats(position);
  return [word];
}

/** The captures that the side which has just moved would make next. */
function threats(position: Position): string[] {
  const passed = passMove(position);
  return passed === undefined
    ? []
    : listMoves(passed).flatMap(({ san, capture }) => (capture ? [san] : []));
}
