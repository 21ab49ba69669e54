/** What code of a course's own is given: a door of its own, since behind the other one lie all rules. */
export { ArgumentReader, UnreadableClaim } from './claims/argument-reader.ts';
export {
  type ClaimContext,
  type ClaimDefinition,
  type ClaimExample,
  type ClaimKind,
  defineClaim,
  empty,
  no,
  type Verdict,
  verdict,
  yes,
} from './claims/define-claim.ts';
