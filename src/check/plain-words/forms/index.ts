import { attacks, attacksNow, guards } from './attacks.ts';
import { bishopPair } from './bishop-pair.ts';
import { castled } from './castled.ts';
import { check } from './check.ts';
import type { Form } from './form.ts';
import { mate, mateByMove, mateIn } from './mate.ts';
import { onlyLegal, replies } from './moves.ts';
import { doubled, isolated, open, passed } from './pawns.ts';
import { pawnsUp, pawnWon } from './pawns-up.ts';
import { pieceOnSquare } from './piece-on-square.ts';
import { pinned } from './pinned.ts';
import { standsBetter } from './stands-better.ts';
import { toMove } from './to-move.ts';

export type { Form, Situation, StatementVerdict } from './form.ts';

/** All forms of statements that are read, in the order in which they are looked for. */
export const forms = {
  'piece-on-square': pieceOnSquare,
  castled,
  'to-move': toMove,
  check,
  mate,
  'mate-by-move': mateByMove,
  'mate-in': mateIn,
  'pawns-up': pawnsUp,
  'pawn-won': pawnWon,
  isolated,
  passed,
  doubled,
  open,
  'only-legal': onlyLegal,
  replies,
  'bishop-pair': bishopPair,
  pinned,
  attacks,
  'attacks-now': attacksNow,
  guards,
  'stands-better': standsBetter,
} satisfies Record<string, Form>;

export type FormName = keyof typeof forms;
