export { adviceOf, isMarkedBad } from '../model/index.ts';
export { type ChapterSummary, summariseChapter } from './chapter-summary.ts';
export {
  type CheckedChapter,
  type CheckOptions,
  checkChapter,
  stillHolds,
} from './check-chapter.ts';
export {
  type CheckResult,
  checkCourse,
  checkOptions,
  passCourse,
  reportFindings,
} from './check-course.ts';
export type { CheckedCourse } from './checked-course.ts';
export {
  type ClaimContext,
  type ClaimFault,
  type ClaimKind,
  claimKinds,
  isClaimFault,
  judgeClaim,
  parseClaim,
  UnreadableClaim,
  type Verdict,
  type Word,
} from './claims/index.ts';
export { claimFixes } from './course-claims/claim-fixes.ts';
export { claimsAt } from './course-claims/claims-at.ts';
export { namesInClaims } from './course-claims/names-in-claims.ts';
export type { CourseRule } from './course-rule.ts';
export { engineOf, lineText, nameOfMove, scoreText } from './engine/engine-words.ts';
export { readFacts } from './engine/read-facts.ts';
export type { OwnChecks, OwnRule } from './own-checks.ts';
export { type PreviewedCourse, previewCourse } from './previewed-course.ts';
export { rules } from './rules.ts';
export { type CourseEntry, linksOf, makeCourseEntry } from './shelf/course-entry.ts';
export { placesOnShelf } from './shelf/places-on-shelf.ts';
export { inShelf, reportShelf, rulesOfShelf } from './shelf/report-shelf.ts';
export { shelfAround } from './shelf/shelf-around.ts';
export { makeCourseIndex } from './view/index.ts';
