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
import { isClaimFault, parseClaim } from './parse-claim.ts';

/** Claims that hold in every position in great numbers, or whose judging is a search: nobody wants them listed. */
const left = new Set(['legal', 'illegal', 'clear', 'mate in']);

/**
 * Claims that are true in a position, as an author would write them, for whoever offers claims. Kinds of which fewer
 * are true come first: that a pawn is isolated says more than that a piece is defended.
 * @param typed how the claim begins. Claims of two pieces, which are many, are there only if this names their kind.
 * @returns each claim once; no moves ahead (`after …`), no counts since a named position, no denials.
 */
export function claimsThatHold(context: ClaimContext, typed = ''): string[] {
  const found = claimKinds
    .filter(({ name }) => !left.has(name))
    .map((kind) => holdingOf(kind, context, typed))
    .filter(({ length }) => length > 0);
  return [...new Set(found.sort((a, b) => a.length - b.length).flat())];
}

function holdingOf(kind: ClaimKind, context: ClaimContext, typed: string): string[] {
  const holding = new Set<string>();
  const isNamed = typed.length > 2 && kind.name.startsWith(/^\S*/.exec(typed)?.[0] ?? '');
  for (const form of kind.usage) {
    if (/\b(?:since|after|else)\b/.test(form)) continue;
    if (!isNamed && form.split(/\s+/).filter(isSquare).length > 1) continue;
    for (const text of fill(kind, form, context.position)) {
      const held = holds(text, context);
      if (held !== undefined) holding.add(held);
    }
  }
  return [...holding];
}

/** The claim, or the one of its kind that is true instead; undefined where neither is. */
function holds(text: string, context: ClaimContext): string | undefined {
  const claim = parseClaim(text);
  if (isClaimFault(claim)) return undefined;
  const [refuted] = judgeClaim(claim, context);
  return refuted === undefined ? text : refuted.instead;
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
