import { attacks } from './attacks.ts';
import { backward } from './backward.ts';
import { badBishop } from './bad-bishop.ts';
import { battery } from './battery.ts';
import { bishopPair } from './bishop-pair.ts';
import { blockaded } from './blockaded.ts';
import { canCastle } from './can-castle.ts';
import { castled } from './castled.ts';
import { chain } from './chain.ts';
import { check } from './check.ts';
import { clear } from './clear.ts';
import { connectedPassed } from './connected-passed.ts';
import { defended } from './defended.ts';
import { defends } from './defends.ts';
import type { ClaimKind } from './define-claim.ts';
import { development } from './development.ts';
import { developmentLead } from './development-lead.ts';
import { discoveredAttack } from './discovered-attack.ts';
import { discoveredCheck } from './discovered-check.ts';
import { doubleCheck } from './double-check.ts';
import { doubled } from './doubled.ts';
import { enPrise } from './en-prise.ts';
import { everythingDefended } from './everything-defended.ts';
import { fianchetto } from './fianchetto.ts';
import { fork } from './fork.ts';
import { goodBishop } from './good-bishop.ts';
import { halfOpen } from './half-open.ts';
import { hangingPawns } from './hanging-pawns.ts';
import { illegal } from './illegal.ts';
import { islands } from './islands.ts';
import { isolated } from './isolated.ts';
import { legal } from './legal.ts';
import { loose } from './loose.ts';
import { lostCastling } from './lost-castling.ts';
import { majority } from './majority.ts';
import { mate } from './mate.ts';
import { mateIn } from './mate-in.ts';
import { material } from './material.ts';
import { moreSpace } from './more-space.ts';
import { noSquare } from './no-square.ts';
import { onlyDefender } from './only-defender.ts';
import { onlyMove } from './only-move.ts';
import { open } from './open.ts';
import { oppositeBishops } from './opposite-bishops.ts';
import { outpost } from './outpost.ts';
import { overloaded } from './overloaded.ts';
import { passed } from './passed.ts';
import { pinned } from './pinned.ts';
import { protectedPassed } from './protected-passed.ts';
import { queensOff } from './queens-off.ts';
import { replies } from './replies.ts';
import { shield } from './shield.ts';
import { shutIn } from './shut-in.ts';
import { skewered } from './skewered.ts';
import { space } from './space.ts';
import { stalemate } from './stalemate.ts';
import { strongSquare } from './strong-square.ts';
import { tempi } from './tempi.ts';
import { threatens } from './threatens.ts';
import { trapped } from './trapped.ts';
import { weakSquare } from './weak-square.ts';

/** All claims, in the order of the handbook: a new one is a file beside this and a line here. */
export const claimKinds: readonly ClaimKind[] = [
  material,
  isolated,
  doubled,
  backward,
  passed,
  protectedPassed,
  connectedPassed,
  hangingPawns,
  chain,
  blockaded,
  islands,
  majority,
  outpost,
  strongSquare,
  weakSquare,
  open,
  halfOpen,
  bishopPair,
  badBishop,
  goodBishop,
  fianchetto,
  oppositeBishops,
  shutIn,
  clear,
  attacks,
  defends,
  loose,
  defended,
  everythingDefended,
  onlyDefender,
  overloaded,
  enPrise,
  trapped,
  noSquare,
  pinned,
  skewered,
  battery,
  fork,
  threatens,
  discoveredAttack,
  check,
  discoveredCheck,
  doubleCheck,
  mate,
  stalemate,
  mateIn,
  onlyMove,
  legal,
  illegal,
  canCastle,
  lostCastling,
  castled,
  shield,
  development,
  developmentLead,
  tempi,
  space,
  moreSpace,
  queensOff,
  replies,
];
