/** What code of a course's own is given: a door of its own, since behind the other one lie all rules. */

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
export { ArgumentReader, UnreadableClaim } from './claims/reading/argument-reader.ts';
