import { attacks } from './attacks.ts';
import { backward } from './backward.ts';
import { bishopPair } from './bishop-pair.ts';
import { canCastle } from './can-castle.ts';
import { chain } from './chain.ts';
import { check } from './check.ts';
import { clear } from './clear.ts';
import { defended } from './defended.ts';
import { defends } from './defends.ts';
import type { ClaimKind } from './define-claim.ts';
import { doubled } from './doubled.ts';
import { enPrise } from './en-prise.ts';
import { fork } from './fork.ts';
import { halfOpen } from './half-open.ts';
import { hangingPawns } from './hanging-pawns.ts';
import { illegal } from './illegal.ts';
import { isolated } from './isolated.ts';
import { legal } from './legal.ts';
import { loose } from './loose.ts';
import { lostCastling } from './lost-castling.ts';
import { mate } from './mate.ts';
import { mateIn } from './mate-in.ts';
import { material } from './material.ts';
import { onlyMove } from './only-move.ts';
import { open } from './open.ts';
import { oppositeBishops } from './opposite-bishops.ts';
import { outpost } from './outpost.ts';
import { passed } from './passed.ts';
import { pinned } from './pinned.ts';
import { replies } from './replies.ts';
import { shutIn } from './shut-in.ts';
import { stalemate } from './stalemate.ts';
import { threatens } from './threatens.ts';

/** All claims, in the order of the handbook: a new one is a file beside this and a line here. */
export const claimKinds: readonly ClaimKind[] = [
  material,
  isolated,
  doubled,
  backward,
  passed,
  hangingPawns,
  chain,
  outpost,
  open,
  halfOpen,
  bishopPair,
  oppositeBishops,
  shutIn,
  clear,
  attacks,
  defends,
  loose,
  defended,
  enPrise,
  pinned,
  fork,
  threatens,
  check,
  mate,
  stalemate,
  mateIn,
  onlyMove,
  legal,
  illegal,
  canCastle,
  lostCastling,
  replies,
];
