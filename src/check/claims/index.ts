export { claimKinds } from './claim-kinds.ts';
export { type ClaimsWanted, claimsThatHold } from './claims-that-hold.ts';
export type {
  ClaimContext,
  ClaimExample,
  ClaimKind,
  SearchBudget,
  Verdict,
} from './define-claim.ts';
export { judgeClaim, type Refutation } from './judge-claim.ts';
export { type ClaimFault, UnreadableClaim, type Word } from './reading/argument-reader.ts';
export { isClaimFault, parseClaim } from './reading/parse-claim.ts';
export { chapterBudget } from './shared/search-limit.ts';
